using GlowMix.Optics.Slab;

namespace GlowMix.Tests.Optics.Slab;

public class LayerStackTests
{
    private static readonly double[] NotOne = [0.9, 0.5];
    private static readonly double[] TooLarge = [1, 1.1];
    private static readonly double[] NoNumber = [1, 0.5, double.NaN];

    [Fact]
    public void A_stack_has_a_layer() => Assert.Throws<ArgumentException>(() => new LayerStack(1.5));

    [Theory]
    [InlineData(-1e-9)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_depth_out_of_range_is_refused(double depthMm) =>
        Refused(() => new LayerStack(1.5, new Layer(Medium.Clear(1), depthMm)));

    [Theory]
    [InlineData(0.9)]
    [InlineData(5)]
    [InlineData(double.NaN)]
    public void An_index_out_of_range_is_refused(double index) =>
        Refused(() => new LayerStack(index, new Layer(Medium.Clear(1), 1)));

    [Theory]
    [InlineData(-1e-9)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_coefficient_out_of_range_is_refused(double perMm)
    {
        Refused(() => new LayerStack(1.5, new Layer(Medium.Clear(perMm), 1)));
        Refused(() => new LayerStack(1.5, new Layer(Medium.HenyeyGreenstein(1, perMm, 0), 1)));
    }

    [Fact]
    public void A_phase_function_that_does_not_begin_with_1_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new LayerStack(1.5, new Layer(new Medium(1, 1, NotOne), 1)));
        Assert.Throws<ArgumentException>(() => new LayerStack(1.5, new Layer(new Medium(1, 1, default), 1)));
    }

    [Fact]
    public void Moments_out_of_range_are_refused()
    {
        Assert.Throws<ArgumentException>(() => new LayerStack(1.5, new Layer(new Medium(1, 1, TooLarge), 1)));
        Assert.Throws<ArgumentException>(() => new LayerStack(1.5, new Layer(new Medium(1, 1, NoNumber), 1)));
    }

    [Theory]
    [InlineData(-0.01)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void A_floor_out_of_range_is_refused(double reflectance)
    {
        var stack = new LayerStack(1.5, new Layer(Medium.Clear(1), 1));
        Refused(() => SlabSolution.Of(stack, reflectance));
    }

    private static void Refused(Func<object> make)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => make());
        Assert.Contains("must be", error.Message, StringComparison.Ordinal);
    }
}
