using GlowMix.Choosing;
using GlowMix.Documents;
using GlowMix.Predictions;
using GlowMix.Recipes;
using GlowMix.Tests.Predictions;
using static System.FormattableString;

namespace GlowMix.Tests.Choosing;

public sealed class TargetTests
{
    private static readonly Forecaster Forecaster = new(TestRecipe.Predictor);
    private static readonly TestRecipe Recipe = new();
    private static readonly Prediction Plain = Recipe.Predicted;

    [Fact]
    public void Bound_outside_the_band_is_met_or_missed_and_one_within_is_too_close()
    {
        var band = BandAt10Min();
        Assert.Equal(TargetState.Met, AtLeast(0.99 * band.Low!.Value).State);
        Assert.Equal(TargetState.TooClose, AtLeast(1.01 * band.Low!.Value).State);
        Assert.Equal(TargetState.TooClose, AtLeast(0.99 * band.High!.Value).State);
        Assert.Equal(TargetState.Missed, AtLeast(1.01 * band.High!.Value).State);
    }

    [Fact]
    public void Margin_is_the_way_from_the_nearest_bound_in_the_figures_unit()
    {
        double likely = BandAt10Min().Likely!.Value;
        Assert.Equal(likely - 1, AtLeast(1).Margin!.Value, tolerance: 1e-12);
        Assert.Equal(-1, AtLeast(likely + 1).Margin!.Value, tolerance: 1e-9);
        var between = Verdict(
            Invariant($"  - figure: lit.flux_kept_percent\n    at_least: 10\n    at_most: 200\n")
        );
        double kept = Plain.Figures["lit.flux_kept_percent"]!.Value;
        Assert.Equal(Math.Min(kept - 10, 200 - kept), between.Margin!.Value, tolerance: 1e-12);
        Assert.Equal(kept, between.Value);
    }

    [Fact]
    public void Two_bounds_within_one_band_are_too_close()
    {
        var band = BandAt10Min();
        var verdict = Verdict(
            Invariant(
                $"  - figure: afterglow.luminance_mcd_m2\n    at_minutes: 10\n    at_least: {1.01 * band.Low}\n    at_most: {0.99 * band.High}\n"
            )
        );
        Assert.Equal(TargetState.TooClose, verdict.State);
    }

    [Fact]
    public void Too_close_names_one_reading_that_would_decide_it()
    {
        Assert.NotNull(AtLeast(BandAt10Min().Likely!.Value).DecidedBy);
        Assert.Null(AtLeast(1e-6).DecidedBy);
    }

    [Fact]
    public void Colour_rendering_beyond_its_method_is_not_judged_and_says_so()
    {
        // Much pigment over warm LEDs: a green light that CIE 13.3 was not made for.
        var green = new TestRecipe { Layers = TestRecipe.Glow(6, 40) };
        Assert.False(green.Predicted.RaMeaningful);
        foreach (string figure in new[] { "lit.ra", "lit.r9" })
        {
            var verdict = Verdict($"  - figure: {figure}\n    at_least: 80\n", green);
            Assert.Equal(TargetState.NotJudged, verdict.State);
            Assert.Contains("CIE 13.3", verdict.Reason, StringComparison.Ordinal);
            Assert.Null(verdict.Margin);
        }
    }

    [Theory]
    [InlineData(
        "  - figure: afterglow.luminance_mcd_m2\n    at_minutes: 10\n    at_least: 1\n",
        "no pigment"
    )]
    [InlineData("  - figure: casting.pigment_volume_percent\n    at_most: 1\n", "no pigment")]
    [InlineData("  - figure: casting.cost\n    at_most: 1\n", "prices")]
    [InlineData("  - figure: along_largest_step_u_prime_v_prime\n    at_most: 1\n", "level")]
    public void Figure_that_does_not_exist_for_the_piece_is_not_judged(string target, string reason)
    {
        var verdict = Verdict(target, new TestRecipe { Layers = TestRecipe.Clear(3) });
        Assert.Equal(TargetState.NotJudged, verdict.State);
        Assert.Contains(reason, verdict.Reason, StringComparison.Ordinal);
        Assert.Null(verdict.Value);
    }

    [Theory]
    [InlineData("  - figure: lit.dvu\n    at_most: 1\n", "lit.duv")]
    [InlineData("  - figure: lit.duv\n    at_least: 2\n    at_most: 1\n", "below at_least")]
    [InlineData("  - figure: lit.duv\n", "at_least")]
    [InlineData("  - figure: lit.duv\n    at_minutes: 10\n    at_most: 1\n", "at_minutes")]
    public void Target_that_makes_no_sense_is_an_error(string target, string words)
    {
        var outcome = Forecaster.Bounded(RecipeDocument.Read(Recipe.Text + "targets:\n" + target, "a.yaml"));
        Assert.Null(outcome.Prediction);
        var problem = Assert.Single(outcome.Problems, p => p.Severity == Severity.Error);
        Assert.Contains(words, problem.Text, StringComparison.Ordinal);
        Assert.NotNull(problem.Place);
    }

    [Fact]
    public void Meeting_a_target_means_between_its_bounds_ends_included()
    {
        var target = new RecipeTarget
        {
            Figure = "lit.duv",
            AtLeast = -1,
            AtMost = 1,
        };
        Assert.All(new double?[] { -1, 0, 1 }, v => Assert.True(TargetJudge.Meets(target, v)));
        Assert.All(new double?[] { -1.001, 1.001, null }, v => Assert.False(TargetJudge.Meets(target, v)));
    }

    private static Band BandAt10Min() =>
        Plain.Bands.Single(b => b.Key.Name == "afterglow.luminance_mcd_m2[10]").Value;

    private static TargetVerdict AtLeast(double mcdPerM2) =>
        Verdict(
            Invariant(
                $"  - figure: afterglow.luminance_mcd_m2\n    at_minutes: 10\n    at_least: {mcdPerM2}\n"
            )
        );

    private static TargetVerdict Verdict(string target, TestRecipe? recipe = null)
    {
        var outcome = Forecaster.Bounded(
            RecipeDocument.Read((recipe ?? Recipe).Text + "targets:\n" + target, "a.yaml")
        );
        return Assert.Single(outcome.Prediction!.Targets);
    }
}
