using GlowMix.Optics.Slab;

namespace GlowMix.Tests.Optics.Slab;

/// <summary>
/// Phase functions of real particles, given by their moments, and stacks under a beam and diffuse light at once: test problems 4, 5, 9b
/// and 11 of the report on the program of Stamnes et al. (2000). Tables of moments and printed fluxes as public test suites carry
/// them; those of problem 5 from memory.
/// </summary>
public class PublishedPhaseTests
{
    /// <summary>(2l + 1) χ_l of Haze L, from l = 1: Garcia &amp; Siewert 1985.</summary>
    private static readonly double[] HazeL =
    [
        2.41260,
        3.23047,
        3.37296,
        3.23150,
        2.89350,
        2.49594,
        2.11361,
        1.74812,
        1.44692,
        1.17714,
        0.96643,
        0.78237,
        0.64114,
        0.51966,
        0.42563,
        0.34688,
        0.28351,
        0.23317,
        0.18963,
        0.15788,
        0.12739,
        0.10762,
        0.08597,
        0.07381,
        0.05828,
        0.05089,
        0.03971,
        0.03524,
        0.02720,
        0.02451,
        0.01874,
        0.01711,
        0.01298,
        0.01198,
        0.00904,
        0.00841,
        0.00634,
        0.00592,
        0.00446,
        0.00418,
        0.00316,
        0.00296,
        0.00225,
        0.00210,
        0.00160,
        0.00150,
        0.00115,
        0.00107,
        0.00082,
        0.00077,
        0.00059,
        0.00055,
        0.00043,
        0.00040,
        0.00031,
        0.00029,
        0.00023,
        0.00021,
        0.00017,
        0.00015,
        0.00012,
        0.00011,
        0.00009,
        0.00008,
        0.00006,
        0.00006,
        0.00005,
        0.00004,
        0.00004,
        0.00003,
        0.00003,
        0.00002,
        0.00002,
        0.00002,
        0.00001,
        0.00001,
        0.00001,
        0.00001,
        0.00001,
        0.00001,
        0.00001,
        0.00001,
    ];

    /// <summary>(2l + 1) χ_l of Cloud C.1, l = 1 to 32: Garcia &amp; Siewert 1985.</summary>
    private static readonly double[] CloudC1 =
    [
        2.544,
        3.883,
        4.568,
        5.235,
        5.887,
        6.457,
        7.177,
        7.859,
        8.494,
        9.286,
        9.856,
        10.615,
        11.229,
        11.851,
        12.503,
        13.058,
        13.626,
        14.209,
        14.660,
        15.231,
        15.641,
        16.126,
        16.539,
        16.934,
        17.325,
        17.673,
        17.999,
        18.329,
        18.588,
        18.885,
        19.103,
        19.345,
    ];

    /// <summary>(2l + 1) χ_l of problem 9b (Devaux et al. 1979, the name from memory), from l = 1.</summary>
    private static readonly double[] Problem9 =
    [
        2.00916,
        1.56339,
        0.67407,
        0.22215,
        0.04725,
        0.00671,
        0.00068,
        0.00005,
    ];

    /// <summary>Optical depth 1, 32 streams; flux π across the beam.</summary>
    [Theory]
    [InlineData(1, 1, 1.73223e-1, 1.81264)]
    [InlineData(0.9, 1, 1.23665e-1, 1.51554)]
    [InlineData(0.9, 0.5, 2.25487e-1, 8.03294e-1)]
    public void Problem_4_a_haze(double albedo, double cosine, double up, double down)
    {
        BeamFate beam = Slab(8, 0, (1, albedo, HazeL)).OfBeam(cosine);
        double flux = Math.PI * cosine;
        Assert.Equal(up, flux * beam.Light.Escaped, 7e-7);
        Assert.Equal(down, flux * (beam.Light.AbsorbedByFloor - beam.DirectAtFloor), 5e-6);
    }

    /// <summary>Optical depth 64, nothing absorbed: half of the scattering goes into the forward peak that delta-M cuts.</summary>
    [Fact]
    public void Problem_5a_a_cloud()
    {
        BeamFate beam = Slab(8, 0, (64, 1, CloudC1)).OfBeam(1);
        Assert.Equal(2.66174, Math.PI * beam.Light.Escaped, 5e-6);
        Assert.Equal(4.79851e-1, Math.PI * beam.Light.AbsorbedByFloor, 5e-6);
    }

    /// <summary>Six layers, optical depths 1 to 6 downwards, albedos 0.65 to 0.90; 8 streams, unit flux from above.</summary>
    [Fact]
    public void Problem_9b_six_layers()
    {
        var layers = Enumerable.Range(0, 6).Select(i => (i + 1.0, 0.65 + (0.05 * i), Problem9));
        Assert.Equal(1.000789e-1, Slab(2, 0, [.. layers]).FromSky.Escaped, 6e-7);
    }

    /// <summary>
    /// One layer over a floor of 0.5: beam of unit flux at cosine 0.5 and half a unit of diffuse light. What the floor sends up is
    /// what it keeps.
    /// </summary>
    [Fact]
    public void Problem_11_a_beam_and_diffuse_light_over_a_floor()
    {
        SlabSolution slab = Slab(4, 0.5, (1, 0.9, []));
        BeamFate beam = slab.OfBeam(0.5);
        Assert.Equal(5.013753e-1, 0.5 * (beam.Light.Escaped + slab.FromSky.Escaped), 5.1e-8);
        Assert.Equal(2.700154e-1, 0.5 * (beam.Light.AbsorbedByFloor + slab.FromSky.AbsorbedByFloor), 5.1e-8);
    }

    private static SlabSolution Slab(
        int nodes,
        double floor,
        params (double Tau, double Albedo, double[] Printed)[] fromTop
    )
    {
        Layer[] layers =
        [
            .. fromTop
                .Reverse()
                .Select(l => new Layer(
                    new Medium(l.Tau * (1 - l.Albedo), l.Tau * l.Albedo, Moments(l.Printed)),
                    1
                )),
        ];
        return SlabSolution.Of(new LayerStack(1, layers), floor, nodes);
    }

    private static double[] Moments(double[] printed) => [1, .. printed.Select((m, i) => m / ((2 * i) + 3))];
}
