using System.Numerics;
using GlowMix.Optics.Grains;

namespace GlowMix.Tests.Optics.Grains;

public class GrainAverageTests
{
    [Theory]
    [InlineData(5, 1.5, 40, 32, 1e-6)]
    [InlineData(40, 1.5, 10, 32, 0)]
    [InlineData(3, 2, 7, 17, 0.1)]
    [InlineData(0.3, 1.2, 3, 2, 0.01)]
    [InlineData(12, 1, 1, 64, 1e-4)]
    public void Four_at_a_time_average_to_the_same_as_one_by_one(
        double medianUm,
        double deviation,
        int sizeCount,
        int highestMoment,
        double k
    )
    {
        Assert.SkipUnless(FourSpheres.IsSupported, "This processor has no AVX2 with FMA.");
        const double PerUm = Math.PI * 1.5 / 0.45;
        var index = new Complex(1.1, k);
        SizeNodes sizes = GrainSizes.ByMass(medianUm, deviation).Nodes(sizeCount);
        int terms = LorenzMie.TermsFor(sizes.DiametersUm[^1] * PerUm);
        using var coupling = new CouplingTable(terms, highestMoment);
        using var products = new AveragedProducts(sizes, coupling);
        using var otherProducts = new AveragedProducts(sizes, coupling);
        var optics = new GrainOptics(index, PerUm);
        var other = new GrainOptics(index + 0.05, 0.6 * PerUm);

        GrainAverage readable = GrainAverage.OneByOne(optics, sizes, coupling);
        GrainAverage otherReadable = GrainAverage.OneByOne(other, sizes, coupling);

        (GrainAverage fast, GrainAverage otherFast) = GrainAverage.FourAtATime(
            optics,
            other,
            (products, otherProducts)
        );

        AssertSame(readable, fast);
        AssertSame(otherReadable, otherFast);
    }

    // Each wavelength on its own: the neighbour it is computed with must not show.
    private static void AssertSame(GrainAverage readable, GrainAverage fast)
    {
        Assert.Equal(1, fast.ScatteringPerMm / readable.ScatteringPerMm, 1e-11);
        Assert.Equal(readable.AbsorptionPerMm, fast.AbsorptionPerMm, 1e-9 * readable.AbsorptionPerMm);
        for (int l = 0; l < readable.Moments.Length; l++)
        {
            Assert.Equal(readable.Moments[l], fast.Moments[l], 1e-11);
        }
    }

    [Fact]
    public void The_moments_of_two_sizes_are_weighted_by_their_scattering()
    {
        const double PerUm = 10;
        var index = new Complex(1.2, 0.001);
        var sizes = new SizeNodes([2, 5], [0.3, 0.7]);
        using var coupling = new CouplingTable(LorenzMie.TermsFor(50), 12);
        double[] expected = new double[13];
        for (int i = 0; i < 2; i++)
        {
            LorenzMie sphere = LorenzMie.SeriesOf(PerUm * sizes.DiametersUm[i], index);
            double scattering =
                sizes.MassShares[i] * sphere.Efficiencies().ScatteringEfficiency / sizes.DiametersUm[i];
            double[] moments = PhaseMoments.Of(sphere, 12);
            for (int l = 0; l <= 12; l++)
            {
                expected[l] += scattering * moments[l];
            }
        }

        GrainAverage average = GrainAverage.OneByOne(new GrainOptics(index, PerUm), sizes, coupling);

        for (int l = 0; l <= 12; l++)
        {
            Assert.Equal(expected[l] / expected[0], average.Moments[l], 1e-12);
        }
    }
}
