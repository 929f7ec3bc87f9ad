using System.Numerics;
using GlowMix.Optics.Grains;
using GlowMix.Optics.Slab;

namespace GlowMix.Tests.Optics.Slab;

/// <summary>How many directions and which phase function a pour needs.</summary>
public class StreamsNeededTests
{
    private static readonly double[] Depths = [1, 2, 5, 10, 25, 60];

    public static TheoryData<double, double, double, double> Pours() =>
        new()
        {
            // albedo, g, index, floor
            { 0.97, 0.97, 1.5, 0.3 },
            { 0.999, 0.97, 1.5, 0.88 },
            { 1, 0.97, 1.5, 0 },
            { 0.99, 0.95, 1.41, 0.88 },
            { 0.9998, 0.95, 1.57, 0.94 },
            { 0.99, 0.9, 1.5, 0.05 },
            { 0.999, 0.75, 1.5, 0.88 },
        };

    /// <summary>Under Lambertian light 8 + 8 nodes are 1e-4 from 32 + 32, fluence inside too; 6 + 6, as pours are solved, 2e-4.</summary>
    [Theory]
    [MemberData(nameof(Pours))]
    public void Few_directions_are_enough_under_diffuse_light(double albedo, double g, double n, double rho)
    {
        foreach (double tau in Depths)
        {
            var stack = One(Medium.HenyeyGreenstein(tau * (1 - albedo), tau * albedo, g, 64), n);
            var fine = SlabSolution.Of(stack, rho, nodes: 32);
            foreach (var (nodes, tolerance) in new[] { (8, 1e-4), (6, 2e-4) })
            {
                var coarse = SlabSolution.Of(stack, rho, nodes);
                foreach (
                    var (expected, actual) in new[]
                    {
                        (fine.FromSky, coarse.FromSky),
                        (fine.FromFloor, coarse.FromFloor),
                    }
                )
                {
                    Assert.Equal(expected.Escaped, actual.Escaped, tolerance);
                    Assert.Equal(expected.AbsorbedByFloor, actual.AbsorbedByFloor, tolerance);
                    Assert.Equal(expected.AbsorbedInLayers[0], actual.AbsorbedInLayers[0], tolerance);
                    foreach (double height in new[] { 0.2, 0.5, 0.8 })
                    {
                        double ratio = actual.Fluence(0, height) / expected.Fluence(0, height);
                        Assert.Equal(1, ratio, 10 * tolerance);
                    }
                }
            }
        }
    }

    /// <summary>A cut forward peak is only another way to say the same, once there are enough directions.</summary>
    [Theory]
    [InlineData(0.75, 16, 1e-6)]
    [InlineData(0.9, 32, 2e-6)]
    [InlineData(0.95, 64, 2e-6)]
    public void Answer_does_not_depend_on_delta_M(double g, int nodes, double tolerance)
    {
        var with = Medium.HenyeyGreenstein(0.05, 5, g, 200);
        // Moments left out count as zero, and the one that delta-M would cut off is the first of them.
        var without = with with
        {
            PhaseMoments = with.PhaseMoments[..(2 * nodes)],
        };
        var cut = SlabSolution.Of(One(with, 1.5), 0.5, nodes);
        var whole = SlabSolution.Of(One(without, 1.5), 0.5, nodes);
        Assert.Equal(cut.FromSky.Escaped, whole.FromSky.Escaped, tolerance);
        Assert.Equal(cut.FromFloor.Escaped, whole.FromFloor.Escaped, tolerance);
        Assert.Equal(cut.FromSky.AbsorbedInLayers[0], whole.FromSky.AbsorbedInLayers[0], tolerance);
        Assert.Equal(1, whole.FromSky.Fluence(0, 0.5) / cut.FromSky.Fluence(0, 0.5), 10 * tolerance);
    }

    /// <summary>
    /// What Henyey–Greenstein of the same g costs against the grains' own phase function, as two independent codes found it:
    /// the largest error of the share sent back and of the share absorbed under diffuse light, optical depth 1 to 60, floor 0.3.
    /// The second moments of the two programs' grains, averaged over other sizes, differ by a tenth of what parts them from g².
    /// </summary>
    [Theory]
    [InlineData(5, 1.5, 450, 1.5, 1, 0.99834, -0.0005, 0.0002)]
    [InlineData(25, 1.5, 450, 1.5, 1, 0.99126, -0.0034, 0.0043)]
    [InlineData(40, 1.4, 520, 1.41, 0, 1, -0.0024, 0)]
    public void HenyeyGreenstein_is_within_half_a_percent_of_the_grains_own_phase_function(
        double medianUm,
        double deviation,
        double nm,
        double resinIndex,
        double absorptionPerMm,
        double albedo,
        double errorSentBack,
        double errorAbsorbed
    )
    {
        double perUm = Math.PI * resinIndex / (nm * 1e-3);
        var sizes = GrainSizes.ByMass(medianUm, deviation).Nodes(40);
        using var coupling = new CouplingTable(LorenzMie.TermsFor(sizes.DiametersUm[^1] * perUm), 32);
        var index = new Complex(1.65, absorptionPerMm * nm * 1e-6 / (4 * Math.PI)) / resinIndex;
        var grains = GrainAverage.OneByOne(new GrainOptics(index, perUm), sizes, coupling);

        double worstBack = 0;
        double worstAbsorbed = 0;
        foreach (double tau in new[] { 1, 1.5, 2, 3, 4, 6, 8, 12, 16, 22, 30, 45, 60 })
        {
            var own = new Medium(tau * (1 - albedo), tau * albedo, grains.Moments);
            var stand = Medium.HenyeyGreenstein(tau * (1 - albedo), tau * albedo, grains.Moments[1]);
            var exact = SlabSolution.Of(One(own, resinIndex), 0.3, nodes: 16).FromSky;
            var close = SlabSolution.Of(One(stand, resinIndex), 0.3, nodes: 16).FromSky;
            worstBack = Larger(worstBack, close.Escaped - exact.Escaped);
            worstAbsorbed = Larger(worstAbsorbed, close.AbsorbedInLayers[0] - exact.AbsorbedInLayers[0]);
        }
        Assert.Equal(errorSentBack, worstBack, 1e-4 + Math.Abs(0.12 * errorSentBack));
        Assert.Equal(errorAbsorbed, worstAbsorbed, 1e-4 + Math.Abs(0.12 * errorAbsorbed));

        static double Larger(double one, double other) => Math.Abs(other) > Math.Abs(one) ? other : one;
    }

    private static LayerStack One(Medium medium, double index) => new(index, new Layer(medium, 1));
}
