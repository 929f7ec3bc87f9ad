using GlowMix.Console.Tables;

namespace GlowMix.Console.Tests.Tables;

public sealed class PredictionCsvTests : IDisposable
{
    private readonly CommandLine line = new() { Runner = new SampleRunner(SamplePredictions.StairEdge) };

    public PredictionCsvTests()
    {
        line.Write("a.yaml", "format: 1\n");
        line.Write("b.yaml", "format: 1\n");
    }

    public void Dispose() => line.Dispose();

    [Fact]
    public void The_tables_are_written_into_a_new_folder_and_again()
    {
        Assert.Equal(ExitCode.Done, line.Run("predict", "a.yaml", "--csv", "new/out"));
        Assert.Equal(ExitCode.Done, line.Run("predict", "a.yaml", "--csv", "new/out"));
        Assert.Equal(["decay.csv", "figures.csv", "spectra.csv"], Files("new/out"));
        Assert.Contains("Tables     new/out/spectra.csv", line.Out, StringComparison.Ordinal);
        string[] figures = line.Read("new/out/figures.csv").Split('\n');
        Assert.Equal("figure,unit,value,low,high", figures[0]);
        Assert.Contains("afterglow.luminance_mcd_m2[2],mcd/m²,111.2,54.9,224", figures);
        Assert.Contains("lit.shift_k,K,804.4,804.4,804.4", figures);
        Assert.Equal(90, line.Read("new/out/spectra.csv").TrimEnd().Split('\n').Length);
        Assert.StartsWith(
            "minutes,luminance_low_mcd_m2,",
            line.Read("new/out/decay.csv"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Several_recipes_have_their_names_in_front()
    {
        Assert.Equal(ExitCode.Done, line.Run("predict", "a.yaml", "b.yaml", "--csv", "out", "--json"));
        Assert.Equal(
            [
                "a.decay.csv",
                "a.figures.csv",
                "a.spectra.csv",
                "b.decay.csv",
                "b.figures.csv",
                "b.spectra.csv",
            ],
            Files("out")
        );
        Assert.StartsWith("[", line.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_recipes_of_one_name_are_refused_before_anything_is_written()
    {
        line.Write("c/a.yaml", "format: 1\n");
        Assert.Equal(ExitCode.Content, line.Run("predict", "a.yaml", "c/a.yaml", "--csv", "out"));
        Assert.False(Directory.Exists(Path.Combine(line.Folder, "out")));
    }

    [Fact]
    public void A_folder_that_is_a_file_is_told()
    {
        Assert.Equal(ExitCode.FileAccess, line.Run("predict", "a.yaml", "--csv", "b.yaml"));
        Assert.Equal("b.yaml: cannot be written: this is a file; needed: a folder\n", line.Error);
    }

    [Fact]
    public void When_one_file_cannot_be_written_none_is()
    {
        Directory.CreateDirectory(Path.Combine(line.Folder, "out", "figures.csv"));
        Assert.Equal(ExitCode.FileAccess, line.Run("predict", "a.yaml", "--csv", "out"));
        Assert.Empty(Files("out"));
    }

    [Fact]
    public void A_recipe_with_an_error_leaves_no_file()
    {
        line.Write("a.yaml", "format: [\n");
        Assert.Equal(ExitCode.Content, line.Run("predict", "a.yaml", "--csv", "out"));
        Assert.False(Directory.Exists(Path.Combine(line.Folder, "out")));
    }

    [Fact]
    public void Cells_with_commas_and_quotes_are_quoted()
    {
        var csv = new CsvText();
        csv.Row("a,b", "say \"so\"", "c");
        csv.Cell(0.1).Cell((double?)null).Cell(1e-7).EndRow();
        Assert.Equal("\"a,b\",\"say \"\"so\"\"\",c\n0.1,,1E-07\n", csv.ToString());
    }

    private string[] Files(string folder) =>
        [
            .. Directory
                .GetFiles(Path.Combine(line.Folder, folder))
                .Select(f => Path.GetFileName(f))
                .Order(StringComparer.Ordinal),
        ];
}
