using GlowMix.Colour;
using GlowMix.Readings;
using GlowMix.Readings.Spectral;
using GlowMix.Spectra;

namespace GlowMix.Tests.Readings.Spectral;

public class ReadingFiguresTests
{
    [Fact]
    public void Light_beyond_the_visible_changes_no_figure()
    {
        // Illuminant A from 300 to 830 nm: x 0.4476, y 0.4074 (CIE 015:2018); 154.1 lm/W summed from 380 to 780 nm.
        ReadingFigures figures = ReadingFigures.Of(SampleReading.Of(StandardIlluminants.Named("a")))!;
        Assert.Equal(0.4476, figures.Colour.ChromaticityX!.Value, 5.1e-5);
        Assert.Equal(0.4074, figures.Colour.ChromaticityY!.Value, 5.1e-5);
        Assert.Equal(154.1, figures.Colour.LuminousEfficacyLmPerW!.Value, 0.051);
    }

    [Fact]
    public void Peaks_of_a_white_LED_are_its_die_and_its_phosphor()
    {
        ReadingFigures figures = ReadingFigures.Of(
            SampleReading.Of(StandardIlluminants.Named("led_b3").Between(380, 780))
        )!;
        Assert.Equal(2, figures.Peaks.Length);
        double[] nm = [.. figures.Peaks.Select(p => p.Nm).Order()];
        Assert.InRange(nm[0], 440, 465);
        Assert.InRange(nm[1], 550, 620);
        Assert.Equal(100, figures.Bands.Sum(b => b.PowerPercent), 1e-9);
    }

    [Fact]
    public void A_bell_has_its_place_and_width_whatever_the_grid()
    {
        double[] nm = [.. Enumerable.Range(0, 134).Select(i => 380 + (i * 3.0))];
        // Full width of a Gaussian at half height is 2√(2 ln 2) σ.
        double sigma = 40 / (2 * Math.Sqrt(2 * Math.Log(2)));
        ReadingFigures figures = ReadingFigures.Of(
            SampleReading.Of(
                TabulatedSpectrum.From(nm, [.. nm.Select(n => Math.Exp(-Math.Pow((n - 521) / sigma, 2) / 2))])
            )
        )!;
        ReadingPeak peak = Assert.Single(figures.Peaks);
        Assert.Equal(521, peak.Nm, 0.3);
        Assert.Equal(40, peak.FullWidthNm!.Value, 0.8);
    }

    [Fact]
    public void Lux_are_those_of_the_spectrum_in_absolute_units_only()
    {
        TabulatedSpectrum table = StandardIlluminants.Named("led_b1").Between(380, 780);
        ReadingFigures absolute = ReadingFigures.Of(SampleReading.Of(table))!;
        Assert.Equal(ColourFigures.Of(table).LuminousFluxLm, absolute.IlluminanceLx);
        Assert.Null(ReadingFigures.Of(SampleReading.Of(table, SpectralUnit.Counts))!.IlluminanceLx);
    }

    [Fact]
    public void Negative_noise_is_kept_in_the_sums()
    {
        // Alternating noise cancels where it is kept; cut to zero it would add half its size everywhere.
        TabulatedSpectrum table = StandardIlluminants.Named("led_b1").Between(380, 780);
        int sign = 1;
        TabulatedSpectrum noisy = SampleReading.Changed(table, (_, v) => v + ((sign = -sign) * 2));
        double clean = ColourFigures.Of(table).CctK!.Value;
        Assert.Equal(clean, ReadingFigures.Of(SampleReading.Of(noisy))!.Colour.CctK!.Value, 2.0);
    }

    [Fact]
    public void Without_two_visible_samples_there_are_no_figures() =>
        Assert.Null(ReadingFigures.Of(SampleReading.Of(TabulatedSpectrum.From([300, 390, 800], [1, 1, 1]))));

    [Fact]
    public void Dark_on_other_wavelengths_is_read_off_lines_and_told()
    {
        SpectralReading reading = SampleReading.Of(
            TabulatedSpectrum.From([400, 500, 600, 700], [5, 9, 7, 6])
        );
        SpectralReading dark = SampleReading.Of(TabulatedSpectrum.From([390, 650], [1, 2.3]));
        SpectralReading net = DarkReading.Subtract(reading, dark).Reading!;
        Assert.Equal([400, 500, 600], net.Spectrum.WavelengthsNm.ToArray());
        Assert.Equal(9 - 1 - (0.005 * 110), net.Spectrum.Values[1], 1e-12);
        Assert.Equal(["grid_differs"], net.Warnings.Select(w => w.Code));
        Assert.NotNull(DarkReading.Subtract(reading, dark with { Unit = SpectralUnit.Counts }).Problem);
    }

    [Fact]
    public void A_ratio_needs_no_correction()
    {
        TabulatedSpectrum bare = StandardIlluminants.Named("led_b3").Between(380, 780);
        TabulatedSpectrum potted = SampleReading.Changed(bare, (nm, v) => v * (nm < 500 ? 1.5 : 0.8));
        foreach (
            Func<double, double> response in (Func<double, double>[])
                [_ => 1, nm => nm / 500, nm => 2 - (nm / 500)]
        )
        {
            var compared = SpectrumComparison.Of(
                Figures(potted, response),
                Figures(bare, response),
                null,
                out string? problem
            )!;
            Assert.Null(problem);
            Assert.Equal(1.5, compared.Ratio.ValueAtNm(450), 1e-9);
            Assert.Equal(0.8, compared.Ratio.ValueAtNm(600), 1e-9);
            Assert.Equal(1.5, compared.Bands.Single(b => b.Band.Name == "blue").Ratio!.Value, 0.03);
            Assert.Equal(0.8, compared.Bands.Single(b => b.Band.Name == "red").Ratio!.Value, 1e-9);
        }
        var scaled = SpectrumComparison.Of(Figures(potted, _ => 7), Figures(bare, _ => 1), 600, out _)!;
        Assert.Equal(1, scaled.Ratio.ValueAtNm(600), 1e-9);
        Assert.Equal(1.5 / 0.8, scaled.Ratio.ValueAtNm(450), 1e-9);

        static ReadingFigures Figures(TabulatedSpectrum table, Func<double, double> response) =>
            ReadingFigures.Of(
                SampleReading.Of(
                    SampleReading.Changed(table, (nm, v) => v * response(nm)),
                    SpectralUnit.Counts
                )
            )!;
    }
}
