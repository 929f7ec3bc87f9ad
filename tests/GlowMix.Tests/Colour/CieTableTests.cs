using GlowMix.Colour;
using GlowMix.Spectra;

namespace GlowMix.Tests.Colour;

/// <summary>Each table against a second source of the same figures, row by row.</summary>
public class CieTableTests
{
    [Fact]
    public void V_lambda_of_ISO_23539_is_y_bar_of_the_1931_observer_to_every_digit()
    {
        ShippedTable v = ShippedTable.Read("cie/v_photopic");
        Assert.Equal(471, v.Count);
        for (int i = 0; i < v.Count; i++)
        {
            Assert.Equal(v["v"][i], StandardObserver.YBar.ValueAtNm(v["wavelength_nm"][i]), 1e-12);
        }
    }

    [Fact]
    public void The_observer_tables_run_in_steps_of_1_nm_over_their_standards_range()
    {
        AssertEvery1Nm(StandardObserver.XBar, 360, 830);
        AssertEvery1Nm(StandardObserver.YBar, 360, 830);
        AssertEvery1Nm(StandardObserver.ZBar, 360, 830);
        AssertEvery1Nm(StandardObserver.VPrime, 380, 780);
    }

    [Fact]
    public void The_1931_observer_gives_equal_energy_equal_sums()
    {
        // Made so by the CIE in 1931: x, y of equal energy is 1/3, 1/3. The 1 nm table keeps it to four digits.
        double x = Sum(StandardObserver.XBar);
        double y = Sum(StandardObserver.YBar);
        double z = Sum(StandardObserver.ZBar);
        Assert.Equal(1.0 / 3, x / (x + y + z), 5e-5);
        Assert.Equal(1.0 / 3, y / (x + y + z), 5e-5);

        static double Sum(TabulatedSpectrum curve) => curve.Values.ToArray().Sum();
    }

    [Fact]
    public void V_prime_is_1_at_507_nm_and_meets_V_at_555_016_nm()
    {
        Assert.Equal(1, StandardObserver.VPrime.ValueAtNm(507));
        Assert.Equal(0.402, StandardObserver.VPrime.ValueAtNm(555));
        // Both scales are 683 lm/W at 540 THz by the definition of the candela (SI brochure, 9th edition).
        Assert.Equal(
            683,
            LuminousEfficacy.PhotopicPeakLmPerW * StandardObserver.YBar.ValueAtNm(555.016),
            0.01
        );
        Assert.Equal(
            683,
            LuminousEfficacy.ScotopicPeakLmPerW * StandardObserver.VPrime.ValueAtNm(555.016),
            0.3
        );
    }

    [Fact]
    public void Illuminant_A_follows_its_defining_formula()
    {
        // CIE 015:2018: a black body of 2848 K with the c₂ of 1931, 1.435e-2 m K; 100 at 560 nm, six digits.
        const double exponentNm = 1.435e7 / 2848;
        TabulatedSpectrum a = StandardIlluminants.Named("a");
        for (int i = 0; i < a.Count; i++)
        {
            double nm = a.WavelengthsNm[i];
            double formula =
                100
                * Math.Pow(560 / nm, 5)
                * (Math.Exp(exponentNm / 560) - 1)
                / (Math.Exp(exponentNm / nm) - 1);
            Assert.Equal(1, a.Values[i] / formula, 5e-6);
        }
    }

    [Fact]
    public void A_column_or_a_table_that_is_not_there_is_named()
    {
        Assert.Contains(
            "'q'",
            Assert
                .Throws<ArgumentException>(() => ShippedTable.Read("cie/v_photopic")["q"].ToString())
                .Message,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "data/cie/none.csv",
            Assert.Throws<InvalidOperationException>(() => ShippedTable.Read("cie/none")).Message,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "fl13",
            Assert.Throws<ArgumentException>(() => StandardIlluminants.Named("fl13")).Message,
            StringComparison.Ordinal
        );
    }

    private static void AssertEvery1Nm(TabulatedSpectrum curve, int firstNm, int lastNm) =>
        Assert.Equal(
            Enumerable.Range(firstNm, lastNm - firstNm + 1).Select(nm => (double)nm),
            curve.WavelengthsNm.ToArray()
        );
}
