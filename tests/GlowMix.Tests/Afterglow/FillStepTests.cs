using GlowMix.Afterglow;

namespace GlowMix.Tests.Afterglow;

public class FillStepTests
{
    [Theory] // x − x²/2 + x³/6 for the small, 1 − 1/e by its digits
    [InlineData(0, 0)]
    [InlineData(1e-20, 1e-20)]
    [InlineData(1e-8, 9.99999995e-9)]
    [InlineData(1, 0.63212055882855767840)]
    [InlineData(double.PositiveInfinity, 1)]
    public void Share_gone_keeps_its_digits(double exponent, double share) =>
        Assert.Equal(share, FillStep.ShareGone(exponent), tolerance: share * 3e-16);

    [Fact]
    public void Share_gone_has_no_jump_where_its_formula_changes()
    {
        double below = FillStep.ShareGone(Math.BitDecrement(1));
        Assert.Equal(1, below / FillStep.ShareGone(1), tolerance: 4e-16);
    }

    [Fact]
    public void A_step_cut_in_two_does_the_same()
    {
        var whole = FillStep.Of(fillingPerS: 2e-5, emptyingPerS: 3e-4, seconds: 1000);
        FillStep parts = FillStep.Of(2e-5, 3e-4, 123).Then(FillStep.Of(2e-5, 3e-4, 877));
        Assert.Equal(1, parts.Apply(0.3) / whole.Apply(0.3), tolerance: 1e-14);
    }

    [Fact]
    public void A_step_follows_the_rate_equation()
    {
        const double filling = 0.002;
        const double emptying = 0.005;
        double f = 0.1;
        const double dt = 0.01; // classical Runge–Kutta
        for (int i = 0; i < 20000; i++)
        {
            double Rate(double x) => (filling * (1 - x)) - (emptying * x);
            double k1 = Rate(f);
            double k2 = Rate(f + (dt / 2 * k1));
            double k3 = Rate(f + (dt / 2 * k2));
            double k4 = Rate(f + (dt * k3));
            f += dt / 6 * (k1 + (2 * k2) + (2 * k3) + k4);
        }
        Assert.Equal(f, FillStep.Of(filling, emptying, 200).Apply(0.1), tolerance: 1e-12);
    }

    [Fact]
    public void A_thousand_repeats_come_to_the_fixed_point()
    {
        FillStep day = FillStep.Of(1e-5, 2e-5, 3600).Then(FillStep.Of(0, 1e-6, 82800));
        double f = 0;
        for (int i = 0; i < 1000; i++)
        {
            f = day.Apply(f);
        }
        Assert.Equal(1, day.FixedPoint() / f, tolerance: 1e-13);
    }

    [Fact]
    public void The_fixed_point_of_a_day_that_hardly_changes_anything_keeps_its_digits()
    {
        FillStep day = FillStep.Of(1e-21, 3e-21, 86400);
        Assert.Equal(0.25, day.FixedPoint(), tolerance: 1e-15);
    }
}
