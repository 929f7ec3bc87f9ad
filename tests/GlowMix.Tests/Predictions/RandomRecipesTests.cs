using System.Globalization;
using System.Text;
using GlowMix.Documents;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Tests.Predictions;

/// <summary>Recipes drawn from all that is allowed, ends of the ranges more often than their middle.</summary>
public class RandomRecipesTests
{
    private readonly Random random = new(7);

    [Fact]
    public void Whatever_a_recipe_may_say_is_predicted_or_refused_in_words()
    {
        int predicted = 0;
        for (int i = 0; i < 40; i++)
        {
            string text = Recipe();
            var outcome = TestRecipe.Predictor.Predict(RecipeDocument.Read(text, "a.yaml"));
            if (outcome.Prediction is not { } prediction)
            {
                Assert.Contains(outcome.Problems, p => p.Severity == Severity.Error && p.Text.Length > 0);
                continue;
            }
            predicted++;
            // That no figure is less than a number is the builder's to see to.
            foreach (var (figure, band) in prediction.Bands)
            {
                Assert.True(
                    band.Likely is null || (band.Low <= band.Likely && band.Likely <= band.High),
                    $"{figure}\n{text}"
                );
            }
            string[] shares = ["lit.blue", "afterglow.capacity", "lit.green"];
            foreach (var figure in FigureCatalogue.All)
            {
                double least = figure.Name.StartsWith("afterglow.", StringComparison.Ordinal)
                    ? 0
                    : double.MinValue;
                bool isShare = shares.Any(s => figure.Name.StartsWith(s, StringComparison.Ordinal));
                Assert.True(
                    prediction.Figures[figure] is not double value
                        || (value >= least && (!isShare || value is >= -1e-7 and <= 100 + 1e-7)),
                    $"{figure}\n{text}"
                );
            }
        }
        Assert.True(predicted > 20);
    }

    private string Recipe()
    {
        var text = new StringBuilder();
        void Line(FormattableString line) =>
            text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
        Line($"format: 1\nresin: epoxy-clear-slow\nled:");
        Line($"  material: {Any("warm-white-2700", "cool-white-6500")}\n  drive_ma: {Number(1e-3, 150)}");
        if (random.Next(2) == 0)
        {
            Line($"  count: {random.Next(1, 9)}\npour:");
            Line($"  length_mm: {Number(10, 1e5)}\n  width_mm: {Number(10, 1e5)}");
        }
        Line($"board:\n  material: {Any("white-mask", "black-mask")}\nlayers:");
        for (int layers = random.Next(1, 5); layers > 0; layers--)
        {
            Line($"  - depth_mm: {Number(0.01, 200)}");
            if (random.Next(3) > 0)
            {
                Line(
                    $"    pigment: {Any("green-aluminate", "green-twin")}\n    loading_percent: {Number(0.01, 80)}"
                );
                if (random.Next(3) == 0)
                {
                    Line($"    grain_median_um: {Any("15", "200")}\n    grain_gsd: 1");
                }
            }
        }
        Line($"charge:\n  start: {Any("empty", "settled-daily")}\n  steps:");
        for (int steps = random.Next(1, 3); steps > 0; steps--)
        {
            Line($"    - light: {Any("own-leds", "own-leds\n      with: fl11", "daylight-d65", "uv-365")}");
            if (!text.ToString().EndsWith("own-leds\n", StringComparison.Ordinal))
            {
                Line($"      {Any("irradiance_w_m2", "illuminance_lx")}: {Number(1e-9, 10_000)}");
            }
            Line($"      minutes: {Number(1e-3, 700)}\n      temperature_c: {Any("-40", "20", "80")}");
        }
        Line(
            $"darkness:\n  temperature_c: {Any("-40", "15", "80")}\n  limit_mcd_m2: {Number(0.001, 10_000)}"
        );
        return text.ToString();
    }

    private string Any(params string[] of) => of[random.Next(of.Length)];

    private double Number(double least, double most) =>
        random.NextDouble() switch
        {
            < 0.15 => least,
            > 0.85 => most,
            double t => least * Math.Pow(most / least, t),
        };
}
