using GlowMix.Casting;
using GlowMix.Materials;

namespace GlowMix.Tests.Casting;

public class ResinFlowTests
{
    private static readonly ResinFlow Epoxy = new(
        [new(600, 25)],
        [new(Minutes: 100, MassG: 150, TemperatureC: 25), new(Minutes: 60, MassG: 500, TemperatureC: 25)],
        gelTimeMin: 250
    );

    [Fact]
    public void One_viscosity_doubles_for_15_K_less()
    {
        Assert.Equal(600, Epoxy.ViscosityMPaS(25), tolerance: 1e-9);
        Assert.Equal(1200, Epoxy.ViscosityMPaS(10), tolerance: 1e-9);
    }

    [Fact]
    public void Two_viscosities_are_met_and_joined_by_Arrhenius()
    {
        var flow = new ResinFlow([new(400, 35), new(1600, 15)], [new(40, 150, 25)], null);
        Assert.Equal(1600, flow.ViscosityMPaS(15), tolerance: 1e-9);
        Assert.Equal(400, flow.ViscosityMPaS(35), tolerance: 1e-9);
        double share = ((1 / 288.15) - (1 / 298.15)) / ((1 / 288.15) - (1 / 308.15));
        Assert.Equal(1600 * Math.Pow(0.25, share), flow.ViscosityMPaS(25), tolerance: 1e-9);
        Assert.InRange(flow.ViscosityMPaS(5), 3000, 4000);
    }

    [Fact]
    public void Three_viscosities_are_joined_pair_by_pair()
    {
        var flow = new ResinFlow([new(1000, 20), new(500, 30), new(400, 40)], [new(40, 150, 25)], null);
        Assert.Equal(500, flow.ViscosityMPaS(30), tolerance: 1e-9);
        Assert.InRange(flow.ViscosityMPaS(25), 690, 720);
        Assert.InRange(flow.ViscosityMPaS(35), 440, 455);
    }

    [Fact]
    public void Pot_life_halves_for_10_K_more()
    {
        Assert.Equal(100, Epoxy.PotLifeMin(150, 25), tolerance: 1e-9);
        Assert.Equal(50, Epoxy.PotLifeMin(150, 35), tolerance: 1e-9);
        Assert.Equal(200, Epoxy.PotLifeMin(150, 15), tolerance: 1e-9);
    }

    [Fact]
    public void Pot_life_is_straight_in_logarithms_between_masses_and_held_beyond()
    {
        Assert.Equal(Math.Sqrt(6000), Epoxy.PotLifeMin(Math.Sqrt(150 * 500), 25), tolerance: 1e-9);
        Assert.Equal(100, Epoxy.PotLifeMin(15, 25), tolerance: 1e-9);
        Assert.Equal(60, Epoxy.PotLifeMin(2000, 25), tolerance: 1e-9);
        Assert.Equal(100, Epoxy.PotLifeMin(null, 25), tolerance: 1e-9);
        Assert.False(Epoxy.IsBeyondSheet(500));
        Assert.True(Epoxy.IsBeyondSheet(501));
    }

    [Fact]
    public void One_mass_at_two_temperatures_takes_the_nearer()
    {
        var flow = new ResinFlow([new(600, 25)], [new(80, 150, 22), new(35, 150, 29)], null);
        Assert.Equal(80 * Math.Pow(2, 0.2), flow.PotLifeMin(150, 20), tolerance: 1e-9);
        Assert.Equal(35, flow.PotLifeMin(150, 29), tolerance: 1e-9);
    }

    [Fact]
    public void Gel_time_follows_the_pot_life()
    {
        Assert.Equal(250, Epoxy.GelTimeMin(150, 25), tolerance: 1e-9);
        Assert.Equal(75, Epoxy.GelTimeMin(500, 35), tolerance: 1e-9);
        Assert.Equal(
            double.PositiveInfinity,
            new ResinFlow([new(600, 25)], [new(40, 150, 25)], null).GelTimeMin(150, 25)
        );
    }

    [Fact]
    public void Sheets_without_numbers_or_with_impossible_ones_are_refused()
    {
        Assert.Throws<ArgumentException>(() => new ResinFlow([], [new(40, 150, 25)], null));
        Assert.Throws<ArgumentException>(() =>
            new ResinFlow([new(600, 25), new(500, 25)], [new(40, 150, 25)], null)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            new ResinFlow([new(0, 25)], [new PotLife(40, 150, 25)], null)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            new ResinFlow([new(600, 25)], [new(40, 0, 25)], null)
        );
    }
}
