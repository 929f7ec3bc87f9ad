using GlowMix.Documents;

namespace GlowMix.Console.Tests.Commands;

public sealed class CheckCommandTests : IDisposable
{
    private const string Board = """
        material_format: 1
        kind: board
        title: Grey paint
        taken: under resin
        reflectance:
          at_nm:
            340: 0.4
            780: 0.4
          source: own reading
        """;

    private readonly CommandLine line = new();

    public void Dispose() => line.Dispose();

    [Fact]
    public void Every_shipped_recipe_and_material_has_no_errors()
    {
        string top = TopFolder.Path;
        // Away from their figures, which would be predicted anew.
        foreach (string file in Directory.GetFiles(Path.Combine(top, "recipes")))
        {
            if (!file.EndsWith(".figures.yaml", StringComparison.Ordinal))
            {
                File.Copy(file, Path.Combine(line.Folder, Path.GetFileName(file)));
            }
        }
        string[] files =
        [
            .. Directory.GetFiles(line.Folder, "*.yaml"),
            .. Directory.GetFiles(Path.Combine(top, "data"), "*.yaml", SearchOption.AllDirectories),
        ];
        Assert.True(files.Length > 40);
        int code = line.Run(["check", .. files]);
        Assert.Empty(line.Error);
        Assert.Equal(ExitCode.Done, code);
        Assert.Equal(
            files.Length,
            line.OutLines.Count(l => l.EndsWith(": no errors", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void All_problems_of_a_file_are_told_at_once_with_their_places()
    {
        line.Write(
            "a.yaml",
            BadRecipes.With("depth_mm: 2", "dept_mm: 2").Replace("loading_percent: 20", "loading_percent: 85")
        );
        Assert.Equal(ExitCode.Content, line.Run("check", "a.yaml"));
        Assert.Contains(
            "a.yaml:6:5: unknown key 'dept_mm'; did you mean 'depth_mm'?\n",
            line.Error,
            StringComparison.Ordinal
        );
        Assert.Contains("loading_percent is 85; allowed: 0 to 80\n", line.Error, StringComparison.Ordinal);
        Assert.Empty(line.Out);
    }

    [Fact]
    public void Of_several_files_the_highest_code_counts()
    {
        line.Write("good.yaml", BadRecipes.Good);
        line.Write("board.yaml", Board);
        line.Write("bad.yaml", BadRecipes.With("format: 1", "format: 2"));
        Assert.Equal(
            ExitCode.FileAccess,
            line.Run("check", "bad.yaml", "none.yaml", "good.yaml", "board.yaml")
        );
        Assert.Equal("good.yaml: no errors\nboard.yaml: no errors\n", line.Out);
        Assert.Contains($"none.yaml: {ProblemTexts.NotFound}\n", line.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_warning_is_no_error()
    {
        line.Write("a.yaml", BadRecipes.With("loading_percent: 20", "loading_percent: 0.2"));
        Assert.Equal(ExitCode.Done, line.Run("check", "a.yaml"));
        Assert.Equal("a.yaml: no errors, 1 warning\n", line.Out);
        Assert.Contains("a.yaml:8:22: warning: loading_percent is 0.2", line.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_that_promises_more_than_its_sample_can_hold_is_told()
    {
        line.Write(
            "bright.yaml",
            """
            material_format: 1
            kind: pigment
            title: Too good to be true
            like: green-aluminate
            sheet_points:
              mcd_m2_at_minutes:
                10: 50000
                60: 9000
              source: label
            """
        );
        Assert.Equal(ExitCode.Content, line.Run("check", "bright.yaml"));
        Assert.StartsWith(
            "bright.yaml:6:3: the decay sheet cannot be met: ",
            line.Error,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("wavelength,power\n1,2\n", "a.yaml")]
    [InlineData(
        "colour: red\n",
        "a.yaml:1:1: the first key is 'colour', which tells no kind of file; allowed: format, material_format"
    )]
    [InlineData("material_format: 1\nkind: bord\n", "a.yaml:2:7: kind is 'bord'; allowed: ")]
    [InlineData("material_format: 1\ntitle: x\n", "a.yaml: 'kind' is missing")]
    public void A_file_of_no_kind_is_told(string text, string problem)
    {
        line.Write("a.yaml", text);
        Assert.Equal(ExitCode.Content, line.Run("check", "a.yaml"));
        Assert.StartsWith(problem, line.Error, StringComparison.Ordinal);
    }
}
