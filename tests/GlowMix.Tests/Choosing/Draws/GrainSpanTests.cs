using GlowMix.Choosing.Draws;
using GlowMix.Materials;
using GlowMix.Optics.Grains;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Tests.Choosing.Draws;

public sealed class GrainSpanTests
{
    private static readonly Shelf Shelf = new();
    private static readonly OpticsShelf Optics = new();

    // A single grid carried to three times the size had 1 - g at a third of what it is; what is left here is the ringing of 40
    // sizes in both averages.
    [Theory]
    [InlineData("green-aluminate", "epoxy-clear-slow", 3, 1 / 2.4)]
    [InlineData("green-aluminate", "epoxy-clear-slow", 3, 3)]
    [InlineData("green-sulfide", "silicone-clear", 2, 0.5)]
    public void Grains_far_from_the_stated_size_are_those_of_the_series(
        string pigmentName,
        string resinName,
        double factor,
        double size
    )
    {
        Pigment pigment = Shelf.Pigment(pigmentName).Material!;
        Resin resin = Shelf.Resin(resinName).Material!;
        var span = new GrainSpan(pigment, resin, 20, 1.5, factor, Optics);

        GrainTable table = span.At(1, pigment.RefractiveIndex.Value, resin.RefractiveIndex.Value, size).Whole;

        GrainTable series = Optics.Average(pigment, resin, size * 20, 1.5, highestMoment: 12).Whole;
        AssertMean(table.AbsorptionPerMm, series.AbsorptionPerMm);
        AssertMean(table.ScatteringPerMm, series.ScatteringPerMm);
        AssertMean(table.Asymmetry.Select(g => 1 - g), series.Asymmetry.Select(g => 1 - g));
    }

    [Theory]
    [InlineData(80, 2, 10)]
    [InlineData(300, 1, 3)]
    [InlineData(0.5, 1.2, 10)]
    [InlineData(0.5, 4, 10)]
    public void Sizes_that_the_series_does_not_reach_count_as_the_nearest_that_it_does(
        double medianUm,
        double gsd,
        double factor
    )
    {
        Pigment pigment = Shelf.Pigment("green-aluminate").Material!;
        Resin resin = Shelf.Resin("epoxy-clear-slow").Material!;
        var span = new GrainSpan(pigment, resin, medianUm, gsd, factor, Optics);
        foreach (double size in (double[])[1 / factor, 1, factor])
        {
            GrainTable table = span.At(
                1,
                pigment.RefractiveIndex.Value,
                resin.RefractiveIndex.Value,
                size
            ).Whole;
            Assert.All(table.ScatteringPerMm.Samples.ToArray(), s => Assert.InRange(s, 1e-3, 1e5));
            Assert.All(table.Asymmetry.Samples.ToArray(), g => Assert.InRange(g, 0, 1));
        }
    }

    [Fact]
    public void A_size_without_doubt_is_one_grid()
    {
        Pigment pigment = Shelf.Pigment("green-aluminate").Material!;
        Resin resin = Shelf.Resin("epoxy-clear-slow").Material!;
        var span = new GrainSpan(pigment, resin, 40, 1.5, 1, Optics);
        Assert.Equal(
            span.Own.At(1.3, pigment.RefractiveIndex.Value, resin.RefractiveIndex.Value).Whole.Asymmetry[30],
            span.At(1.3, pigment.RefractiveIndex.Value, resin.RefractiveIndex.Value).Whole.Asymmetry[30]
        );
    }

    private static void AssertMean(Spectrum found, Spectrum expected)
    {
        double sum = expected.IntegralOverNm();
        Assert.Equal(sum, found.IntegralOverNm(), tolerance: 0.005 * sum);
    }
}
