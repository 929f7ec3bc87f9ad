using GlowMix.Console.Reports;

namespace GlowMix.Console.Tests.Reports;

public class LedPlacesTests
{
    [Theory]
    [InlineData(60, 500, 12)]
    [InlineData(40, 280, 90)]
    [InlineData(7, 100, 100)]
    [InlineData(1, 10, 10)]
    public void All_stand_inside_and_none_twice(int count, double lengthMm, double widthMm)
    {
        var places = LedPlaces.Of(count, lengthMm, widthMm);
        Assert.Equal(count, places.Distinct().Count());
        Assert.All(
            places,
            p =>
            {
                Assert.InRange(p.XMm, 0, lengthMm);
                Assert.InRange(p.YMm, 0, widthMm);
            }
        );
    }

    [Fact]
    public void A_narrow_strip_has_one_row() =>
        Assert.Single(LedPlaces.Of(60, 500, 12).Select(p => p.YMm).Distinct());
}
