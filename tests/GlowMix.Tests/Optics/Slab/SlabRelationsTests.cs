using GlowMix.Optics.Slab;
using MathNet.Numerics.Integration;

namespace GlowMix.Tests.Optics.Slab;

/// <summary>What holds exactly whatever the layers are.</summary>
public class SlabRelationsTests
{
    private static readonly Medium Milky = Medium.HenyeyGreenstein(0.02, 3, 0.92, 128);
    private static readonly Medium White = Medium.HenyeyGreenstein(0, 12, 0.8, 128);
    private static readonly Medium Dark = Medium.HenyeyGreenstein(1.5, 4, 0.97, 128);
    private static readonly Medium Clear = Medium.Clear(0.05);

    /// <summary>From the floor upwards: pigmented, clear cover, both, clear between, clear below, and extremes of depth.</summary>
    private static readonly (double Index, Layer[] Layers)[] Stacks =
    [
        (1.5, [new(Milky, 2)]),
        (1.5, [new(Milky, 2.5), new(Clear, 0.5)]),
        (1.41, [new(Clear, 1), new(Dark, 0.3), new(White, 0.4), new(Milky, 1)]),
        (1.57, [new(White, 1), new(Clear, 3), new(Dark, 0.05), new(Clear, 0.2)]),
        (1, [new(Milky, 1), new(Clear, 1), new(White, 0.2)]),
        (1.5, [new(Dark, 1e-7), new(White, 1e-5), new(Clear, 1e-6)]),
        (1.5, [new(White, 80), new(Milky, 100)]),
        (1.33, [new(Dark, 150), new(Clear, 1000), new(Dark, 0.1)]),
        (1.5, [new(Clear, 1), new(Clear, 2)]),
        (1.5, [new(Medium.Clear(0), 5), new(White, 1), new(Medium.Clear(0), 5)]),
    ];

