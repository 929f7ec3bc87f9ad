using System.Globalization;
using GlowMix.Predictions;
using GlowMix.Predictions.Kept;
using GlowMix.Recipes;

namespace GlowMix.Tests.Predictions.Kept;

public class KeptFiguresTests
{
    private const string Recipe = """
        format: 1
        resin: epoxy-clear-slow
        led:
          material: warm-white-3000
          count: 60
        pour:
          length_mm: 500
          width_mm: 12
          runs_out_mm: 0.4
        layers:
          - name: glow
            depth_mm: 2.5
            pigment: green-aluminate
            loading_percent: 20
        targets:
          - figure: lit.duv
            at_most: 0.02
        """;

    private static readonly Lazy<string> Text = new(() => TextOf(TestRecipe.Predictor));

    [Fact]
    public void The_text_has_one_number_a_line_and_names_what_it_is_from()
    {
        string[] lines = Text.Value.TrimEnd('\n').Split('\n');
        Assert.Equal(
            "# Made by 'glowmix predict sign.yaml --write', not by hand; after a merge conflict run it again.",
            lines[0]
        );
        Assert.Equal("figures_format: 1", lines[1]);
        Assert.Equal("recipe: sign.yaml", lines[2]);
        Assert.Equal($"model_version: {ModelVersion.Number}", lines[3]);
        Assert.Contains("  pigments/green-aluminate: fnv-", Text.Value, StringComparison.Ordinal);
        Assert.Contains(lines, l => l.StartsWith("  lit.cct_k: ", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("  along.deep.duv: ", StringComparison.Ordinal));
        Assert.Contains(
            lines,
            l => l.StartsWith("  afterglow.luminance_mcd_m2[60].low: ", StringComparison.Ordinal)
        );
        Assert.Contains(lines, l => l.StartsWith("  - lit.duv: ", StringComparison.Ordinal));
        Assert.All(lines, l => Assert.Equal(l.TrimEnd(), l));
        Assert.DoesNotContain(": null", Text.Value, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    [InlineData("fa-IR")]
    [InlineData("sv-SE")]
    public void The_same_input_makes_the_same_bytes_under_any_culture(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(Text.Value, TextOf(TestRecipe.Predictor));
            Assert.Empty(Read(Text.Value).Problems);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void What_is_written_reads_back_the_same()
    {
        var kept = Read(Text.Value).Kept!;
        Assert.Equal(Text.Value, KeptFiguresText.Of(kept));
        Assert.True(KeptFiguresReader.IsOurs(Text.Value));
        string windows = Text.Value.Replace("\n", "\r\n", StringComparison.Ordinal);
        Assert.Empty(Read(windows).Problems);
        Assert.True(KeptFiguresReader.IsOurs(windows));
    }

    [Fact]
    public void A_number_changed_by_hand_is_told_and_the_file_is_still_ours()
    {
        string changed = Text.Value.Replace("  lit.cct_k: ", "  lit.cct_k: 1", StringComparison.Ordinal);
        Assert.Equal(KeptTexts.ByHand, Assert.Single(Read(changed).Problems).Text);
        Assert.True(KeptFiguresReader.IsOurs(changed));
    }

    [Fact]
    public void A_merge_conflict_is_told_with_its_place_and_the_file_is_still_ours()
    {
        string[] lines = Text.Value.Split('\n');
        string conflict = string.Join(
            '\n',
            [
                .. lines[..6],
                "<<<<<<< HEAD",
                lines[6],
                "=======",
                lines[6] + "0",
                ">>>>>>> brighter",
                .. lines[7..],
            ]
        );
        Assert.Equal(
            $"sign.figures.yaml:7:1: {KeptTexts.Conflict}",
            Assert.Single(Read(conflict).Problems).ToString()
        );
        Assert.True(KeptFiguresReader.IsOurs(conflict));
    }

    [Theory]
    [InlineData("format: 1\nresin: epoxy-clear-slow\n")]
    [InlineData("")]
    [InlineData("dear diary\n")]
    [InlineData("figures_format: 1\n# what I think of it\n")]
    [InlineData("figures_format: 1\nlit.cct_k: 3000 # was warmer\n")]
    [InlineData("figures_format: 1\njust a line\n")]
    public void What_somebody_wrote_is_not_ours(string text) => Assert.False(KeptFiguresReader.IsOurs(text));

    [Theory]
    [InlineData("figures_format: 2\n")]
    [InlineData("figures_format: 1\n")]
    [InlineData(
        "figures_format: 1\nfigures: 3\ninputs: [a]\nbands_of: luck\ntargets:\n  - 3\nchecksum: no\nextra: 1\n"
    )]
    [InlineData("figures_format: 1\nfigures:\n  lit.cct_k: 1e999\n")]
    [InlineData("figures_format: [")]
    public void A_text_that_is_no_figures_file_has_problems(string text) =>
        Assert.NotEmpty(Read(text).Problems);

    [Theory]
    [InlineData("resin: epoxy", "resin:   \"epoxy-clear-slow\"  # mine\n\n# x\n#", "-clear-slow")]
    [InlineData("depth_mm: 2.5", "depth_mm: 2.50", "")]
    [InlineData("count: 60", "count: 6e1", "")]
    public void The_writing_of_a_recipe_does_not_count(string written, string other, string rest)
    {
        string changed = Recipe.Replace(written + rest, other, StringComparison.Ordinal);
        Assert.NotEqual(Recipe, changed);
        Assert.Equal(Inputs(Recipe), Inputs(changed));
    }

    [Fact]
    public void A_value_of_the_recipe_counts_and_is_named()
    {
        var kept = Read(Text.Value).Kept!;
        string deeper = Recipe.Replace("2.5", "2.6", StringComparison.Ordinal);
        Assert.Equal(["recipe"], KeptComparison.ChangedInputsOf(kept, Inputs(deeper)));
        string other = Recipe.Replace("green-aluminate", "blue-green-aluminate", StringComparison.Ordinal);
        Assert.Equal(
            ["recipe", "pigments/blue-green-aluminate", "pigments/green-aluminate"],
            KeptComparison.ChangedInputsOf(kept, Inputs(other))
        );
        Assert.Empty(KeptComparison.ChangedInputsOf(kept, Inputs(Recipe)));
    }

    [Fact]
    public void Within_one_step_the_figures_stand_beyond_it_they_have_moved()
    {
        var kept = Read(Text.Value).Kept!;
        decimal was = kept.Figures.Single(f => f.Name == "lit.cct_k").Value;
        Assert.True(KeptComparison.Of(kept, Moved(was + 10)).IsFresh);
        Assert.Equal(
            [new MovedFigure("lit.cct_k", was, was + 20)],
            KeptComparison.Of(kept, Moved(was + 20)).Moved
        );
        Assert.Equal(
            [new MovedFigure("lit.cct_k", was, null)],
            KeptComparison
                .Of(kept, kept with { Figures = kept.Figures.RemoveAll(f => f.Name == "lit.cct_k") })
                .Moved
        );
        Assert.True(KeptComparison.Of(kept, kept with { Warnings = ["new"] }).HasOtherVerdicts);

        KeptFigures Moved(decimal to) =>
            kept with
            {
                Figures = [.. kept.Figures.Select(f => f.Name == "lit.cct_k" ? f with { Value = to } : f)],
            };
    }

    private static KeptFiguresReading Read(string text) =>
        KeptFiguresReader.Read(new("sign.figures.yaml", text));

    private static IReadOnlyList<PredictionInput> Inputs(string recipe) =>
        TestRecipe.Predictor.InputsOf(RecipeDocument.Read(recipe, "sign.yaml"));

    private static string TextOf(Predictor predictor)
    {
        var document = RecipeDocument.Read(Recipe, "sign.yaml");
        var outcome = new GlowMix.Choosing.Forecaster(predictor).Bounded(document);
        return KeptFiguresText.Of(
            KeptFigures.Of(outcome.Prediction!, "sign.yaml", predictor.InputsOf(document))
        );
    }
}
