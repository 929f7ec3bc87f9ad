using GlowMix.Optics.Grains;

namespace GlowMix.Tests.Optics.Grains;

public class VolumeFractionTests
{
    // Strontium aluminate 3.56 g/cm³ (unit cell) in epoxy 1.1 g/cm³: worked by hand.
    [Theory]
    [InlineData(0.15, 0.052)]
    [InlineData(0.45, 0.202)]
    public void Mass_becomes_volume(double massFraction, double volumeFraction) =>
        Assert.Equal(volumeFraction, VolumeFraction.FromMass(massFraction, 3.56, 1.1), 5e-4);

    [Theory]
    [InlineData(0)]
    [InlineData(0.2)]
    [InlineData(0.8)]
    public void Back_and_forth_changes_nothing(double massFraction) =>
        Assert.Equal(
            massFraction,
            VolumeFraction.ToMass(VolumeFraction.FromMass(massFraction, 3.56, 1.1), 3.56, 1.1),
            1e-15
        );

    [Fact]
    public void Equal_densities_keep_the_share() =>
        Assert.Equal(0.3, VolumeFraction.FromMass(0.3, 1.1, 1.1), 1e-15);

    [Theory]
    [InlineData(-0.01, 3.56, 1.1)]
    [InlineData(0.81, 3.56, 1.1)]
    [InlineData(double.NaN, 3.56, 1.1)]
    [InlineData(0.2, 0, 1.1)]
    [InlineData(0.2, 3.56, double.PositiveInfinity)]
    public void What_no_mix_has_is_refused(double massFraction, double pigment, double resin) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            VolumeFraction.FromMass(massFraction, pigment, resin)
        );
}
