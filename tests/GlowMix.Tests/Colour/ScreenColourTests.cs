using GlowMix.Colour;

namespace GlowMix.Tests.Colour;

public class ScreenColourTests
{
    [Theory]
    // IEC 61966-2-1:1999: white is D65; primaries.
    [InlineData(0.3127, 0.3290, 255, 255, 255)]
    [InlineData(0.64, 0.33, 255, 0, 0)]
    [InlineData(0.30, 0.60, 0, 255, 0)]
    [InlineData(0.15, 0.06, 0, 0, 255)]
    public void White_and_primaries_are_themselves(double x, double y, int red, int green, int blue)
    {
        ScreenColour colour = ScreenColour.Of(Chromaticity.FromXy(x, y));
        // The standard's matrix has four decimals; its dark end is steep: 0.0005 of linear light is 2 steps of 255.
        Assert.Equal(red, colour.Red, 3.0);
        Assert.Equal(green, colour.Green, 3.0);
        Assert.Equal(blue, colour.Blue, 3.0);
        Assert.True(colour.IsInGamut);
    }

    [Fact]
    public void Warm_white_is_orange_beside_a_screens_white()
    {
        ScreenColour warm = ScreenColour.Of(PlanckianLocus.AtK(2700));
        Assert.Equal(255, warm.Red);
        Assert.InRange(warm.Green, 160, 180);
        Assert.InRange(warm.Blue, 70, 110);
        Assert.True(warm.IsInGamut);
    }

    [Fact]
    public void A_saturated_green_is_shown_paler_and_said_to_be()
    {
        ScreenColour green = ScreenColour.Of(Chromaticity.FromXy(0.2, 0.7));
        Assert.False(green.IsInGamut);
        Assert.Equal(255, green.Green);
        Assert.True(green.Green > green.Red && green.Green > green.Blue);
    }

    [Fact]
    public void A_chromaticity_without_light_is_black() =>
        Assert.Equal(new ScreenColour(0, 0, 0, IsInGamut: false), ScreenColour.Of(default));

    // IEC 61966-2-1:1999: half the light of full white is encoded as 188 (0.7354 of 255), a fifth as 124 (0.4845).
    [Theory]
    [InlineData(1, 255)]
    [InlineData(0.5, 188)]
    [InlineData(0.2, 124)]
    [InlineData(0, 0)]
    public void Half_the_light_is_more_than_half_the_number(double share, byte encoded)
    {
        var white = new ScreenColour(255, 255, 255, IsInGamut: true).Dimmed(share);
        Assert.Equal(new ScreenColour(encoded, encoded, encoded, IsInGamut: true), white);
    }
}
