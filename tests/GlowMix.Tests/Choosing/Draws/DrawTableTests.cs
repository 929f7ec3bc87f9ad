using GlowMix.Choosing;
using GlowMix.Choosing.Draws;
using GlowMix.Predictions;
using GlowMix.Tests.Predictions;
using MathNet.Numerics.Statistics;

namespace GlowMix.Tests.Choosing.Draws;

public sealed class DrawTableTests
{
    private static readonly Forecaster Forecaster = new(TestRecipe.Predictor);
    private static readonly TestRecipe Clear = new() { Layers = TestRecipe.Clear(3) };
    private static readonly TestRecipe Glowing = new();

    [Fact]
    public void Ends_of_512_draws_are_those_of_4096_within_a_twentieth_of_the_width()
    {
        // As many numbers as a piece has, some heavy, some light, some that only count together.
        const int Numbers = 18;
        static double Figure(double[] x) =>
            Enumerable.Range(0, Numbers).Sum(i => Gauss(x[i]) / (1 + i))
            + (0.5 * Gauss(x[0]) * Gauss(x[2]))
            + Math.Exp(0.7 * Gauss(x[1]));
        static double Gauss(double share) => Spread.Within(0, tolerance: 2).At(share);

        var points = SobolPoints.Scrambled(Numbers, seed: 1);
        double[] all = [.. Enumerable.Range(0, 4096).Select(i => Figure(points.Point(i)))];
        AssertEndsAgree(all[..512], all);
    }

    [Fact]
    public void Ends_of_512_draws_of_a_clear_piece_are_those_of_4096_within_a_twentieth_of_the_width()
    {
        var few = Drawn(Clear, 512);
        var many = Drawn(Clear, 4096);
        foreach (string figure in new[] { "lit.cct_k", "lit.duv", "lit.flux_lm", "lit.flux_kept_percent" })
        {
            var (one, other) = (BandOf(few, figure), BandOf(many, figure));
            double width = (other.High - other.Low)!.Value;
            Assert.Equal(other.Low!.Value, one.Low!.Value, tolerance: 0.05 * width);
            Assert.Equal(other.High!.Value, one.High!.Value, tolerance: 0.05 * width);
        }
    }

    [Fact]
    public void Same_draws_on_any_number_of_cores()
    {
        var one = Drawn(Glowing, 48, cores: 1);
        var two = Drawn(Glowing, 48, cores: 2);
        Assert.Equal(one.Bands, two.Bands);
        Assert.Equal(one.Decay!.LowMcdPerM2, two.Decay!.LowMcdPerM2);
        Assert.Equal(one.Decay.HighMcdPerM2, two.Decay.HighMcdPerM2);
    }

    [Fact]
    public void Likely_figures_are_told_first_and_lie_within_the_band()
    {
        Prediction? first = null;
        var drawn = Drawn(Glowing, 64, likely: p => first = p);
        Assert.Empty(first!.Bands);
        Assert.InRange(drawn.DrawCount, 50, 64);
        foreach (var (figure, band) in drawn.Bands)
        {
            Assert.Equal(first.Figures[figure], band.Likely);
            Assert.True(band.Low <= band.Likely && band.Likely <= band.High, figure.Name);
        }
        Assert.True(BandOf(drawn, "afterglow.luminance_mcd_m2[10]") is var glow && glow.Low < glow.High);
    }

    [Fact]
    public void Wider_tolerance_gives_a_wider_band()
    {
        static double Width(string toleranceMm)
        {
            var recipe = Clear with { Layers = $"  - depth_mm: 3\n    depth_tolerance_mm: {toleranceMm}\n" };
            var band = BandOf(Drawn(recipe, 256), "lit.flux_kept_percent");
            return (band.High - band.Low)!.Value;
        }
        Assert.True(Width("2") > Width("0"));
    }

    [Fact]
    public void Pigment_that_could_not_have_given_its_sheet_is_left_out_and_told()
    {
        var drawn = Drawn(Glowing, 256);
        Assert.InRange(drawn.DrawCount, 200, 255);
        Assert.Contains(drawn.Warnings, w => w.Code == "draws-left-out");
    }

    [Fact]
    public void Stopped_draws_are_no_prediction()
    {
        using var stop = new CancellationTokenSource();
        Assert.ThrowsAny<OperationCanceledException>(() =>
            Forecaster.Drawn(Clear.Document, likely: _ => stop.Cancel(), stop: stop.Token)
        );
    }

    private static Prediction Drawn(
        TestRecipe recipe,
        int draws,
        int? cores = null,
        Action<Prediction>? likely = null
    ) =>
        Forecaster
            .Drawn(
                recipe.Document,
                likely,
                draws: draws,
                cores: cores,
                stop: TestContext.Current.CancellationToken
            )
            .Prediction!;

    private static Band BandOf(Prediction prediction, string figure) =>
        prediction.Bands.Single(b => b.Key.Name == figure).Value;

    private static void AssertEndsAgree(double[] few, double[] many)
    {
        double low = many.Quantile(DrawTable.Tail);
        double high = many.Quantile(1 - DrawTable.Tail);
        Assert.Equal(low, few.Quantile(DrawTable.Tail), tolerance: 0.05 * (high - low));
        Assert.Equal(high, few.Quantile(1 - DrawTable.Tail), tolerance: 0.05 * (high - low));
    }
}
