using GlowMix.Colour;
using GlowMix.Materials;
using GlowMix.Optics;
using GlowMix.Spectra;

namespace GlowMix.Tests.Materials;

public class LedFromSpectrumTests
{
    private static readonly Shelf Shelf = new();
    private static readonly PackageRatings Ratings = new() { FluxLm = 20, AtMa = 60 };

    [Theory]
    [InlineData("led_b1")]
    [InlineData("led_b2")]
    [InlineData("led_b3")]
    [InlineData("led_b4")]
    [InlineData("led_b5")]
    [InlineData("led_bh1")]
    [InlineData("led_v1")]
    [InlineData("led_v2")]
    public void Bands_of_a_CIE_LED_add_up_to_its_spectrum_exactly(string illuminant)
    {
        var reading = ResampledSpectrum.From(StandardIlluminants.Named(illuminant)).Spectrum;
        var led = Of(reading);
        double total = reading.IntegralOverNm();
        var whole = led.BareShapePerNm;
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            Assert.Equal(reading[i] / total, whole[i], tolerance: 1e-15);
        }
        Assert.Equal(1, led.Bands.Sum(band => band.Share.Value), tolerance: 1e-12);
        Assert.All(led.Bands, band => Assert.InRange(band.Share.Value, 0, 1));
        AssertFirstPassKeepsLight(led);
    }

    [Theory]
    [InlineData("led_b3")]
    [InlineData("led_b5")]
    public void Below_the_peak_of_the_die_all_light_is_the_dies(string illuminant)
    {
        var led = Of(ResampledSpectrum.From(StandardIlluminants.Named(illuminant)).Spectrum);
        Assert.InRange(led.Die.PeakNm, 445, 455);
        for (int i = 0; WavelengthGrid.NmAt(i) <= 445; i++)
        {
            Assert.Equal(0, led.Green.ShapePerNm[i]);
            Assert.Equal(0, led.Red.ShapePerNm[i]);
        }
    }

    [Theory]
    [InlineData("warm-white-3000")]
    [InlineData("cool-white-6500")]
    public void A_shipped_LED_read_by_a_perfect_spectrometer_comes_back(string name)
    {
        var shipped = Shelf.Led(name).Material!;
        var led = Of(shipped.BareShapePerNm);
        Assert.Equal(shipped.Die.PeakNm, led.Die.PeakNm, tolerance: 0.5);
        // The phosphor's short tail below the die's peak is given to the die.
        Assert.All(
            shipped.Bands.Zip(led.Bands),
            pair => Assert.Equal(pair.First.Share.Value, pair.Second.Share.Value, tolerance: 0.01)
        );
        Assert.Equal($"assumed; as the nearest shipped LED, {name}", led.ReturnMatrix.Source);
        Assert.Equal(shipped.ReturnMatrix.Value.ToArray(), led.ReturnMatrix.Value.ToArray());
        Assert.Equal(60, led.MaxMa.Value);
        Assert.Equal(SourceMark.Assumed, led.MaxMa.Mark);
        Assert.NotNull(led.StandInNote);
    }

    [Fact]
    public void A_spectrum_in_any_unit_gives_the_same_LED()
    {
        var reading = ResampledSpectrum.From(StandardIlluminants.Named("led_b4")).Spectrum;
        var one = Of(reading);
        var other = Of(1e-9 * reading);
        Assert.All(
            one.Bands.Zip(other.Bands),
            pair => Assert.Equal(pair.First.Share.Value, pair.Second.Share.Value, tolerance: 1e-9)
        );
    }

    [Fact]
    public void What_is_no_white_LED_is_refused()
    {
        Assert.Equal(MaterialProblemTexts.SpectrumBelowZero, Refusal(Spectrum.Zero));
        Assert.Equal(
            MaterialProblemTexts.SpectrumBelowZero,
            Refusal(Spectrum.FromNm(nm => nm == 600 ? -1 : 1))
        );
        Assert.Equal(MaterialProblemTexts.NotWhite, Refusal(GaussianBand.PerNm(530, 30)));
        Assert.Equal(
            MaterialProblemTexts.NoDie(400, 480),
            Refusal(ResampledSpectrum.From(StandardIlluminants.Named("a")).Spectrum)
        );
    }

    private static void AssertFirstPassKeepsLight(Led led)
    {
        double returned = Fresnel.DiffuseFromInside(1.57);
        for (int i = 0; i < 3; i++)
        {
            double source = led.Bands[i].Share.Value;
            for (int j = 0; j < 3; j++)
            {
                source -= led.ReturnMatrix.Value[i, j] * returned * led.Bands[j].Share.Value;
            }
            Assert.True(source >= 0, $"band {i}");
        }
    }

    private static Led Of(Spectrum reading)
    {
        var worked = LedFromSpectrum.Of(reading, Ratings, Shelf.ShippedLeds(), "reel.csv");
        Assert.Null(worked.Problem);
        return worked.Led!;
    }

    private static string? Refusal(Spectrum reading) =>
        LedFromSpectrum.Of(reading, Ratings, Shelf.ShippedLeds(), "reel.csv").Problem;
}
