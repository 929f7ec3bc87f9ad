using GlowMix.Afterglow;
using MathNet.Numerics.Integration;

namespace GlowMix.Tests.Afterglow;

public class TrapProfileTests
{
    private static readonly TrapLadder Ladder = SamplePour.Ladder();

    [Fact]
    public void Under_light_traps_gained_are_photons_trapped_less_emitted_and_bleached()
    {
        const double g = 3e12;
        const double seconds = 900;
        double b = Ladder.TrappingEfficiency(35) / Ladder.CapacityPerMm3;
        TrapProfile start = TrapProfile.Of([.. Enumerable.Repeat(0.2, 13)]);

        // Integrals over the logarithm of the time: the fastest rung settles within a second.
        double Over(Func<TrapProfile, double> perS)
        {
            double Weighted(double log) => perS(At(Math.Exp(log) - 1)) * Math.Exp(log);
            return GaussLegendreRule.Integrate(Weighted, 0, Math.Log(1 + seconds), 100);
        }
        TrapProfile At(double s) => start.After(Ladder, [g], s, 35);
        double Filled(TrapProfile p) => p.At(0).ToArray().Select((f, k) => f * Ladder.TrapsPerMm3[k]).Sum();

        double trapped = Over(p => b * g * (Ladder.CapacityPerMm3 - Filled(p)));
        double emitted = Over(p => Ladder.EmittedPerSMm3(p.At(0), 35));
        double bleached = Over(p => 0.3 * b * g * Filled(p));
        double gained = Filled(At(seconds)) - Filled(start);
        Assert.Equal(trapped, gained + emitted + bleached, tolerance: 1e-9 * trapped);
        Assert.InRange(trapped, 0, Ladder.TrappingEfficiency(35) * g * seconds);
    }

    [Fact]
    public void Filled_traps_and_those_emitted_so_far_add_up_in_the_dark()
    {
        TrapProfile start = TrapProfile.Of([.. Enumerable.Repeat(0.7, 13)]);
        TrapProfile later = start.After(Ladder, [], 7200, 5);
        double lost = (start.FilledPercentAt(0, Ladder) - later.FilledPercentAt(0, Ladder)) / 100;
        double emitted = Ladder.EmittedInDarkPerMm3(start.At(0), 7200, 5);
        Assert.Equal(1, emitted / (lost * Ladder.CapacityPerMm3), tolerance: 1e-9);
    }

    [Fact]
    public void Weak_light_fills_one_trap_per_photon_times_efficiency()
    {
        TrapProfile after = TrapProfile.Empty(1).After(Ladder, [1], 1e-6, 20);
        double filled = after.FilledPercentAt(0, Ladder) / 100 * Ladder.CapacityPerMm3;
        Assert.Equal(1, filled / (0.3 * 1e-6), tolerance: 1e-6);
    }

    [Fact]
    public void Bleaching_lowers_the_fill()
    {
        TrapConstants none = TrapConstants.Assumed with { BleachingRatio = 0 };
        TrapProfile Charged(TrapLadder ladder) => TrapProfile.Empty(1).After(ladder, [1e13], 1e5, 20);
        double with = Charged(Ladder).FilledPercentAt(0, Ladder);
        double without = Charged(SamplePour.Ladder(constants: none)).FilledPercentAt(0, Ladder);
        Assert.True(with < without);
    }

    [Fact]
    public void Endless_strong_light_fills_one_over_one_plus_the_bleaching_ratio()
    {
        TrapProfile full = TrapProfile.Empty(1).After(Ladder, [1e22], double.PositiveInfinity, 20);
        Assert.Equal(100 / 1.3, full.FilledPercentAt(0, Ladder), tolerance: 1e-3);
    }

    [Fact]
    public void Filled_percent_weighs_depths_by_their_pigment()
    {
        TrapProfile halves = TrapProfile.Of([.. Enumerable.Repeat(0.2, 13), .. Enumerable.Repeat(0.8, 13)]);
        Assert.Equal(20, halves.FilledPercentAt(0, Ladder), tolerance: 1e-12);
        Assert.Equal(35, halves.FilledPercent(Ladder, [3, 1]), tolerance: 1e-12);
    }

    [Fact]
    public void What_a_caller_gave_or_got_cannot_change_a_profile()
    {
        double[] given = [.. Enumerable.Repeat(0.5, 13)];
        TrapProfile profile = TrapProfile.Of(given);
        given[0] = 0;
        Assert.Equal(0.5, profile.At(0)[0]);
    }

    [Fact]
    public void Fractions_outside_0_to_1_and_absorption_of_other_depths_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => TrapProfile.Of([.. Enumerable.Repeat(1.1, 13)]));
        Assert.Throws<ArgumentException>(() => TrapProfile.Of(new double[14]));
        Assert.Throws<ArgumentException>(() => TrapProfile.Empty(2).After(Ladder, [1, 1, 1], 1, 20));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            TrapProfile.Empty(1).After(Ladder, [double.NaN], 1, 20)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            TrapProfile.Empty(1).After(Ladder, [1], double.NaN, 20)
        );
    }
}
