using GlowMix.Optics.Slab;

namespace GlowMix.Tests.Optics.Slab;

/// <summary>
/// Fluence at depths counted from the face, in units of the incident flux, as computed for these tests by an independent code
/// (Henyey–Greenstein; stable to 1e-5 between 80 and 120 nodes, to 2e-5 where g is 0.9).
/// </summary>
public class FluenceTests
{
    private static readonly double[] DepthShares = [0, 0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 1];

    public static TheoryData<double, double, double, double, double, bool, double[]> Rows() =>
        new()
        {
            // τ, albedo, g, index, floor, beam, values
            {
                2,
                0.9,
                0.75,
                1,
                0,
                true,
                [1.22116, 1.26988, 1.29305, 1.31400, 1.26172, 1.13752, 1.02720, 0.90766]
            },
            {
                10,
                0.99,
                0.75,
                1.5,
                0.3,
                false,
                [4.03928, 4.02212, 3.94047, 3.51763, 2.69484, 1.93574, 1.50408, 1.14046]
            },
            {
                10,
                0.99,
                0.75,
                1.5,
                0.3,
                true,
                [3.89164, 3.91288, 3.89775, 3.65483, 2.91938, 2.12342, 1.65410, 1.25548]
            },
            {
                5,
                0.9,
                0.9,
                1.5,
                0.85,
                false,
                [1.71599, 1.69883, 1.67760, 1.60137, 1.47383, 1.39959, 1.41131, 1.49551]
            },
            {
                5,
                0.9,
                0.9,
                1.5,
                0.85,
                true,
                [1.64447, 1.63362, 1.62175, 1.58435, 1.53363, 1.53289, 1.58921, 1.71799]
            },
            {
                30,
                0.9995,
                0.8,
                1.41,
                0,
                false,
                [5.71198, 5.62659, 5.40319, 4.57993, 3.20993, 1.89189, 1.11125, 0.48215]
            },
            {
                1,
                0.5,
                0,
                1.55,
                0.3,
                false,
                [1.58587, 1.53094, 1.47613, 1.31919, 1.09362, 0.91839, 0.83929, 0.80201]
            },
        };

    [Theory]
    [MemberData(nameof(Rows))]
    public void Fluence_at_depths(
        double tau,
        double albedo,
        double g,
        double n,
        double rho,
        bool beam,
        double[] values
    )
    {
        var medium = Medium.HenyeyGreenstein(tau * (1 - albedo), tau * albedo, g, 300);
        var stack = new LayerStack(n, new Layer(medium, 1));
        var fine = SlabSolution.Of(stack, rho, nodes: 48);
        var standard = SlabSolution.Of(stack, rho);
        for (int i = 0; i < values.Length; i++)
        {
            double height = 1 - DepthShares[i];
            Assert.Equal(values[i], Light(fine).Fluence(0, height), g == 0.9 ? 2.5e-5 : 1.1e-5);
            if (!beam)
            {
                Assert.Equal(values[i], Light(standard).Fluence(0, height), 2e-4 * values[i]);
            }
        }

        SourceFate Light(SlabSolution slab) => beam ? slab.OfBeam(1).Light : slab.FromSky;
    }

    [Fact]
    public void A_height_outside_the_layer_is_refused()
    {
        var slab = SlabSolution.Of(new LayerStack(1.5, new Layer(Medium.Clear(1), 2)));
        Assert.Throws<ArgumentOutOfRangeException>(() => slab.FromSky.Fluence(0, -1e-9));
        Assert.Throws<ArgumentOutOfRangeException>(() => slab.FromSky.Fluence(0, 2.001));
        Assert.Throws<ArgumentOutOfRangeException>(() => slab.FromSky.Fluence(0, double.NaN));
    }
}
