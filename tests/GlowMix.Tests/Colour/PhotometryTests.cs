using GlowMix.Colour;
using GlowMix.Spectra;

namespace GlowMix.Tests.Colour;

public class PhotometryTests
{
    [Theory]
    // Single lines, from V(λ) and V′(λ) of ISO 23539; computed independently of this code.
    [InlineData(450, 29.8, 0.051)]
    [InlineData(520, 3.28, 0.0051)]
    [InlineData(555, 1.001, 0.00051)]
    [InlineData(590, 0.215, 0.00051)]
    public void A_line_has_its_S_P(int nm, double ratio, double tolerance)
    {
        Spectrum line = Spectrum.FromNm(n => n == nm ? 1 : 0);
        Assert.Equal(ratio, Photometry.ScotopicLm(line) / Photometry.PhotopicLm(line), tolerance);
    }

    [Fact]
    public void The_line_of_507_nm_has_an_S_P_of_5_60_on_a_grid_that_has_507_nm() =>
        Assert.Equal(
            5.60,
            ColourFigures.Of(TabulatedSpectrum.From([506, 507, 508], [0, 1, 0])).ScotopicPhotopicRatio!.Value,
            0.0051
        );

    [Fact]
    public void Equal_energy_has_an_S_P_of_2_261()
    {
        double[] nm = [.. Enumerable.Range(360, 471).Select(n => (double)n)];
        TabulatedSpectrum flat = TabulatedSpectrum.From(nm, [.. nm.Select(_ => 1.0)]);
        Assert.Equal(2.261, ColourFigures.Of(flat).ScotopicPhotopicRatio!.Value, 0.00051);
        Assert.Equal(2.261, ColourFigures.Of(Spectrum.Constant(1)).ScotopicPhotopicRatio!.Value, 0.001);
    }

    [Theory]
    // San José streetlight design guide (2011), from CIE 191 and Berman (1992): real lamps of the kind, so ± 10 %.
    [InlineData("fl4", 1.00)]
    [InlineData("fl2", 1.46)]
    [InlineData("fl11", 1.54)]
    [InlineData("fl1", 2.22)]
    public void Fluorescent_lamps_have_the_S_P_of_their_kind(string name, double published) =>
        Assert.Equal(
            1,
            ColourFigures.Of(StandardIlluminants.Named(name)).ScotopicPhotopicRatio!.Value / published,
            0.10
        );

    [Theory]
    // Gaussian bands in wavelength as afterglow pigments have, peak and width at half height in nm; lm/W of the band and
    // S/P from sums at 1 nm, computed independently of this code.
    [InlineData(520, 80, 415, 0.51, 2.92, 0.0051)]
    [InlineData(490, 65, 216, 0.51, 6.16, 0.0051)]
    [InlineData(442, 50, 26.5, 0.051, 23.2, 0.051)]
    [InlineData(530, 90, 451, 0.51, 2.38, 0.0051)]
    public void An_afterglow_band_has_a_high_S_P(
        double peakNm,
        double widthNm,
        double efficacyLmPerW,
        double efficacyTolerance,
        double ratio,
        double ratioTolerance
    )
    {
        Spectrum band = Spectrum.FromNm(nm =>
            Math.Exp(-4 * Math.Log(2) * Math.Pow((nm - peakNm) / widthNm, 2))
        );
        ColourFigures figures = ColourFigures.Of(band);
        Assert.Equal(efficacyLmPerW, figures.LuminousEfficacyLmPerW!.Value, efficacyTolerance);
        Assert.Equal(ratio, figures.ScotopicPhotopicRatio!.Value, ratioTolerance);
    }

    [Fact]
    public void One_watt_at_555_nm_is_683_002_lm_and_0_402_of_1700_06_scotopic()
    {
        Spectrum watt = Spectrum.FromNm(nm => nm == 555 ? 1.0 / 5 : 0);
        Assert.Equal(683.002, Photometry.PhotopicLm(watt), 1e-9);
        Assert.Equal(0.402 * 1700.06, Photometry.ScotopicLm(watt), 1e-9);
        ColourFigures figures = ColourFigures.Of(watt);
        Assert.Equal(683.002, figures.LuminousFluxLm, 1e-9);
        Assert.Equal(0.402 * 1700.06, figures.ScotopicLuminousFluxLm, 1e-9);
        Assert.Equal(683.002, figures.LuminousEfficacyLmPerW!.Value, 1e-9);
    }

    [Fact]
    public void The_weights_summed_over_a_spectrum_are_its_lumens()
    {
        Spectrum light = Spectrum.FromNm(nm => 1 + Math.Sin(nm / 40));
        Assert.Equal(Photometry.PhotopicLm(light), light.IntegralOverNm(Photometry.LmPerW), 1e-8);
        Assert.Equal(Photometry.ScotopicLm(light), light.IntegralOverNm(Photometry.ScotopicLmPerW), 1e-8);
        Assert.Equal(0, Photometry.LmPerW[0]);
        Assert.Equal(0, Photometry.ScotopicLmPerW[7]);
    }
}
