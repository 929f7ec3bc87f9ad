using GlowMix.Afterglow;
using GlowMix.Recipes;

namespace GlowMix.Tests.Afterglow;

public class ChargedTrapsTests
{
    [Fact]
    public void A_deep_pour_shades_its_own_bottom()
    {
        ChargedTraps charged = SamplePour.Charged(1000, 5);
        double bottom = charged.CapacityFilledPercentAt(0);
        double surface = charged.CapacityFilledPercentAt(SamplePour.Nodes - 1);
        Assert.InRange(charged.CapacityFilledPercent(SamplePour.PigmentMm), bottom, surface);
        Assert.True(bottom < surface / 2);
    }

    [Theory]
    [InlineData(ChargeStart.Empty)]
    [InlineData(ChargeStart.SettledDaily)]
    public void The_ninety_percent_charge_gives_90_percent_of_endless_light(ChargeStart start)
    {
        double[] light = SamplePour.AbsorbedPerSMm3(200);
        var programme = new ChargeProgramme(
            SamplePour.Nodes,
            [ChargeStep.Lit(light, 3, 30), ChargeStep.Dark(4, 0)],
            start,
            10
        );
        TrapLadder ladder = SamplePour.Ladder();
        ChargedTraps charged = programme.Charge(ladder);
        double minutes = ChargeTime.MinutesTo90Percent([(charged, SamplePour.McdM2PerPhotonPerSMm3)])!.Value;

        double TenMinutesLater(double seconds)
        {
            TrapProfile profile = charged
                .Start.After(ladder, light, seconds, 30)
                .After(ladder, [], 240, 0)
                .After(ladder, [], 360, 10);
            return Enumerable
                .Range(0, SamplePour.Nodes)
                .Sum(n => SamplePour.McdM2PerPhotonPerSMm3[n] * ladder.EmittedPerSMm3(profile.At(n), 10));
        }
        Assert.InRange(minutes, 1, 1000);
        Assert.Equal(
            0.9,
            TenMinutesLater(minutes * 60) / TenMinutesLater(double.PositiveInfinity),
            tolerance: 1e-9
        );
    }

    [Fact]
    public void A_day_that_was_already_brighter_needs_no_charge()
    {
        var programme = new ChargeProgramme(
            SamplePour.Nodes,
            [
                ChargeStep.Lit(SamplePour.AbsorbedPerSMm3(20000), 1438, 20),
                ChargeStep.Lit(SamplePour.AbsorbedPerSMm3(1), 2, 20),
            ],
            ChargeStart.SettledDaily,
            20
        );
        Assert.Equal(
            0,
            ChargeTime.MinutesTo90Percent([
                (programme.Charge(SamplePour.Ladder()), SamplePour.McdM2PerPhotonPerSMm3),
            ])
        );
    }

    [Fact]
    public void Nothing_absorbed_means_no_charging_time()
    {
        ChargedTraps charged = SamplePour.Charged(0, 5);
        Assert.Null(ChargeTime.MinutesTo90Percent([(charged, SamplePour.McdM2PerPhotonPerSMm3)]));
    }

    [Fact]
    public void Stronger_light_charges_sooner()
    {
        double Minutes(double lx) =>
            ChargeTime
                .MinutesTo90Percent([(SamplePour.Charged(lx, 5), SamplePour.McdM2PerPhotonPerSMm3)])!
                .Value;
        Assert.True(Minutes(5000) < Minutes(500));
        Assert.True(Minutes(500) < Minutes(50));
    }
}
