using GlowMix.Colour;
using GlowMix.Spectra;

namespace GlowMix.Tests.Colour;

public class DaylightPhaseTests
{
    [Theory]
    // M₁ and M₂ to three decimals, as CIE 015:2018 rounds them; largest difference from the table, 100 at 560 nm.
    [InlineData("d50", 5000, -1.039, 0.363, 5e-4)]
    [InlineData("d55", 5500, -0.785, -0.198, 5e-4)]
    [InlineData("d65", 6500, -0.295, -0.689, 9e-4)]
    [InlineData("d75", 7500, 0.145, -0.760, 5e-4)]
    public void The_illuminants_of_CIE_015_2018_are_phases_of_daylight(
        string name,
        double nominalK,
        double m1,
        double m2,
        double difference
    )
    {
        // The names date from the temperature scale of 1948, c₂ = 1.4380e-2; the CIE's sums from that of 1968, 1.4388e-2.
        DaylightPhase phase = DaylightPhase.AtK(nominalK * 1.4388 / 1.4380);
        Assert.Equal(m1, phase.M1, 0.00051);
        Assert.Equal(m2, phase.M2, 0.00051);

        TabulatedSpectrum table = StandardIlluminants.Named(name);
        DaylightPhase rounded = new(m1, m2);
        for (int i = 0; i < table.Count; i++)
        {
            Assert.Equal(table.Values[i], rounded.At(table.WavelengthsNm[i]), difference + 1e-9);
        }
    }

    [Theory]
    [InlineData(5000, .34566, .35860)]
    [InlineData(6500, .31272, .32913)]
    public void The_daylight_locus_passes_where_the_formula_of_CIE_015_2018_says(
        double nominalK,
        double x,
        double y
    )
    {
        Chromaticity colour = DaylightPhase.ChromaticityAtK(nominalK * 1.4388 / 1.4380);
        Assert.Equal(x, colour.X, 0.6e-5);
        Assert.Equal(y, colour.Y, 0.6e-5);
    }

    [Fact]
    public void The_two_branches_of_the_locus_meet_at_7000_K() =>
        Assert.Equal(DaylightPhase.ChromaticityAtK(7000).X, DaylightPhase.ChromaticityAtK(7000.001).X, 1e-5);

    [Fact]
    public void On_the_models_grid_a_phase_is_100_at_560_nm_and_has_its_own_CCT()
    {
        Spectrum d65 = DaylightPhase.AtK(6504).OnModelGrid();
        Assert.Equal(100, d65[44], 1e-12);
        Assert.Equal(6504, ColourPoint.Of(d65).CctK!.Value, 1.0);
    }

    [Theory]
    [InlineData(3999)]
    [InlineData(25_001)]
    [InlineData(double.NaN)]
    public void Outside_4000_to_25000_K_there_is_no_daylight(double cctK) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => DaylightPhase.AtK(cctK));
}
