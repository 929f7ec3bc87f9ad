using GlowMix.Optics.Slab;

namespace GlowMix.Tests.Optics.Slab;

/// <summary>Slabs with a Fresnel face to air over a Lambertian floor.</summary>
public class MismatchedSlabTests
{
    /// <summary>
    /// Computed for these tests by two independent codes: adding–doubling at 24 + 24 nodes, and a photon Monte Carlo of 4·10⁶
    /// that agrees within its noise of 3e-4. Henyey–Greenstein; 'diffuse' light from the air, its reflection included.
    /// </summary>
    [Theory]
    [InlineData(1, 0.9, 0.75, 1.5, 0, 0.11020, 0.13255, 0.75724)]
    [InlineData(4, 0.99, 0.9, 1.5, 0.85, 0.57295, 0.20946, 0.21759)]
    [InlineData(15, 0.97, 0.95, 1.41, 0, 0.12837, 0.52636, 0.34527)]
    public void Diffuse_light_from_the_air(
        double tau,
        double albedo,
        double g,
        double n,
        double rho,
        double back,
        double inLayer,
        double inFloor
    )
    {
        var fate = One(tau, albedo, g, n, rho).FromSky;
        Assert.Equal(back, fate.Escaped, 2e-5);
        Assert.Equal(inLayer, fate.AbsorbedInLayers[0], 2e-5);
        Assert.Equal(inFloor, fate.AbsorbedByFloor, 2e-5);
    }

    /// <summary>As above; unit Lambertian flux sent up from the floor.</summary>
    [Theory]
    [InlineData(15, 0.97, 0.95, 1.41, 0, 0.17367, 0.60634, 0.21999)]
    [InlineData(4, 0.99, 0.9, 1.5, 0.85, 0.64471, 0.20997, 0.14533)]
    public void Light_from_the_floor(
        double tau,
        double albedo,
        double g,
        double n,
        double rho,
        double escaped,
        double inLayer,
        double inFloor
    )
    {
        var fate = One(tau, albedo, g, n, rho).FromFloor;
        Assert.Equal(escaped, fate.Escaped, 2e-5);
        Assert.Equal(inLayer, fate.AbsorbedInLayers[0], 2e-5);
        Assert.Equal(inFloor, fate.AbsorbedByFloor, 2e-5);
    }

    /// <summary>As above; isotropic emitter at mid-depth.</summary>
    [Theory]
    [InlineData(1, 0.9, 0.75, 1.5, 0, 0.14995)]
    [InlineData(4, 0.99, 0.9, 1.5, 0.85, 0.58253)]
    [InlineData(15, 0.97, 0.95, 1.41, 0, 0.14877)]
    [InlineData(0.3, 0.7, 0, 1.55, 0.85, 0.41720)]
    public void Light_of_an_emitter_at_mid_depth(
        double tau,
        double albedo,
        double g,
        double n,
        double rho,
        double escaped
    ) => Assert.Equal(escaped, One(tau, albedo, g, n, rho).EscapeShare(0, 0.5), 2e-5);

    /// <summary>
    /// Exact for any index: the closed integrals over the inside cosine, computed for these tests. Nothing scatters, so all
    /// that can be wrong is the face, the floor and Beer's law.
    /// </summary>
    [Theory]
    [InlineData(0.2, 1.41, 0.6, 0.2642793, 0.3373783)]
    [InlineData(1, 1.5, 0.85, 0.1245615, 0.0445317)]
    [InlineData(0.5, 1.55, 0.3, 0.1329710, 0.3702042)]
    [InlineData(3, 1.5, 0.85, 0.0921417, 0.0046547)]
    public void Absorber_without_scattering(double tau, double n, double rho, double back, double inFloor)
    {
        var clear = Medium.Clear(tau / 2);
        // The same as a clear layer, as one that scatters a trace, and as one above the other.
        var trace = Medium.HenyeyGreenstein(tau / 2, 1e-12, 0.5);
        foreach (
            var layers in new Layer[][]
            {
                [new(clear, 2)],
                [new(trace, 2)],
                [new(clear, 1), new(trace, 1)],
                [new(trace, 1), new(clear, 1)],
            }
        )
        {
            var fate = SlabSolution.Of(new LayerStack(n, layers), rho, nodes: 16).FromSky;
            Assert.Equal(back, fate.Escaped, 6e-8);
            Assert.Equal(inFloor, fate.AbsorbedByFloor, 6e-8);
            Assert.Equal(1 - back - inFloor, fate.AbsorbedInLayers.Sum(), 2e-7);
        }
    }

    /// <summary>Diffuse light through an absorber without faces: 2 E₃(τ), values of Abramowitz &amp; Stegun 1964, table 5.4, from memory and checked by quadrature.</summary>
    [Theory]
    [InlineData(0.1, 0.4162915)]
    [InlineData(1, 0.1096920)]
    [InlineData(2, 0.0301334)]
    public void Absorber_without_a_face_lets_twice_E3_through(double tau, double e3)
    {
        var fate = SlabSolution.Of(new LayerStack(1, new Layer(Medium.Clear(tau), 1)), nodes: 32).FromSky;
        Assert.Equal(2 * e3, fate.AbsorbedByFloor, 2e-7);
        Assert.Equal(0, fate.Escaped, 1e-14);
    }

    [Theory]
    [InlineData(1.33)]
    [InlineData(1.5)]
    [InlineData(1.57)]
    public void Nothing_over_a_black_floor_lets_in_what_the_face_does_not_send_back(double n)
    {
        foreach (var medium in new[] { Medium.Clear(1), Medium.HenyeyGreenstein(1, 1, 0.9) })
        {
            var fate = SlabSolution.Of(new LayerStack(n, new Layer(medium, 0))).FromSky;
            Assert.Equal(GlowMix.Optics.Fresnel.DiffuseFromOutside(n), fate.Escaped, 2e-7);
            Assert.Equal(1, fate.Escaped + fate.AbsorbedByFloor, 1e-12);
        }
    }

    /// <summary>No loss anywhere: light fills the slab to n² times the radiance outside, whatever scatters in it.</summary>
    [Theory]
    [InlineData(0.01, 0, 1)]
    [InlineData(1, 0.9, 1.5)]
    [InlineData(1000, 0.97, 1.5)]
    [InlineData(30, -0.3, 1.41)]
    [InlineData(0, 0.5, 1.57)]
    public void Lossless_slab_over_a_white_floor_holds_a_fluence_of_4_n_squared(
        double tau,
        double g,
        double n
    )
    {
        var fate = One(tau, 1, g, n, rho: 1).FromSky;
        Assert.Equal(1, fate.Escaped, 1e-10);
        for (int i = 0; i <= 10; i++)
        {
            Assert.Equal(4 * n * n, fate.Fluence(0, i / 10.0), 4 * n * n * 1e-9);
        }
    }

    private static SlabSolution One(double tau, double albedo, double g, double index, double rho) =>
        SlabSolution.Of(
            new LayerStack(
                index,
                new Layer(Medium.HenyeyGreenstein(tau * (1 - albedo), tau * albedo, g, 300), 1)
            ),
            rho
        );
}
