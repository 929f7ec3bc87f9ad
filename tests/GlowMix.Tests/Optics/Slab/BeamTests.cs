using GlowMix.Optics.Slab;
using static GlowMix.Tests.Optics.Slab.AddingDoubling;

namespace GlowMix.Tests.Optics.Slab;

/// <summary>What holds for any collimated beam on a slab.</summary>
public class BeamTests
{
    /// <summary>Light lost by the beam is found in the slab or outside, at any depth, slant and loss, in a stack too.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(0.7)]
    [InlineData(0.1)]
    [InlineData(1e-3)]
    public void No_light_of_a_beam_is_lost_or_made(double cosine)
    {
        foreach (double index in new[] { 1, 1.5 })
        {
            foreach (double albedo in new[] { 0, 0.3, 0.999, 1 })
            {
                foreach (double tau in new[] { 0, 1e-9, 1e-3, 1, 30, 1000 })
                {
                    var medium = Medium.HenyeyGreenstein(tau * (1 - albedo), tau * albedo, 0.9, 128);
                    var clear = Medium.Clear(0.1);
                    foreach (
                        var layers in new Layer[][]
                        {
                            [new(medium, 1)],
                            [new(clear, 1), new(medium, 0.3), new(medium, 0.7), new(clear, 1)],
                        }
                    )
                    {
                        var light = SlabSolution
                            .Of(new LayerStack(index, layers), floorReflectance: 0.4)
                            .OfBeam(cosine)
                            .Light;
                        double sum = light.Escaped + light.AbsorbedByFloor + light.AbsorbedInLayers.Sum();
                        Assert.Equal(1, sum, 1e-12);
                    }
                }
            }
        }
    }

    /// <summary>A mode that falls off exactly as the beam does: nothing may divide by the difference.</summary>
    [Fact]
    public void A_beam_in_step_with_a_mode_is_no_special_case()
    {
        // Isotropic scattering, no face: rates come from 16 Gauss nodes; put the beam on each and next to it.
        var medium = Medium.HenyeyGreenstein(0.2, 0.8, 0, 128);
        var quadrature = StreamQuadrature.For(1);
        var modes = new LayerModes(quadrature.Count);
        modes.Solve(medium, quadrature);
        var slab = SlabSolution.Of(new LayerStack(1, new Layer(medium, 3)), 0.2);
        int tried = 0;
        foreach (double rate in modes.Rates.Where(k => k > 1))
        {
            var at = slab.OfBeam(1 / rate).Light;
            foreach (double aside in new[] { 1e-12, 1e-8, 1e-4 })
            {
                var near = slab.OfBeam((1 + aside) / rate).Light;
                Assert.Equal(at.Escaped, near.Escaped, 1e-12 + (3 * aside));
                Assert.Equal(at.AbsorbedInLayers[0], near.AbsorbedInLayers[0], 1e-12 + (3 * aside));
                Assert.Equal(at.Fluence(0, 2), near.Fluence(0, 2), 1e-11 + (30 * aside));
            }
            Assert.Equal(1, at.Escaped + at.AbsorbedByFloor + at.AbsorbedInLayers[0], 1e-11);
            tried++;
        }
        Assert.True(tried >= 14);
    }

    [Theory]
    [InlineData(1, 0.9, 0.75, 1.5, 0.3, 1)]
    [InlineData(4, 0.99, 0.8, 1.41, 0.85, 0.5)]
    [InlineData(0.3, 1, 0, 1.57, 0, 0.2)]
    [InlineData(8, 0.95, 0.5, 1, 0.5, 0.7)]
    [InlineData(20, 0.999, 0.75, 1.5, 0.85, 0.9)]
    public void Beam_agrees_with_adding_and_doubling(
        double tau,
        double albedo,
        double g,
        double n,
        double rho,
        double cosine
    )
    {
        var reference = new AddingDoubling(n, nodes: 24, beamCosine: cosine);
        var third = Stuff.HenyeyGreenstein(tau / 3, albedo, g);
        var expected = reference.FromBeam(rho, third, third, third);
        var light = One(tau, albedo, g, n, rho, nodes: 16).OfBeam(cosine).Light;
        Assert.Equal(expected.Escaped, light.Escaped, 1e-5);
        Assert.Equal(expected.AbsorbedByFloor, light.AbsorbedByFloor, 1e-5);
        for (int i = 0; i <= 3; i++)
        {
            Assert.Equal(1, light.Fluence(0, i / 3.0) / expected.FluenceAtFaces[i], 1e-4);
        }
    }

    /// <summary>Beams over all slants, weighed by their cosine, are Lambertian light.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(1.5)]
    public void Beams_of_all_slants_add_up_to_diffuse_light(double index)
    {
        var slab = One(3, 0.95, 0.75, index, 0.5, nodes: 16);
        var rule = new MathNet.Numerics.Integration.GaussLegendreRule(0, 1, 32);
        double escaped = 0;
        double fluence = 0;
        for (int i = 0; i < rule.Order; i++)
        {
            double cosine = rule.Abscissas[i];
            var light = slab.OfBeam(cosine).Light;
            escaped += 2 * cosine * rule.Weights[i] * light.Escaped;
            fluence += 2 * cosine * rule.Weights[i] * light.Fluence(0, 0.4);
        }
        Assert.Equal(slab.FromSky.Escaped, escaped, 2e-6);
        Assert.Equal(slab.FromSky.Fluence(0, 0.4), fluence, 2e-5);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-0.5)]
    [InlineData(1.0001)]
    [InlineData(double.NaN)]
    public void A_cosine_out_of_range_is_refused(double cosine)
    {
        var slab = One(1, 0.5, 0, 1.5, 0, nodes: 2);
        Assert.Throws<ArgumentOutOfRangeException>(() => slab.OfBeam(cosine));
    }

    private static SlabSolution One(
        double tau,
        double albedo,
        double g,
        double index,
        double rho,
        int nodes
    ) =>
        SlabSolution.Of(
            new LayerStack(
                index,
                new Layer(Medium.HenyeyGreenstein(tau * (1 - albedo), tau * albedo, g, 300), 1)
            ),
            rho,
            nodes
        );
}
