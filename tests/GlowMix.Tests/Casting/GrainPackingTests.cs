using GlowMix.Casting;

namespace GlowMix.Tests.Casting;

public class GrainPackingTests
{
    [Fact]
    public void Thirty_percent_of_spheres_thicken_2_75_times() =>
        // (1 − 0.3/0.64)^(−2.5 · 0.64) by hand; Krieger–Dougherty as in Entropy 23 (2021) 979, table 6.
        Assert.Equal(2.7512, GrainPacking.Spheres.RelativeViscosity(0.3)!.Value, tolerance: 0.0001);

    [Theory]
    [InlineData(2.5)]
    [InlineData(3.5)]
    public void A_few_grains_thicken_by_the_intrinsic_viscosity(double intrinsic)
    {
        var packing = new GrainPacking(intrinsic, 0.6); // Einstein's limit
        Assert.Equal(intrinsic, (packing.RelativeViscosity(1e-6)!.Value - 1) / 1e-6, tolerance: 1e-4);
        Assert.Equal(1, packing.RelativeViscosity(0));
    }

    [Fact]
    public void From_95_percent_of_the_densest_packing_a_mix_does_not_pour()
    {
        var packing = new GrainPacking(2.5, 0.6);
        Assert.NotNull(packing.RelativeViscosity(0.5699));
        Assert.Null(packing.RelativeViscosity(0.5701));
        Assert.False(packing.Pours(0.9));
    }

    [Fact]
    public void Impossible_grains_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new GrainPacking(2, 0.6));
        Assert.Throws<ArgumentOutOfRangeException>(() => new GrainPacking(2.5, 0.8));
        Assert.Throws<ArgumentOutOfRangeException>(() => GrainPacking.Spheres.RelativeViscosity(double.NaN));
    }
}
