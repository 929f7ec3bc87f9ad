using GlowMix.Casting;
using MathNet.Numerics.Integration;

namespace GlowMix.Tests.Casting;

public class SettlingTests
{
    private const double Difference = 3.56 - 1.10;

    [Theory] // 2 Δρ g a² / 9 η by hand: SrAl2O4 in epoxy of 0.5 Pa·s
    [InlineData(20, 0.064)]
    [InlineData(40, 0.257)]
    [InlineData(60, 0.579)]
    [InlineData(100, 1.61)]
    public void Grains_fall_as_Stokes_says(double diameterUm, double mmPerMin)
    {
        double digits = mmPerMin > 1 ? 0.005 : 0.0005;
        Assert.Equal(mmPerMin, Settling.StokesMmPerMin(diameterUm, Difference, 500), tolerance: digits);
    }

    [Theory] // (4/3) π a⁴ Δρ g / kT by hand
    [InlineData(20, 2.5e5)]
    [InlineData(40, 4.0e6)]
    [InlineData(80, 6.4e7)]
    [InlineData(100, 1.6e8)]
    public void Peclet_number_goes_with_the_fourth_power(double diameterUm, double peclet) =>
        Assert.Equal(1, Settling.PecletNumber(diameterUm, Difference, 20) / peclet, tolerance: 0.03);

    [Fact]
    public void Hindrance_has_the_two_branches_of_BrzinskiDurian_arXiv_1710_09314()
    {
        Assert.Equal(0.750, Settling.HinderedShare(0.05, 4e6), tolerance: 0.0005); // 0.95^5.6
        Assert.Equal(0.795, Settling.HinderedShare(0.05, 1.6e8), tolerance: 0.0005); // 0.95^4.48
        Assert.Equal(1, Settling.HinderedShare(0, 1));
    }

    [Fact]
    public void A_thickening_mix_lets_grains_fall_as_the_integral_says()
    {
        double integral = GaussLegendreRule.Integrate(t => Math.Pow(2, -t / 40), 20, 110, 32);
        Assert.Equal(1, Settling.EquivalentFreshMin(20, 110, 40) / integral, tolerance: 1e-12);
    }

    [Fact]
    public void Without_a_gel_time_the_fall_still_ends() =>
        Assert.Equal(
            40 / Math.Log(2),
            Settling.EquivalentFreshMin(0, double.PositiveInfinity, 40),
            tolerance: 1e-12
        );

    [Fact]
    public void Poured_after_it_has_gelled_nothing_falls() =>
        Assert.Equal(0, Settling.EquivalentFreshMin(30, 25, 10));
}
