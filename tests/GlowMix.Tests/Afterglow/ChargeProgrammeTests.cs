using GlowMix.Afterglow;
using GlowMix.Recipes;

namespace GlowMix.Tests.Afterglow;

public class ChargeProgrammeTests
{
    private static readonly double[] Light = SamplePour.AbsorbedPerSMm3(300);
    private static readonly TrapLadder Ladder = SamplePour.Ladder();

    [Fact]
    public void A_step_cut_in_two_changes_nothing()
    {
        double whole = Glow([ChargeStep.Lit(Light, 30, 20)]).LuminanceMcdM2(10);
        double parts = Glow([ChargeStep.Lit(Light, 11, 20), ChargeStep.Lit(Light, 19, 20)])
            .LuminanceMcdM2(10);
        Assert.Equal(1, parts / whole, tolerance: 1e-12);
    }

    [Fact]
    public void The_glow_clock_starts_when_the_last_light_goes_off()
    {
        GlowCurve withDark = Glow([ChargeStep.Lit(Light, 30, 20), ChargeStep.Dark(45, 15)]);
        GlowCurve without = Glow([ChargeStep.Lit(Light, 30, 20)]);
        foreach (double minutes in new[] { 0.5, 10, 60, 480 })
        {
            double ratio = withDark.LuminanceMcdM2(minutes) / without.LuminanceMcdM2(minutes);
            Assert.Equal(1, ratio, tolerance: 1e-12);
        }
    }

    [Fact]
    public void A_light_that_charges_nothing_still_holds_the_clock()
    {
        ChargeStep red = ChargeStep.Lit(new double[SamplePour.Nodes], 10, 15);
        double held = Glow([ChargeStep.Lit(Light, 30, 20), red]).LuminanceMcdM2(5);
        double dark = Glow([ChargeStep.Lit(Light, 30, 20), ChargeStep.Dark(10, 15)]).LuminanceMcdM2(15);
        Assert.Equal(1, held / dark, tolerance: 1e-12);
    }

    [Fact]
    public void Dark_steps_between_lights_decay_at_their_own_temperature()
    {
        TrapProfile byHand = TrapProfile
            .Empty(SamplePour.Nodes)
            .After(Ladder, Light, 600, 20)
            .After(Ladder, [], 3600, 40)
            .After(Ladder, Light, 60, 5);
        ChargedTraps charged = Programme([
                ChargeStep.Lit(Light, 10, 20),
                ChargeStep.Dark(60, 40),
                ChargeStep.Lit(Light, 1, 5),
            ])
            .Charge(Ladder);
        Assert.Equal(byHand.At(7), charged.LightsOut.At(7));
    }

    [Fact]
    public void A_settled_day_is_where_two_thousand_days_lead()
    {
        ChargeStep[] steps =
        [
            ChargeStep.Lit(Light, 480, 35),
            ChargeStep.Dark(60, 0),
            ChargeStep.Lit(Light, 5, 20),
        ];
        TrapProfile profile = TrapProfile.Empty(SamplePour.Nodes);
        for (int day = 0; day < 2000; day++)
        {
            profile = profile
                .After(Ladder, Light, 480 * 60, 35)
                .After(Ladder, [], 3600, 0)
                .After(Ladder, Light, 300, 20)
                .After(Ladder, [], (1440 - 545) * 60, 15);
        }
        TrapProfile settled = Programme(steps, ChargeStart.SettledDaily).Charge(Ladder).Start;
        for (int rung = 0; rung < TrapLadder.RungCount; rung++)
        {
            Assert.Equal(profile.At(3)[rung], settled.At(3)[rung], tolerance: 1e-12);
        }
    }

    [Fact]
    public void A_settled_day_glows_more_than_a_first_charge() =>
        Assert.True(
            Programme([ChargeStep.Lit(Light, 5, 20)], ChargeStart.SettledDaily)
                .Charge(Ladder)
                .Glow()
                .LuminanceMcdM2(60) > Glow([ChargeStep.Lit(Light, 5, 20)]).LuminanceMcdM2(60)
        );

    [Fact]
    public void More_than_a_day_is_refused_only_where_the_day_repeats()
    {
        ChargeStep[] steps = [ChargeStep.Lit(Light, 1000, 20), ChargeStep.Dark(500, 20)];
        ArgumentException error = Assert.Throws<ArgumentException>(() =>
            Programme(steps, ChargeStart.SettledDaily)
        );
        Assert.Contains("25 h", error.Message, StringComparison.Ordinal);
        Assert.Equal(1500, Programme(steps).Steps.Sum(step => step.Minutes));
        Assert.Single(Programme([ChargeStep.Lit(Light, 1440, 20)], ChargeStart.SettledDaily).Steps);
    }

    [Fact]
    public void Without_any_light_there_is_no_glow()
    {
        ChargedTraps none = Programme([ChargeStep.Dark(60, 20)], ChargeStart.SettledDaily).Charge(Ladder);
        Assert.Equal(0, none.Glow().LuminanceMcdM2(1));
        Assert.Equal(0, none.Glow().MinutesUntil(0.3));
        Assert.Equal(0, none.CapacityFilledPercent(SamplePour.PigmentMm));
        Assert.Null(ChargeTime.MinutesTo90Percent([(none, SamplePour.McdM2PerPhotonPerSMm3)]));
    }

    [Fact]
    public void Absorption_at_other_depths_than_told_is_refused() =>
        Assert.Throws<ArgumentException>(() => Programme([ChargeStep.Lit([1, 2], 5, 20)]));

    private static ChargeProgramme Programme(ChargeStep[] steps, ChargeStart start = ChargeStart.Empty) =>
        new(SamplePour.Nodes, [.. steps], start, darknessTemperatureC: 15);

    private static GlowCurve Glow(ChargeStep[] steps) => Programme(steps).Charge(Ladder).Glow();
}