    public static TheoryData<int, double> Cases()
    {
        var rows = new TheoryData<int, double>();
        for (int i = 0; i < Stacks.Length; i++)
        {
            rows.Add(i, 0);
            rows.Add(i, 0.85);
            rows.Add(i, 1);
        }
        return rows;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void No_light_of_a_stack_is_lost_or_made(int stack, double rho)
    {
        var slab = Solve(stack, rho);
        foreach (var fate in new[] { slab.FromSky, slab.FromFloor })
        {
            Assert.Equal(1, fate.Escaped + fate.AbsorbedByFloor + fate.AbsorbedInLayers.Sum(), 1e-12);
            Assert.All(fate.AbsorbedInLayers, share => Assert.InRange(share, -1e-12, 1 + 1e-12));
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_layer_absorbs_what_its_fluence_says(int stack, double rho)
    {
        var slab = Solve(stack, rho);
        var layers = Stacks[stack].Layers;
        foreach (var fate in new[] { slab.FromSky, slab.FromFloor })
        {
            for (int i = 0; i < layers.Length; i++)
            {
                // Fine where the light falls off steeply: halving towards both faces.
                double integral = 0;
                double half = layers[i].DepthMm / 2;
                for (int k = 0; k < 24; k++)
                {
                    double near = k == 23 ? 0 : half * Math.Pow(0.5, k + 1);
                    double far = half * Math.Pow(0.5, k);
                    int at = i;
                    integral += GaussLegendreRule.Integrate(z => fate.Fluence(at, z), near, far, 12);
                    integral += GaussLegendreRule.Integrate(
                        z => fate.Fluence(at, layers[at].DepthMm - z),
                        near,
                        far,
                        12
                    );
                }
                double expected = layers[i].Medium.AbsorptionPerMm * integral;
                Assert.Equal(expected, fate.AbsorbedInLayers[i], 1e-10 + (1e-8 * expected));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Light_climbs_from_the_floor_as_easily_as_it_falls_onto_it(int stack, double rho)
    {
        var slab = Solve(stack, rho);
        double index = Stacks[stack].Index;
        // By étendue n² apart; what arrives is what the floor keeps over what it keeps of each strike.
        double climbs = slab.FromFloor.Escaped * (1 - rho);
        Assert.Equal(climbs, slab.FromSky.AbsorbedByFloor / (index * index), 1e-10);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Escape_of_an_emitting_cell_is_the_mean_escape_over_it(int stack, double rho)
    {
        var slab = Solve(stack, rho);
        var layers = Stacks[stack].Layers;
        for (int i = 0; i < layers.Length; i++)
        {
            if (layers[i].Medium.ScatteringPerMm == 0)
            {
                continue;
            }
            double depth = layers[i].DepthMm;
            foreach (var (from, to) in new[] { (0.0, 0.3), (0.45, 0.55), (0.9, 1.0), (0.2, 0.2 + 1e-6) })
            {
                double mean = GaussLegendreRule.Integrate(
                    t =>
                    {
                        // Graded towards both edges of the cell.
                        double z = from + ((to - from) * t * t * (3 - (2 * t)));
                        return 6 * t * (1 - t) * slab.EscapeShare(i, depth * z);
                    },
                    0,
                    1,
                    64
                );
                Assert.Equal(mean, slab.OfEmittingCell(i, from * depth, to * depth).Escaped, 1e-10);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Splitting_a_layer_changes_nothing(int stack, double rho)
    {
        var (index, layers) = Stacks[stack];
        Layer[] split =
        [
            .. layers.SelectMany(l =>
                new Layer[]
                {
                    new(l.Medium, l.DepthMm * 0.01),
                    new(l.Medium, l.DepthMm * 0.59),
                    new(l.Medium, 0),
                    new(l.Medium, l.DepthMm * 0.4),
                }
            ),
        ];
        var whole = Solve(stack, rho);
        var parts = SlabSolution.Of(new LayerStack(index, split), rho);
        for (int i = 0; i < layers.Length; i++)
        {
            foreach (
                var (one, many) in new[]
                {
                    (whole.FromSky, parts.FromSky),
                    (whole.FromFloor, parts.FromFloor),
                }
            )
            {
                Assert.Equal(one.Escaped, many.Escaped, 1e-11);
                Assert.Equal(one.AbsorbedInLayers[i], many.AbsorbedInLayers.Skip(4 * i).Take(4).Sum(), 1e-11);
                double height = layers[i].DepthMm * 0.8;
                double expected = one.Fluence(i, height);
                double within = split[(4 * i) + 3].DepthMm * 0.5;
                Assert.Equal(expected, many.Fluence((4 * i) + 3, within), 1e-10 * Math.Max(1, expected));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Layers_without_depth_change_nothing(int stack, double rho)
    {
        var (index, layers) = Stacks[stack];
        Layer[] more = [new(Dark, 0), .. layers.SelectMany(l => new[] { l, new(White, 0), new(Clear, 0) })];
        var plain = Solve(stack, rho);
        var padded = SlabSolution.Of(new LayerStack(index, more), rho);
        Assert.Equal(plain.FromSky.Escaped, padded.FromSky.Escaped, 1e-12);
        Assert.Equal(plain.FromFloor.Escaped, padded.FromFloor.Escaped, 1e-12);
        Assert.Equal(plain.FromSky.AbsorbedByFloor, padded.FromSky.AbsorbedByFloor, 1e-12);
        for (int i = 0; i < layers.Length; i++)
        {
            double middle = layers[i].DepthMm / 2;
            Assert.Equal(
                plain.FromSky.Fluence(i, middle),
                padded.FromSky.Fluence(1 + (3 * i), middle),
                1e-11
            );
        }
        Assert.All(
            Enumerable.Range(0, more.Length).Where(i => more[i].DepthMm == 0),
            i => Assert.Equal(0, padded.FromSky.AbsorbedInLayers[i], 1e-15)
        );
    }

    /// <summary>Fluence has no step where two layers meet.</summary>
    [Theory]
    [MemberData(nameof(Cases))]
    public void Fluence_is_the_same_on_both_sides_of_a_face_between_layers(int stack, double rho)
    {
        var slab = Solve(stack, rho);
        var layers = Stacks[stack].Layers;
        for (int i = 1; i < layers.Length; i++)
        {
            foreach (var fate in new[] { slab.FromSky, slab.FromFloor })
            {
                double below = fate.Fluence(i - 1, layers[i - 1].DepthMm);
                Assert.Equal(below, fate.Fluence(i, 0), 1e-10 * Math.Max(1, below));
            }
        }
    }

    /// <summary>More absorption anywhere never lets more light out.</summary>
    [Theory]
    [MemberData(nameof(Cases))]
    public void More_absorption_lets_less_light_out(int stack, double rho)
    {
        var (index, layers) = Stacks[stack];
        var plain = Solve(stack, rho);
        for (int i = 0; i < layers.Length; i++)
        {
            var darker = layers.ToArray();
            var medium = layers[i].Medium;
            darker[i] = layers[i] with
            {
                Medium = medium with { AbsorptionPerMm = medium.AbsorptionPerMm * 1.2 },
            };
            var slab = SlabSolution.Of(new LayerStack(index, darker), rho);
            Assert.True(slab.FromSky.Escaped <= plain.FromSky.Escaped + 1e-13);
            Assert.True(slab.FromFloor.Escaped <= plain.FromFloor.Escaped + 1e-13);
        }
    }

    private static SlabSolution Solve(int stack, double rho) =>
        SlabSolution.Of(new LayerStack(Stacks[stack].Index, Stacks[stack].Layers), rho);
}
