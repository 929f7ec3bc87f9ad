using System.Globalization;
using GlowMix.Documents;
using GlowMix.Recipes;
using GlowMix.Tests.Recipes;

namespace GlowMix.Tests.Predictions;

public class PredictorProblemsTests
{
    [Theory]
    [InlineData("lit.duvv", "lit.duv")]
    [InlineData("lit.cct", "lit.cct_k")]
    [InlineData("afterglow.luminance_mcd", "afterglow.luminance_mcd_m2")]
    public void A_target_on_an_unknown_figure_is_refused_with_the_nearest(string wrong, string near)
    {
        var problem = Refused(Sample.OneLayer + $"targets:\n  - figure: {wrong}\n    at_least: 0\n");
        Assert.Equal((10, 13), (problem.Place!.Value.Line, problem.Place!.Value.Column));
        Assert.Contains($"'{wrong}'", problem.Text, StringComparison.Ordinal);
        Assert.Contains($"'{near}'", problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_target_on_a_known_figure_is_no_problem()
    {
        var outcome = TestRecipe.Predictor.Check(
            Sample.With(
                "targets:\n  - figure: afterglow.luminance_mcd_m2\n    at_minutes: 60\n    at_least: 5\n"
                    + "  - figure: lit.duv\n    at_most: 0.02\n"
            )
        );
        Assert.Empty(outcome.Problems);
    }

    [Theory]
    [InlineData(300, 2)]
    [InlineData(150, 2.5)]
    [InlineData(40, 4)]
    public void Grains_beyond_the_series_are_refused_at_the_layer(double medianUm, double gsd)
    {
        var problem = Refused(
            Sample.OneLayer.Replace(
                "loading_percent: 20",
                $"loading_percent: 20\n    grain_median_um: {medianUm}\n    grain_gsd: {Invariant(gsd)}",
                StringComparison.Ordinal
            )
        );
        Assert.Equal(7, problem.Place!.Value.Line);
        Assert.Contains($"{medianUm} µm (spread {Invariant(gsd)})", problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_of_more_than_24_hours_does_not_repeat()
    {
        var problem = Refused(
            Sample.OneLayer
                + "charge:\n  start: settled-daily\n  steps:\n    - light: own-leds\n      minutes: 1500\n"
        );
        Assert.Equal(10, problem.Place!.Value.Line);
    }

    [Theory]
    [InlineData("")]
    [InlineData("format: 1\n")]
    [InlineData("[")]
    public void What_is_no_recipe_gives_problems_and_no_prediction(string text)
    {
        var outcome = TestRecipe.Predictor.Predict(RecipeDocument.Read(text, "a.yaml"));
        Assert.Null(outcome.Prediction);
        Assert.Contains(outcome.Problems, p => p.Severity == Severity.Error);
    }

    private static Problem Refused(string text)
    {
        var outcome = TestRecipe.Predictor.Predict(Sample.Read(text));
        Assert.Null(outcome.Prediction);
        return Assert.Single(outcome.Problems, p => p.Severity == Severity.Error);
    }

    private static string Invariant(double value) => value.ToString(CultureInfo.InvariantCulture);
}
