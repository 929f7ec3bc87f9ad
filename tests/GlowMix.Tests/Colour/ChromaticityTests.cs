using GlowMix.Colour;

namespace GlowMix.Tests.Colour;

public class ChromaticityTests
{
    [Fact]
    public void V_prime_is_one_and_a_half_times_v_and_differences_are_taken_in_it()
    {
        Chromaticity a = Chromaticity.FromXy(0.4476, 0.4074);
        Chromaticity b = Chromaticity.FromUPrimeVPrime(a.UPrime + 0.003, a.VPrime - 0.004);
        Assert.Equal(1.5 * a.V, a.VPrime, 1e-15);
        Assert.Equal(0.005, ColourDifference.UPrimeVPrime(a, b), 1e-12);
        // CIE 015:2018: u′ = 4x/(−2x + 12y + 3), v′ = 9y/(−2x + 12y + 3).
        Assert.Equal(0.2560, a.UPrime, 0.00005);
        Assert.Equal(0.5243, a.VPrime, 0.00005);
    }

    [Theory]
    [InlineData(0.3127, 0.3290)]
    [InlineData(0.5267, 0.4133)]
    [InlineData(0.17, 0.01)]
    public void There_and_back_is_where_it_was(double x, double y)
    {
        Chromaticity colour = Chromaticity.FromXy(x, y);
        Chromaticity back = Chromaticity.FromUv1960(colour.U, colour.V);
        Assert.Equal(x, back.X, 1e-14);
        Assert.Equal(y, back.Y, 1e-14);
    }

    [Theory]
    [InlineData(double.NaN, 0.3)]
    [InlineData(0.3, double.PositiveInfinity)]
    [InlineData(2, 0)]
    public void A_chromaticity_without_a_place_is_refused(double x, double y)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Chromaticity.FromXy(x, y));
        Assert.Throws<ArgumentOutOfRangeException>(() => Chromaticity.FromUv1960(double.NaN, 0.3));
        Assert.Throws<ArgumentOutOfRangeException>(() => Chromaticity.FromUv1960(0, 0.6));
    }
}
