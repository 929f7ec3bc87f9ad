using GlowMix.Colour;
using GlowMix.Predictions;
using GlowMix.Readings;
using GlowMix.Readings.Spectral;
using GlowMix.Spectra;

namespace GlowMix.Tests.Readings.Spectral;

/// <summary>Faults put into CIE illuminants: each is told where it moves the colour, with about its true effect.</summary>
public class SpectrumChecksTests
{
    [Theory]
    [InlineData("led_b1")]
    [InlineData("led_b5")]
    [InlineData("led_v2")]
    [InlineData("led_rgb1")]
    [InlineData("fl11")]
    [InlineData("d65")]
    [InlineData("a")]
    public void A_clean_table_of_the_CIE_gives_no_warning(string name) =>
        Assert.Empty(Codes(SampleReading.Of(StandardIlluminants.Named(name).Between(380, 780))));

    [Theory]
    // Effect of a reading that begins at 420 nm on the CCT, K; computed independently of this code (whole minus cut).
    [InlineData("led_b1", 0.4)]
    [InlineData("led_b4", 4)]
    [InlineData("led_v2", 77)]
    [InlineData("d65", 174)]
    public void A_missing_end_is_told_by_its_effect(string name, double shiftK)
    {
        SpectralReading cut = SampleReading.Of(
            At1Nm(StandardIlluminants.Named(name).Between(380, 780)).Between(420, 780)
        );
        ReadingFigures figures = ReadingFigures.Of(cut)!;
        Warning? warning = figures.Warnings.SingleOrDefault(w => w.Code == "range");
        Assert.Equal(shiftK > 10, warning is not null);
        if (warning is not null)
        {
            // How the light goes on can only be guessed: within a factor of two.
            Assert.InRange(KelvinIn(warning), shiftK / 2, shiftK * 2);
        }
    }

    [Fact]
    public void An_end_behind_700_nm_hardly_matters_for_a_LED() =>
        Assert.Empty(Codes(SampleReading.Of(StandardIlluminants.Named("led_b3").Between(380, 730))));

    [Theory]
    [InlineData(5, false)]
    [InlineData(10, false)]
    [InlineData(40, true)]
    public void Coarse_steps_are_told_by_their_effect(int stepNm, bool isTold)
    {
        TabulatedSpectrum led = StandardIlluminants.Named("led_b3");
        double[] nm = [.. Enumerable.Range(0, (400 / stepNm) + 1).Select(i => 380.0 + (i * stepNm))];
        SpectralReading reading = SampleReading.Of(TabulatedSpectrum.From(nm, [.. nm.Select(led.ValueAtNm)]));
        Assert.Equal(isTold, Codes(reading).Contains("coarse_step"));
    }

