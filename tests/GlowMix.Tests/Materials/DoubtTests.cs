using GlowMix.Materials;

namespace GlowMix.Tests.Materials;

public class DoubtTests
{
    [Fact]
    public void A_factor_divides_and_multiplies()
    {
        var doubt = Doubt.OfFactor(2);
        Assert.Equal(5, doubt.LowOf(10));
        Assert.Equal(20, doubt.HighOf(10));
    }

    [Fact]
    public void Percent_go_either_way_also_around_a_negative_value()
    {
        var doubt = Doubt.OfPercent(10);
        Assert.Equal(9, doubt.LowOf(10));
        Assert.Equal(11, doubt.HighOf(10));
        Assert.Equal(-11, doubt.LowOf(-10));
        Assert.Equal(-9, doubt.HighOf(-10));
    }

    [Fact]
    public void Ends_stay_where_they_are()
    {
        var doubt = Doubt.Between(1.60, 1.67);
        Assert.Equal(1.60, doubt.LowOf(1.65));
        Assert.Equal(1.67, doubt.HighOf(1.65));
    }

    [Fact]
    public void No_statement_leaves_the_value_alone()
    {
        Assert.True(default(Doubt).IsNone);
        Assert.Equal(3, default(Doubt).LowOf(3));
        Assert.Equal(3, default(Doubt).HighOf(3));
    }

    [Fact]
    public void Impossible_doubts_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Doubt.OfFactor(0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Doubt.Between(2, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Doubt.OfPercent(double.NaN));
    }
}
