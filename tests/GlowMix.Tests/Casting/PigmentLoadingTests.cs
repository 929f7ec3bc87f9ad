using GlowMix.Casting;

namespace GlowMix.Tests.Casting;

public class PigmentLoadingTests
{
    [Fact]
    public void Fifteen_percent_by_mass_is_17_6_g_per_100_g_and_5_2_percent_by_volume()
    {
        var loading = PigmentLoading.FromPercentByMass(15);
        Assert.Equal(17.6, loading.GPer100GResin, tolerance: 0.05); // 15/85 by hand
        Assert.Equal(0.052, loading.VolumeFraction(3.56, 1.1), tolerance: 0.0005);
    }

    [Fact]
    public void Twenty_percent_by_volume_is_45_percent_by_mass() =>
        Assert.Equal(
            44.724, // 0.2 · 3.56 / (0.2 · 3.56 + 0.8 · 1.1) by hand
            PigmentLoading.FromPercentByVolume(20, 3.56, 1.1).PercentByMass,
            tolerance: 0.0005
        );

    [Theory]
    [InlineData(0)]
    [InlineData(0.3)]
    [InlineData(20)]
    [InlineData(80)]
    public void The_three_ways_of_telling_agree(double percent)
    {
        var told = PigmentLoading.FromPercentByMass(percent);
        var byGrams = PigmentLoading.FromGPer100GResin(told.GPer100GResin);
        double volumePercent = 100 * told.VolumeFraction(2.98, 1.03);
        Assert.Equal(percent, byGrams.PercentByMass, tolerance: 1e-12);
        Assert.Equal(
            percent,
            PigmentLoading.FromPercentByVolume(volumePercent, 2.98, 1.03).PercentByMass,
            tolerance: 1e-12
        );
    }

    [Fact]
    public void The_default_is_clear_resin() => Assert.Equal(0, default(PigmentLoading).GPer100GResin);

    [Theory]
    [InlineData(-0.1)]
    [InlineData(80.1)]
    [InlineData(double.NaN)]
    public void More_than_80_percent_or_less_than_none_is_refused(double percent) =>
        Assert.Contains(
            "0 to 80 % by mass",
            Assert
                .Throws<ArgumentOutOfRangeException>(() => PigmentLoading.FromPercentByMass(percent))
                .Message,
            StringComparison.Ordinal
        );
}
