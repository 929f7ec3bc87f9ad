using System.Text.RegularExpressions;

namespace GlowMix.Console.Tests.Commands;

public sealed class FiguresFileTests : IDisposable
{
    private const string Recipe = """
        format: 1
        resin: polyurethane-clear
        led:
          material: warm-white-3000
        layers:
          - depth_mm: 2.5
        """;

    private readonly CommandLine line = new();

    public FiguresFileTests() => line.Write("shop/a.yaml", Recipe);

    public void Dispose() => line.Dispose();

    [Fact]
    public void Figures_are_kept_beside_the_recipe_once_and_found_to_stand()
    {
        Assert.Equal(ExitCode.Done, line.Run("predict", "shop/a.yaml", "--quick", "--write"));
        Assert.Equal("Figures    shop/a.figures.yaml", line.OutLines[^1]);
        string kept = line.Read("shop/a.figures.yaml");
        Assert.StartsWith("# Made by 'glowmix predict a.yaml --write'", kept, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, line.Run("predict", "shop/a.yaml", "--quick", "--write"));
        Assert.Equal("Figures    shop/a.figures.yaml, as they were", line.OutLines[^1]);
        Assert.Equal(ExitCode.Done, line.Run("check", "shop/a.figures.yaml", "shop/a.yaml"));
        Assert.Equal("shop/a.figures.yaml: these are the figures\nshop/a.yaml: no errors\n", line.Out);
        Assert.Equal("", line.Error);
    }

    [Fact]
    public void From_another_folder_the_bytes_are_the_same()
    {
        line.Run("predict", "shop/a.yaml", "--quick", "--write");
        string kept = line.Read("shop/a.figures.yaml");
        line.Run("predict", Path.Combine(line.Folder, "shop", "a.yaml"), "--quick", "--write");
        Assert.EndsWith(", as they were", line.OutLines[^1], StringComparison.Ordinal);
        Assert.Equal(kept, line.Read("shop/a.figures.yaml"));
    }

    [Fact]
    public void A_remark_leaves_the_figures_standing_and_a_changed_number_does_not()
    {
        line.Run("predict", "shop/a.yaml", "--quick", "--write");
        line.Write("shop/a.yaml", Recipe + "   # over the board\n");
        Assert.Equal(ExitCode.Done, line.Run("check", "shop/a.yaml"));
        line.Write("shop/a.yaml", Recipe.Replace("2.5", "2.6", StringComparison.Ordinal));
        Assert.Equal(ExitCode.Content, line.Run("check", "shop/a.yaml"));
        Assert.Equal("shop/a.yaml: no errors\n", line.Out);
        Assert.Equal(
            "shop/a.figures.yaml: stale: recipe changed since; run 'glowmix predict shop/a.yaml --write' again\n",
            line.Error
        );
    }

