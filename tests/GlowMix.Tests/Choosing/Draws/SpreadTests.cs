using GlowMix.Choosing.Draws;
using GlowMix.Materials;
using MathNet.Numerics.Distributions;

namespace GlowMix.Tests.Choosing.Draws;

public sealed class SpreadTests
{
    // Two standard deviations of a normal hold all but 2.275 % on each side.
    private static readonly double TwoDeviationsDown = Normal.CDF(0, 1, -2);

    [Fact]
    public void Tolerance_is_two_standard_deviations_of_a_normal()
    {
        var spread = Spread.Within(20, tolerance: 1);
        Assert.Equal(19, spread.At(TwoDeviationsDown), tolerance: 1e-9);
        Assert.Equal(20, spread.At(0.5), tolerance: 1e-12);
        Assert.Equal(21, spread.At(1 - TwoDeviationsDown), tolerance: 1e-9);
        Assert.Equal(20.5, spread.At(Normal.CDF(0, 1, 1)), tolerance: 1e-9);
    }

    [Fact]
    public void Factor_is_two_standard_deviations_of_a_log_normal()
    {
        var spread = Spread.ByFactor(1, 2);
        Assert.Equal(0.5, spread.At(TwoDeviationsDown), tolerance: 1e-9);
        Assert.Equal(1, spread.At(0.5), tolerance: 1e-12);
        Assert.Equal(Math.Sqrt(2), spread.At(Normal.CDF(0, 1, 1)), tolerance: 1e-9);
    }

    [Fact]
    public void Ends_of_unlike_distance_leave_the_number_itself_the_median()
    {
        var spread = Spread.Between(1.65, low: 1.60, high: 1.67);
        Assert.Equal(1.60, spread.At(TwoDeviationsDown), tolerance: 1e-9);
        Assert.Equal(1.65, spread.At(0.5), tolerance: 1e-12);
        Assert.Equal(1.67, spread.At(1 - TwoDeviationsDown), tolerance: 1e-9);
    }

    [Fact]
    public void Cut_keeps_the_number_within_and_the_shares_of_what_is_left()
    {
        // Cut at the median, one half is left: its quarter is the whole's three eighths from below.
        var spread = Spread.Within(0.9, tolerance: 0.2, least: 0, most: 0.9);
        Assert.Equal(0.9 + (0.1 * Normal.InvCDF(0, 1, 0.125)), spread.At(0.25), tolerance: 1e-9);
        Assert.InRange(spread.At(1 - 1e-9), 0.89, 0.9);

        var shallow = Spread.Within(0.1, tolerance: 0.3, least: 0.01);
        Assert.InRange(shallow.At(1e-9), 0.01, 0.0101);
    }

    [Fact]
    public void Number_that_cannot_be_less_has_no_lower_half()
    {
        var spread = Spread.Between(0, low: 0, high: 0.5, least: 0);
        Assert.InRange(spread.At(1e-6), 0, 1e-6);
        Assert.Equal(0.5, spread.At(1 - (2 * TwoDeviationsDown)), tolerance: 1e-9);
    }

    [Fact]
    public void Doubt_of_a_material_is_taken_as_it_is_stated()
    {
        Assert.Null(Spread.Of(default, 5));
        Assert.Equal(10, Spread.Of(Doubt.OfFactor(2), 5)!.Value.At(1 - TwoDeviationsDown), tolerance: 1e-9);
        Assert.Equal(
            5.5,
            Spread.Of(Doubt.OfPercent(10), 5)!.Value.At(1 - TwoDeviationsDown),
            tolerance: 1e-9
        );
        Assert.Equal(4, Spread.Of(Doubt.Between(4, 7), 5)!.Value.At(TwoDeviationsDown), tolerance: 1e-9);
    }
}
