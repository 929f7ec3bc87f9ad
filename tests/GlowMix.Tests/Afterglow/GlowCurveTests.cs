using GlowMix.Afterglow;
using GlowMix.Recipes;

namespace GlowMix.Tests.Afterglow;

public class GlowCurveTests
{
    [Theory]
    [InlineData(0.3)]
    [InlineData(2)]
    [InlineData(30)]
    public void At_the_minute_found_the_luminance_is_the_limit(double limitMcdM2)
    {
        GlowCurve glow = SamplePour.Charged(1000, 5).Glow();
        double minutes = glow.MinutesUntil(limitMcdM2);
        Assert.InRange(minutes, 1, 1e5);
        Assert.Equal(1, glow.LuminanceMcdM2(minutes) / limitMcdM2, tolerance: 1e-9);
    }

    [Fact]
    public void A_single_rung_reaches_the_limit_when_its_logarithm_says()
    {
        var traps = new double[13];
        traps[6] = 1e15;
        var ladder = new TrapLadder(traps, 0.5, TrapConstants.Assumed);
        GlowCurve glow = new ChargeProgramme(1, [ChargeStep.Lit([1e13], 10, 20)], ChargeStart.Empty, 20)
            .Charge(ladder)
            .Glow([1e-9]);
        double atFirst = glow.LuminanceMcdM2(0);
        Assert.Equal(1, glow.MinutesUntil(atFirst / 50) / (Math.Log(50) * 1000 / 60), tolerance: 1e-10);
    }

    [Fact]
    public void A_limit_never_exceeded_takes_no_time()
    {
        GlowCurve glow = SamplePour.Charged(1000, 5).Glow();
        Assert.Equal(0, glow.MinutesUntil(glow.LuminanceMcdM2(0)));
        Assert.Equal(0, glow.MinutesUntil(1e9));
    }

    [Fact]
    public void A_limit_not_reached_in_ten_million_minutes_gives_those()
    {
        GlowCurve frozen = SamplePour.Charged(1000, 5, darknessC: -100).Glow();
        Assert.Equal(GlowCurve.LongestMinutes, frozen.MinutesUntil(1e-9));
    }

    [Fact]
    public void A_limit_far_below_any_glow_is_still_found()
    {
        GlowCurve glow = SamplePour.Charged(1000, 5).Glow();
        double minutes = glow.MinutesUntil(1e-200);
        Assert.Equal(1, glow.LuminanceMcdM2(minutes) / 1e-200, tolerance: 1e-6);
    }

    [Fact]
    public void Darkness_in_stretches_of_other_temperatures_is_searched_stretch_by_stretch()
    {
        double[] light = SamplePour.AbsorbedPerSMm3(1000);
        GlowCurve glow = new ChargeProgramme(
            SamplePour.Nodes,
            [ChargeStep.Lit(light, 5, 20), ChargeStep.Dark(20, 20), ChargeStep.Dark(20, 5)],
            ChargeStart.Empty,
            20
        )
            .Charge(SamplePour.Ladder())
            .Glow();
        double beforeCold = glow.LuminanceMcdM2(20);
        double inCold = glow.LuminanceMcdM2(20.001);
        Assert.True(inCold < 0.5 * beforeCold);

        // A jump past the limit is met at the minute of the jump; warming up brightens again.
        Assert.Equal(20, glow.MinutesUntil((inCold + beforeCold) / 2));
        Assert.True(glow.LuminanceMcdM2(40.001) > glow.LuminanceMcdM2(40));

        double later = glow.LuminanceMcdM2(400);
        Assert.True(later < glow.LuminanceMcdM2(40));
        Assert.Equal(400, glow.MinutesUntil(later), tolerance: 1e-6);
    }

    [Fact]
    public void After_the_same_charge_a_warmer_darkness_is_brighter_early_and_shorter_late()
    {
        ChargedTraps warm = SamplePour.Charged(1000, 5, darknessC: 40);
        ChargedTraps cool = SamplePour.Charged(1000, 5, darknessC: 10);
        Assert.True(warm.Glow().LuminanceMcdM2(0.1) > cool.Glow().LuminanceMcdM2(0.1));
        Assert.True(warm.Glow().LuminanceMcdM2(0.5) > cool.Glow().LuminanceMcdM2(0.5));
        Assert.True(warm.Glow().MinutesUntil(0.3) < cool.Glow().MinutesUntil(0.3));
    }

    [Fact]
    public void A_short_weak_charge_in_the_cold_glows_less_for_an_hour()
    {
        GlowCurve cold = SamplePour.Charged(25, 5, chargeC: -20, darknessC: -20).Glow();
        GlowCurve room = SamplePour.Charged(25, 5).Glow();
        foreach (double minutes in new[] { 0.5, 1, 2, 5, 10, 20, 30, 60 })
        {
            Assert.True(cold.LuminanceMcdM2(minutes) < room.LuminanceMcdM2(minutes));
        }
    }

    // Becquerel's law with an exponent close to 1: Chernov et al. 2007, Radiat. Meas. 42, 668 (abstract). Only once the dark
    // has lasted longer than the light: before, the fast rungs, which were in balance under it, flatten the curve.
    [Theory]
    [InlineData(25)]
    [InlineData(200)]
    [InlineData(1000)]
    public void After_longer_than_the_charge_the_decay_falls_about_as_one_over_time(double illuminanceLx)
    {
        GlowCurve glow = SamplePour.Charged(illuminanceLx, 5).Glow();
        foreach (double minutes in new[] { 10.0, 30, 60, 120 })
        {
            double slope =
                Math.Log(glow.LuminanceMcdM2(minutes / 1.5) / glow.LuminanceMcdM2(minutes * 1.5))
                / Math.Log(2.25);
            Assert.InRange(slope, 0.9, 1.25);
        }
    }

    [Fact]
    public void More_light_never_glows_less()
    {
        double last = 0;
        foreach (double lx in new double[] { 1, 10, 100, 1000, 10000, 100000 })
        {
            double now = SamplePour.Charged(lx, 5).Glow().LuminanceMcdM2(10);
            Assert.True(now > last);
            last = now;
        }
    }
}
