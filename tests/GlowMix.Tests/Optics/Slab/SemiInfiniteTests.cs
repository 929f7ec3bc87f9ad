using GlowMix.Optics.Slab;
using MathNet.Numerics.Integration;

namespace GlowMix.Tests.Optics.Slab;

/// <summary>
/// Isotropic scattering without an end and without a face: Chandrasekhar 1960 (van de Hulst 1980). For a beam the share sent back
/// is 1 − √(1 − a) H(μ), for diffuse light 1 − 2 √(1 − a) ∫H μ dμ.
/// </summary>
public class SemiInfiniteTests
{
    /// <summary>H from its integral equation at 200 Gauss nodes, computed for these tests; the last by Chandrasekhar 1960, table XI.</summary>
    [Theory]
    [InlineData(0.5, 1.25126, 0.146544)]
    [InlineData(0.8, 1.59822, 0.341867)]
    [InlineData(0.9, 1.85010, 0.478024)]
    [InlineData(0.95, 2.07712, 0.596669)]
    [InlineData(0.99, 2.47279, 0.794564)]
    public void Light_sent_back_follows_from_the_H_function(double albedo, double h, double diffuse)
    {
        var slab = Endless(albedo);
        Assert.Equal(diffuse, slab.FromSky.Escaped, 6e-7);
        double root = Math.Sqrt(1 - albedo);
        Assert.Equal(h, (1 - slab.OfBeam(1).Light.Escaped) / root, 6e-6);

        var (nodes, values) = HFunction(albedo);
        // Not the most grazing ones: there the H function's own nodes are too few.
        for (int i = 9; i < nodes.Length; i += 11)
        {
            double back = 1 - (root * values[i]);
            Assert.Equal(back, slab.OfBeam(nodes[i]).Light.Escaped, 2e-6);
        }
    }

    /// <summary>
    /// Where nothing is lost, H is what a beam leaves as fluence far below, in ∞: H(μ) √3 / 4 times the flux per μ; here as the
    /// ratio of two slants. H(1) = 2.90781 (Chandrasekhar 1960, table XI).
    /// </summary>
    [Fact]
    public void Through_a_deep_lossless_slab_beams_pass_as_their_H_functions()
    {
        var slab = SlabSolution.Of(
            new LayerStack(1, new Layer(Medium.HenyeyGreenstein(0, 1, 0, 64), 1000)),
            nodes: 16
        );
        var (nodes, values) = HFunction(1);
        double normal = slab.OfBeam(1).Light.AbsorbedByFloor;
        // Not the most grazing ones: there the H function's own nodes are too few.
        for (int i = 9; i < nodes.Length; i += 11)
        {
            double slant = slab.OfBeam(nodes[i]).Light.AbsorbedByFloor;
            Assert.Equal(values[i] / 2.90781, slant / normal, 4e-6);
        }
    }

    /// <summary>
    /// Diffuse light through a deep lossless slab: 4/3 over the depth and twice Milne's extrapolation length, which is Hopf's
    /// constant 0.71044609 (Placzek &amp; Seidel 1947; Chandrasekhar 1960, chapter III; digits from memory).
    /// </summary>
    [Theory]
    [InlineData(10, 3e-9)]
    [InlineData(50, 1e-12)]
    [InlineData(1000, 1e-12)]
    public void A_deep_lossless_slab_lets_through_what_Milnes_problem_says(double depth, double tolerance)
    {
        var stack = new LayerStack(1, new Layer(Medium.HenyeyGreenstein(0, depth, 0), 1));
        double through = SlabSolution.Of(stack, nodes: 16).FromSky.AbsorbedByFloor;
        Assert.Equal(4.0 / 3 / (depth + (2 * 0.7104460896)), through, tolerance);
    }

    [Theory]
    [InlineData(1, 0)]
    [InlineData(1.41, 0.9)]
    [InlineData(1.57, 0.97)]
    public void Without_loss_and_without_end_all_light_comes_back(double index, double g)
    {
        var stack = new LayerStack(index, new Layer(Medium.HenyeyGreenstein(0, 1, g, 64), 1e9));
        var slab = SlabSolution.Of(stack);
        Assert.Equal(1, slab.FromSky.Escaped, 1e-6);
        Assert.Equal(1, slab.OfBeam(0.5).Light.Escaped, 1e-6);
    }

    private static SlabSolution Endless(double albedo) =>
        SlabSolution.Of(
            new LayerStack(1, new Layer(Medium.HenyeyGreenstein(1 - albedo, albedo, 0, 64), 2000)),
            nodes: 16
        );

    /// <summary>1/H = √(1 − a) + (a/2) ∫ μ′ H(μ′) / (μ + μ′) dμ′, iterated (Chandrasekhar 1960, chapter V).</summary>
    private static (double[] Nodes, double[] Values) HFunction(double albedo)
    {
        var rule = new GaussLegendreRule(0, 1, 64);
        var (nodes, weights) = (rule.Abscissas, rule.Weights);
        double[] h = [.. Enumerable.Repeat(1.5, nodes.Length)];
        for (int pass = 0; pass < 400; pass++)
        {
            var next = new double[h.Length];
            for (int i = 0; i < h.Length; i++)
            {
                double sum = 0;
                for (int j = 0; j < h.Length; j++)
                {
                    double mu = nodes[j];
                    sum += weights[j] * mu * h[j] / (nodes[i] + mu);
                }
                next[i] = (h[i] + (1 / (Math.Sqrt(1 - albedo) + (albedo / 2 * sum)))) / 2;
            }
            h = next;
        }
        if (albedo == 1)
        {
            // Nothing in the equation holds H up then but its mean, ∫H dμ = 2, towards which it creeps.
            double mean = 0;
            for (int i = 0; i < h.Length; i++)
            {
                mean += weights[i] * h[i];
            }
            h = [.. h.Select(value => value * 2 / mean)];
        }
        return (nodes, h);
    }
}