    [Fact]
    public void A_gap_is_told_where_it_is()
    {
        TabulatedSpectrum led = StandardIlluminants.Named("led_b3");
        double[] nm = [.. led.WavelengthsNm.ToArray().Where(n => n is <= 440 or >= 480)];
        SpectralReading reading = SampleReading.Of(TabulatedSpectrum.From(nm, [.. nm.Select(led.ValueAtNm)]));
        Warning warning = ReadingFigures.Of(reading)!.Warnings.Single(w => w.Code == "coarse_step");
        Assert.Contains("40 nm from 440 to 480 nm", warning.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.01, true)]
    [InlineData(-0.01, true)]
    [InlineData(0.0005, false)]
    public void A_flat_level_is_told_with_the_shift_it_makes(double share, bool isTold)
    {
        TabulatedSpectrum led = Wide("led_b1");
        double peak = led.Values.ToArray().Max();
        double clean = ColourFigures.Of(led.Between(380, 780)).CctK!.Value;
        SpectralReading raised = SampleReading.Of(SampleReading.Changed(led, (_, v) => v + (share * peak)));
        ReadingFigures figures = ReadingFigures.Of(raised)!;
        Warning? warning = figures.Warnings.SingleOrDefault(w => w.Code == "pedestal");
        Assert.Equal(isTold, warning is not null);
        if (warning is not null)
        {
            Assert.Equal(clean - figures.Colour.CctK!.Value, KelvinIn(warning), 1.0);
            Assert.Contains("--dark-window", warning.Text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Noise_is_measured_and_its_effect_is_that_of_many_readings()
    {
        TabulatedSpectrum led = Wide("led_b3").Between(380, 780);
        double peak = led.Values.ToArray().Max();
        var random = new Random(11);
        double[] ccts = new double[200];
        double told = 0;
        for (int i = 0; i < ccts.Length; i++)
        {
            SpectralReading noisy = SampleReading.Of(
                SampleReading.Changed(led, (_, v) => v + (0.05 * peak * Normal(random)))
            );
            ReadingFigures figures = ReadingFigures.Of(noisy)!;
            ccts[i] = figures.Colour.CctK!.Value;
            if (i == 0)
            {
                Assert.Equal(0.05 * peak, Noise.Of(figures.Visible)!.Value, 0.006 * peak);
                string text = figures.Warnings.Single(w => w.Code == "noise").Text;
                told = double.Parse(
                    text.Split('±')[1].Trim().Split(' ')[0],
                    System.Globalization.CultureInfo.InvariantCulture
                );
            }
        }
        double mean = ccts.Average();
        double deviation = Math.Sqrt(ccts.Sum(c => (c - mean) * (c - mean)) / (ccts.Length - 1));
        Assert.Equal(2 * deviation, told, 0.25 * told);
    }

    [Fact]
    public void A_cut_top_is_told_with_about_what_it_hides()
    {
        TabulatedSpectrum led = Wide("led_b3").Between(380, 780);
        double whole = ColourFigures.Of(led).CctK!.Value;
        double top = 0.8 * led.Values.ToArray().Max();
        string text = string.Concat(
            led.WavelengthsNm.ToArray()
                .Zip(
                    led.Values.ToArray(),
                    (nm, v) => FormattableString.Invariant($"{nm};{4095 * Math.Min(v, top) / top:0}\n")
                )
        );
        ReadingFigures figures = ReadingFigures.Of(Files.ReadText.Spectrum("nm;counts\n" + text))!;
        Warning warning = figures.Warnings.Single(w => w.Code == "saturated");
        double hidden = whole - figures.Colour.CctK!.Value;
        Assert.InRange(KelvinIn(warning) / hidden, 0.5, 1.6);
    }

    [Fact]
    public void A_top_rounded_to_two_digits_is_not_cut()
    {
        TabulatedSpectrum led = Wide("led_b1").Between(380, 780);
        double peak = led.Values.ToArray().Max();
        string text = string.Concat(
            led.WavelengthsNm.ToArray()
                .Zip(led.Values.ToArray(), (nm, v) => FormattableString.Invariant($"{nm};{v / peak:0.00}\n"))
        );
        SpectralReading reading = Files.ReadText.Spectrum(text);
        Assert.NotEmpty(reading.FlatTops);
        Assert.DoesNotContain("saturated", Codes(reading));
    }

    private static List<string> Codes(SpectralReading reading) =>
        [.. ReadingFigures.Of(reading)!.Warnings.Select(w => w.Code).Where(c => c != "ra_not_meaningful")];

    // '… by about +22 K …'
    private static double KelvinIn(Warning warning)
    {
        string after = warning.Text[(warning.Text.IndexOf("by about ", StringComparison.Ordinal) + 9)..];
        return double.Parse(after.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
    }

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(Math.Tau * random.NextDouble());

    // Every nm from 340 nm on, dark below the table.
    private static TabulatedSpectrum Wide(string name)
    {
        TabulatedSpectrum table = StandardIlluminants.Named(name);
        double[] nm = [.. Enumerable.Range(340, 441).Select(n => (double)n)];
        return TabulatedSpectrum.From(nm, [.. nm.Select(n => n < 385 ? 0 : table.ValueAtNm(n))]);
    }

    private static TabulatedSpectrum At1Nm(TabulatedSpectrum table)
    {
        double[] nm = [.. Enumerable.Range(380, 401).Select(n => (double)n)];
        return TabulatedSpectrum.From(nm, [.. nm.Select(table.ValueAtNm)]);
    }
}
