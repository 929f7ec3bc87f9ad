using GlowMix.Choosing.Draws;
using GlowMix.Materials;
using GlowMix.Optics.Grains;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Tests.Choosing.Draws;

public sealed class GrainGridTests
{
    private const double MedianUm = 15;
    private const double Gsd = 1.5;
    private const double MostOff = 0.002;
    private static readonly Shelf Shelf = new();
    private static readonly Pigment Pigment = Shelf.Pigment("green-aluminate").Material!;
    private static readonly Resin Resin = Shelf.Resin("epoxy-clear-slow").Material!;
    private static readonly OpticsShelf Optics = new(readsDerived: false, sizeCount: 320);
    private static readonly GrainGrid Grid = new(Pigment, Resin, MedianUm, Gsd, sizeFactor: 1.2, Optics);

    [Fact]
    public void Materials_as_they_stand_give_their_own_grains()
    {
        var own = Optics.GrainsOf(Pigment, Resin, MedianUm, Gsd).Whole;
        var table = Grid.At(1, Pigment.RefractiveIndex.Value, Resin.RefractiveIndex.Value).Whole;
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            Assert.Equal(
                own.AbsorptionPerMm[i],
                table.AbsorptionPerMm[i],
                tolerance: 1e-9 * own.AbsorptionPerMm[i]
            );
            Assert.Equal(
                own.ScatteringPerMm[i],
                table.ScatteringPerMm[i],
                tolerance: 1e-9 * own.ScatteringPerMm[i]
            );
            Assert.Equal(own.Asymmetry[i], table.Asymmetry[i], tolerance: 1e-12);
        }
    }

    [Theory]
    [InlineData(0.6, 0.01, 0, 1)]
    [InlineData(2, 0, 0, 1)]
    [InlineData(1.3, 0, -0.012, 1)]
    [InlineData(1, 0.02, 0, 1)]
    [InlineData(1.2, 0.005, 0.005, 1.1)]
    [InlineData(0.7, 0, 0, 0.9)]
    public void Interpolated_grains_are_those_of_the_series_within_a_fifth_of_a_percent(
        double absorption,
        double pigmentShift,
        double resinShift,
        double size
    )
    {
        var pigment = Pigment with
        {
            AbsorptionPerMm = Pigment.AbsorptionPerMm.Select(a => absorption * a),
            RefractiveIndex = Pigment.RefractiveIndex.Select(n => IndexDoubt.Shifted(n, pigmentShift)),
        };
        var resin = Resin with
        {
            RefractiveIndex = Resin.RefractiveIndex.Select(n => IndexDoubt.Shifted(n, resinShift)),
        };
        var series = Optics.Average(pigment, resin, size * MedianUm, Gsd, highestMoment: 12).Whole;
        var table = Grid.At(
            absorption,
            pigment.RefractiveIndex.Value,
            resin.RefractiveIndex.Value,
            size
        ).Whole;

        // Light that charges, all together: at single wavelengths the series rings by as much itself.
        int charging = (480 - WavelengthGrid.FirstNm) / WavelengthGrid.StepNm;
        double absorbed = Enumerable.Range(0, charging).Sum(i => table.AbsorptionPerMm[i]);
        double expected = Enumerable.Range(0, charging).Sum(i => series.AbsorptionPerMm[i]);
        Assert.Equal(expected, absorbed, tolerance: MostOff * expected);
        AssertNear(MeanSquare(i => table.ScatteringPerMm[i], i => series.ScatteringPerMm[i]));
        for (int l = 1; l <= 12; l++)
        {
            int order = l;
            AssertNear(MeanSquare(i => table.Moments(i).Span[order], i => series.Moments(i).Span[order]));
        }
    }

    [Fact]
    public void Grains_that_match_the_resin_stay_possible()
    {
        double match = Resin.RefractiveIndex.Value[42] - Pigment.RefractiveIndex.Value[42];
        foreach (double beyond in new[] { -0.02, -0.003, 0, 0.004, 0.02 })
        {
            GrainTable table = Grid.At(
                3,
                IndexDoubt.Shifted(Pigment.RefractiveIndex.Value, match + beyond),
                Resin.RefractiveIndex.Value
            ).Whole;
            for (int i = 0; i < WavelengthGrid.Count; i++)
            {
                Assert.InRange(table.AbsorptionPerMm[i], 0, 1e3);
                Assert.InRange(table.ScatteringPerMm[i], 0, 1e4);
                Assert.All(table.Moments(i).ToArray(), m => Assert.InRange(m, -1, 1));
            }
        }
    }

    // Of the relative difference.
    private static double MeanSquare(Func<int, double> found, Func<int, double> expected) =>
        Enumerable.Range(0, WavelengthGrid.Count).Average(i => Math.Pow((found(i) / expected(i)) - 1, 2));

    private static void AssertNear(double meanSquare) =>
        Assert.True(Math.Sqrt(meanSquare) <= MostOff, $"{100 * Math.Sqrt(meanSquare)} %");
}
