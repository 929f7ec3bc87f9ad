using GlowMix.Optics.Slab;

namespace GlowMix.Tests.Optics.Slab;

/// <summary>What a solved slab is asked wrongly is refused in words, and what it answers is never less than nothing.</summary>
public class SlabArgumentsTests
{
    private static readonly SlabSolution Slab = SlabSolution.Of(
        new LayerStack(
            1.5,
            new Layer(Medium.HenyeyGreenstein(0.1, 3, 0.9), 2),
            new Layer(Medium.Clear(0.01), 1)
        ),
        0.8
    );

    [Theory]
    [InlineData(-1)]
    [InlineData(2)]
    public void A_layer_that_is_not_there_is_refused(int layer)
    {
        Refused("layer", () => Slab.EscapeShare(layer, 0.5));
        Refused("layer", () => Slab.FromSky.Fluence(layer, 0.5));
        Refused("layer", () => Slab.OfEmittingCell(layer, 0.1, 0.5));
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(2.1)]
    [InlineData(double.NaN)]
    public void A_height_outside_the_layer_is_refused(double heightMm)
    {
        Refused("heightMm", () => Slab.EscapeShare(0, heightMm));
        Refused("fromMm", () => Slab.OfEmittingCell(0, heightMm, 1));
        Refused("toMm", () => Slab.OfEmittingCell(0, 0.5, heightMm));
    }

    [Fact]
    public void A_cell_without_height_or_in_a_clear_layer_is_refused()
    {
        Assert.Throws<ArgumentException>("toMm", () => Slab.OfEmittingCell(0, 1, 1));
        Assert.Throws<ArgumentException>("toMm", () => Slab.OfEmittingCell(0, 1, 0.5));
        Assert.Throws<ArgumentException>("layer", () => Slab.OfEmittingCell(1, 0.1, 0.5));
    }

    [Theory]
    [InlineData(-1.01)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void A_mean_cosine_that_is_none_is_refused(double g) =>
        Refused("asymmetry", () => Medium.HenyeyGreenstein(1, 1, g));

    [Fact]
    public void A_forward_peak_needs_no_count_of_moments_on_the_finest_nodes()
    {
        // χ of order 128 is 0.28 here: left out, the peak would count as scattering.
        var stack = new LayerStack(1, new Layer(Medium.HenyeyGreenstein(0.02, 2, 0.99), 1));
        var told = new LayerStack(1, new Layer(Medium.HenyeyGreenstein(0.02, 2, 0.99, 1000), 1));
        Assert.Equal(
            SlabSolution.Of(told, nodes: 32).FromSky.Escaped,
            SlabSolution.Of(stack, nodes: 32).FromSky.Escaped
        );
    }

    [Fact]
    public void Several_threads_get_the_answers_of_one()
    {
        double[] Asked(int i) =>
            [Slab.OfBeam((i + 1) / 400.0).Light.Escaped, Slab.OfEmittingCell(0, i / 400.0, 1).Floor];
        double[][] one = [.. Enumerable.Range(0, 400).Select(Asked)];
        double[][] several = [.. Enumerable.Range(0, 400).AsParallel().AsOrdered().Select(Asked)];
        Assert.Equal(one, several);
    }

    [Theory]
    [InlineData(1e3)]
    [InlineData(1e6)]
    public void Nothing_is_less_than_nothing_where_no_light_comes(double tau)
    {
        foreach (double albedo in (double[])[0, 1e-12, 0.5, 1])
        {
            foreach (double g in (double[])[-0.5, 0, 0.9, 0.99])
            {
                foreach (double rho in (double[])[0, 0.5, 1])
                {
                    var medium = Medium.HenyeyGreenstein(tau * (1 - albedo), tau * albedo, g);
                    var slab = SlabSolution.Of(new LayerStack(1.5, new Layer(medium, 1)), rho);
                    foreach (
                        SourceFate fate in (SourceFate[])[slab.FromSky, slab.FromFloor, slab.OfBeam(1).Light]
                    )
                    {
                        Assert.True(fate.Escaped >= 0 && fate.AbsorbedByFloor >= 0);
                        Assert.True(fate.AbsorbedInLayers[0] >= 0);
                        Assert.True(fate.Fluence(0, 0) >= 0 && fate.Fluence(0, 0.5) >= 0);
                        Assert.Equal(1, fate.Escaped + fate.AbsorbedByFloor + fate.AbsorbedInLayers[0], 1e-9);
                    }
                }
            }
        }
    }

    private static void Refused(string parameter, Func<object> ask) =>
        Assert.Throws<ArgumentOutOfRangeException>(parameter, ask);
}