    [Fact]
    public void A_changed_material_of_ones_own_is_named()
    {
        string resin = File.ReadAllText(Path.Combine(TopFolder.Path, "data/resins/polyurethane-clear.yaml"));
        line.Write("shop/materials/resins/mine.yaml", resin);
        line.Write("shop/a.yaml", Recipe.Replace("polyurethane-clear", "mine", StringComparison.Ordinal));
        Assert.Equal(ExitCode.Done, line.Run("predict", "shop/a.yaml", "--quick", "--write"));
        line.Write(
            "shop/materials/resins/mine.yaml",
            resin.Replace("title: ", "title: New ", StringComparison.Ordinal)
        );
        Assert.Equal(ExitCode.Content, line.Run("check", "shop/a.figures.yaml"));
        Assert.StartsWith(
            "shop/a.figures.yaml: stale: resins/mine changed since; run ",
            line.Error,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Figures_moved_by_the_program_are_told_from_those_moved_by_the_recipe()
    {
        line.Run("predict", "shop/a.yaml", "--quick", "--write");
        // As an older program would have written it: the line and the seal that fits it.
        string older = Regex.Replace(
            line.Read("shop/a.figures.yaml"),
            @"  lit\.cct_k: \d+",
            "  lit.cct_k: 3000"
        );
        var kept = Predictions.Kept.KeptFiguresReader.Read(
            new("x", Regex.Replace(older, "checksum: .*", "checksum: fnv-0"))
        );
        Assert.Equal("it was changed by hand", Assert.Single(kept.Problems).Text);
        string sealedText = Sealed(older);
        line.Write("shop/a.figures.yaml", sealedText);
        Assert.Equal(ExitCode.Content, line.Run("check", "shop/a.yaml"));
        Assert.Matches(
            @"^shop/a\.figures\.yaml: stale: moved by the program, not by the recipe: lit\.cct_k 3000 → \d+; run ",
            line.Error
        );
    }

    [Fact]
    public void A_figures_file_edited_by_hand_is_told_and_written_anew()
    {
        line.Run("predict", "shop/a.yaml", "--quick", "--write");
        string kept = line.Read("shop/a.figures.yaml");
        line.Write("shop/a.figures.yaml", Regex.Replace(kept, @"lit\.ra: ", "lit.ra: 1"));
        Assert.Equal(ExitCode.Content, line.Run("check", "shop/a.yaml"));
        Assert.Matches(@"^shop/a\.figures\.yaml:\d+:11: it was changed by hand; run 'glowmix", line.Error);
        Assert.Equal(ExitCode.Done, line.Run("predict", "shop/a.yaml", "--quick", "--write"));
        Assert.Equal(kept, line.Read("shop/a.figures.yaml"));
    }

    [Fact]
    public void A_merge_conflict_is_told_and_ended_by_writing_again()
    {
        line.Run("predict", "shop/a.yaml", "--quick", "--write");
        string kept = line.Read("shop/a.figures.yaml");
        string conflict = kept.Replace(
            "checksum: ",
            "<<<<<<< HEAD\nchecksum: fnv-1\n=======\nchecksum: fnv-2\n>>>>>>> deeper\nchecksum: ",
            StringComparison.Ordinal
        );
        line.Write("shop/a.figures.yaml", conflict);
        Assert.Equal(ExitCode.Content, line.Run("check", "shop/a.figures.yaml"));
        Assert.Contains(": a merge conflict is in it; run 'glowmix", line.Error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, line.Run("predict", "shop/a.yaml", "--quick", "--write"));
        Assert.Equal(kept, line.Read("shop/a.figures.yaml"));
    }

    [Fact]
    public void A_file_of_that_name_that_is_not_ours_is_kept()
    {
        line.Write("shop/a.figures.yaml", "figures_format: 1\n# my own notes\n");
        Assert.Equal(ExitCode.Content, line.Run("predict", "shop/a.yaml", "--quick", "--write"));
        Assert.StartsWith("shop/a.figures.yaml: kept as it is: ", line.Error, StringComparison.Ordinal);
        Assert.Contains("my own notes", line.Read("shop/a.figures.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public void Beside_recipes_other_files_are_skipped_with_a_line_each()
    {
        line.Write("shop/a.figures.yaml", "figures_format: 1\n");
        line.Write("shop/a.calibration.yaml", "# fitted\ncalibration_format: 1\n");
        line.Write("shop/set.yaml", "readings_format: 1\n");
        Assert.Equal(
            ExitCode.Done,
            line.Run(
                "predict",
                "shop/a.calibration.yaml",
                "shop/a.figures.yaml",
                "shop/a.yaml",
                "shop/set.yaml"
            )
        );
        Assert.Equal(
            "shop/a.calibration.yaml: a calibration, no recipe; skipped\n"
                + "shop/a.figures.yaml: a figures file, no recipe; skipped\n"
                + "shop/set.yaml: a set of readings, no recipe; skipped\n",
            line.Error
        );
        Assert.StartsWith("shop/a.yaml\n", line.Out, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Content, line.Run("predict", "shop/a.figures.yaml"));
        Assert.EndsWith("no recipe is among these files\n", line.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Figures_without_their_recipe_or_under_another_name_are_told()
    {
        line.Run("predict", "shop/a.yaml", "--quick", "--write");
        line.Write("shop/b.figures.yaml", line.Read("shop/a.figures.yaml"));
        Assert.Equal(ExitCode.Content, line.Run("check", "shop/b.figures.yaml"));
        Assert.Equal(
            "shop/b.figures.yaml: it was made from shop/a.yaml, whose figures are kept in shop/a.figures.yaml\n",
            line.Error
        );
        File.Delete(Path.Combine(line.Folder, "shop/a.yaml"));
        Assert.Equal(ExitCode.FileAccess, line.Run("check", "shop/a.figures.yaml"));
        Assert.Equal(
            "shop/a.figures.yaml: the recipe it was made from, shop/a.yaml, is not there\n",
            line.Error
        );
    }

    // Reads the numbers and writes them out again, with the checksum they call for.
    private static string Sealed(string text)
    {
        string checksum = Predictions.Kept.KeptFiguresText.ChecksumOf(text);
        return Regex.Replace(text, "checksum: .*", $"checksum: {checksum}");
    }
}
