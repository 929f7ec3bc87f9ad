using GlowMix.Afterglow;
using MathNet.Numerics.Integration;

namespace GlowMix.Tests.Afterglow;

public class TrapLadderTests
{
    [Theory] // E = kT ln(s τ), s = 1e10 /s, T = 293.15 K, by hand with k = 8.617333e-5 eV/K
    [InlineData(2, 0.640)]
    [InlineData(4, 0.698)]
    [InlineData(6, 0.756)]
    [InlineData(8, 0.814)]
    [InlineData(10, 0.873)]
    [InlineData(12, 0.931)]
    public void Rungs_lie_as_deep_as_their_rate_and_the_frequency_factor_say(int rung, double depthEv) =>
        Assert.Equal(depthEv, SamplePour.Ladder().DepthEv(rung), tolerance: 0.0005);

    [Fact]
    public void Rates_run_from_1_per_second_to_1_per_million_seconds_at_20_C()
    {
        for (int rung = 0; rung < TrapLadder.RungCount; rung++)
        {
            double expected = Math.Pow(10, -rung / 2.0);
            Assert.Equal(1, SamplePour.Ladder().RatePerS(rung, 20) / expected, tolerance: 1e-12);
            Assert.Equal(1, TrapLadder.RateAt20CPerS(rung) / expected, tolerance: 1e-15);
        }
    }

    [Fact]
    public void Boltzmann_constant_in_eV_is_that_of_SI_2019() =>
        Assert.Equal(8.617333262e-5, TrapConstants.BoltzmannEvPerK, tolerance: 5e-15); // CODATA 2018, printed digits

    [Fact]
    public void Rates_follow_Arrhenius_between_two_temperatures()
    {
        TrapLadder ladder = SamplePour.Ladder();
        double expected = Math.Exp(-ladder.DepthEv(6) / 8.617333262e-5 * ((1 / 273.15) - (1 / 313.15)));
        Assert.Equal(1, ladder.RatePerS(6, 0) / ladder.RatePerS(6, 40) / expected, tolerance: 1e-8);
    }

    [Fact]
    public void Trapping_efficiency_follows_0_17_eV_and_stops_at_1()
    {
        TrapLadder ladder = SamplePour.Ladder(trappingEfficiencyAt20C: 0.4);
        Assert.Equal(0.4, ladder.TrappingEfficiency(20), tolerance: 1e-15);
        double cold = 0.4 * Math.Exp(-0.17 / 8.617333262e-5 * ((1 / 253.15) - (1 / 293.15)));
        Assert.Equal(cold, ladder.TrappingEfficiency(-20), tolerance: 1e-9);
        Assert.Equal(1, ladder.TrappingEfficiency(100));
    }

    [Fact]
    public void Endless_darkness_returns_one_photon_for_each_filled_trap()
    {
        TrapLadder ladder = SamplePour.Ladder();
        double[] filled = [.. Enumerable.Range(1, 13).Select(k => k / 14.0)];
        double trapped = filled.Zip(ladder.TrapsPerMm3.ToArray(), (f, n) => f * n).Sum();
        foreach (double temperatureC in new[] { -20.0, 20, 60 })
        {
            double emitted = ladder.EmittedInDarkPerMm3(filled, double.PositiveInfinity, temperatureC);
            Assert.Equal(1, emitted / trapped, tolerance: 1e-12);
        }
    }

    [Fact]
    public void Photons_of_a_dark_hour_are_the_integral_of_the_emission()
    {
        TrapLadder ladder = SamplePour.Ladder();
        TrapProfile start = TrapProfile.Of([.. Enumerable.Repeat(0.5, 13)]);
        double Emission(double logS)
        {
            TrapProfile now = start.After(ladder, [], Math.Exp(logS) - 1, 10);
            return ladder.EmittedPerSMm3(now.At(0), 10) * Math.Exp(logS);
        }
        double integral = GaussLegendreRule.Integrate(Emission, 0, Math.Log(3601), 100);
        Assert.Equal(1, integral / ladder.EmittedInDarkPerMm3(start.At(0), 3600, 10), tolerance: 1e-9);
    }

    [Fact]
    public void Numbers_that_make_no_ladder_are_refused_with_what_is_allowed()
    {
        double[] none = new double[13];
        double[] some = [.. Enumerable.Repeat(1e14, 13)];
        double[] negative = [.. some];
        negative[3] = -1;
        Assert.Throws<ArgumentOutOfRangeException>(() => new TrapLadder(none, 0.5, TrapConstants.Assumed));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            new TrapLadder(negative, 0.5, TrapConstants.Assumed)
        );
        Assert.Throws<ArgumentException>(() => new TrapLadder(some.AsSpan(1), 0.5, TrapConstants.Assumed));
        foreach (double efficiency in new[] { 0, 1.01, double.NaN })
        {
            Assert.Throws<ArgumentOutOfRangeException>(() =>
                new TrapLadder(some, efficiency, TrapConstants.Assumed)
            );
        }
        Assert.Contains(
            "-100 to 200 °C",
            Assert
                .Throws<ArgumentOutOfRangeException>(() => SamplePour.Ladder().RatePerS(0, double.NaN))
                .Message,
            StringComparison.Ordinal
        );
    }
}
