using GlowMix.Choosing;
using GlowMix.Choosing.Compare;
using GlowMix.Choosing.Draws;
using GlowMix.Materials;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Tests.Choosing.Compare;

/// <summary>Both pieces are drawn alike: what is unknown of both falls out of their difference.</summary>
public class PairedDrawsTests
{
    private const int Draws = 40;
    private const string Glow60 = "afterglow.luminance_mcd_m2[60]";

    private const string Strip = """
        format: 1
        resin: epoxy-clear-slow
        led:
          material: warm-white-3000
        layers:
          - name: glow
            depth_mm: 2.5
            depth_tolerance_mm: 0.2
            pigment: green-aluminate
            loading_percent: 20
        """;

    private static readonly Predictor Predictor = new(new Shelf());

    // What draws share takes longer than the draws.
    private static readonly DrawShelf Shelf = new(Predictor.Optics, Predictor.Sheets);
    private static readonly Comparison MoreLoading = Compare(Strip, Changed("loading_percent", "25"));

    [Fact]
    public void A_piece_against_its_like_changes_in_no_draw()
    {
        var comparison = Compare(Strip, Strip + "\n# the same");
        Assert.True(comparison.DrawCount > Draws / 2);
        Assert.All(comparison.Figures, f => Assert.Equal((0, 0), (f.Change.Low ?? 0, f.Change.High ?? 0)));
    }

    [Fact]
    public void A_change_is_known_far_better_than_the_figures_themselves()
    {
        var glow = ChangeOf(MoreLoading, Glow60);
        double each = glow.Before.High!.Value / glow.Before.Low!.Value;
        double ofChange = glow.Ratio!.Value.High!.Value / glow.Ratio.Value.Low!.Value;
        Assert.True(Math.Log(ofChange) < 0.25 * Math.Log(each), $"{ofChange} against {each}");
    }

    [Fact]
    public void The_first_has_the_bands_it_has_by_itself()
    {
        var alone = new Forecaster(Predictor)
            .Drawn(
                RecipeDocument.Read(Strip, "a.yaml"),
                draws: Draws,
                stop: TestContext.Current.CancellationToken
            )
            .Prediction!;
        Assert.Equal(alone.Bands, MoreLoading.Before.Bands);
    }

    [Fact]
    public void The_answer_is_the_same_on_one_core()
    {
        var onOne = Compare(Strip, Changed("loading_percent", "25"), cores: 1);
        Assert.Equal(MoreLoading.Figures, onOne.Figures);
    }

    /// <summary>Another pigment's strength is another unknown: it does not fall out.</summary>
    [Fact]
    public void What_only_one_of_them_has_stays_in_doubt()
    {
        var glow = ChangeOf(Compare(Strip, Changed("pigment", "blue-green-aluminate")), Glow60);
        Assert.True(glow.Ratio!.Value.High / glow.Ratio.Value.Low > 1.3);
    }

    [Fact]
    public void Against_a_clear_piece_both_are_drawn_and_nothing_fails()
    {
        string clear = Strip.Replace(
            "    pigment: green-aluminate\n    loading_percent: 20",
            "",
            StringComparison.Ordinal
        );
        var white = ChangeOf(Compare(clear, Strip), "lit.duv");
        Assert.True(white.Change.Low < white.Change.High);
    }

    private static FigureChange ChangeOf(Comparison comparison, string name) =>
        comparison.Figures.Single(f => f.Figure.Name == name);

    private static string Changed(string key, string value) =>
        RecipeDocument.Read(Strip, "a").With(key, value).Text;

    private static Comparison Compare(string before, string after, int? cores = null) =>
        Comparer
            .Drawn(
                (RecipeDocument.Read(before, "a.yaml"), Predictor),
                (RecipeDocument.Read(after, "b.yaml"), Predictor),
                Shelf,
                Shelf,
                done: null,
                draws: Draws,
                cores: cores,
                stop: TestContext.Current.CancellationToken
            )
            .Comparison!;
}
