using GlowMix.Colour;
using GlowMix.Materials;
using GlowMix.Spectra;

namespace GlowMix.Readings.Fit;

/// <summary>The bare reading as the spectrum of an LED.</summary>
internal static class BareLed
{
    // In u′, v′: about twice the reach of a nominal quadrangle of ANSI C78.377 around its middle. Assumed.
    private const double MostOff = 0.02;

    public static SourceNote Note { get; } = new(SourceMark.Users, "own reading");

    /// <summary>On the model's grid. Noise around nothing is nothing.</summary>
    public static Spectrum SpectrumOf(TabulatedSpectrum bare)
    {
        var spectrum = ResampledSpectrum.From(bare).Spectrum;
        return Spectrum.FromIndex(i => Math.Max(0, spectrum[i]));
    }

    /// <summary>Whether its white lies so far from that of the LED's file that it may be another LED.</summary>
    public static bool IsOfAnother(TabulatedSpectrum bare, Led led) =>
        ColourFigures.Of(SpectrumOf(bare)).Chromaticity is { } read
        && ColourFigures.Of(led.BareShapePerNm).Chromaticity is { } told
        && ColourDifference.UPrimeVPrime(read, told) > MostOff;

    /// <summary>Standard errors of the shares of die, green and red that the reading's noise makes.</summary>
    /// <remarks>The split is followed sample by sample: its slopes, times the noise there, add up in squares.</remarks>
    public static double[] ShareErrors(TabulatedSpectrum bare, Led like)
    {
        var spectrum = SpectrumOf(bare);
        var noise = ReadingNoise.Of(bare);
        double[] Shares(Spectrum s) =>
            LedFromSpectrum.BandsOf(s, like, Note).Bands is { } bands
                ? [.. bands.Select(b => b.Share.Value)]
                : [];

        double[] own = Shares(spectrum);
        var squares = new double[own.Length];
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            int moved = i;
            double deviation = spectrum[i] > 0 ? spectrum[i] * noise.RelativeAt(i, spectrum[i]) : 0;
            if (deviation <= 0)
            {
                continue;
            }
            double[] other = Shares(Spectrum.FromIndex(k => spectrum[k] + (k == moved ? deviation / 10 : 0)));
            for (int band = 0; band < Math.Min(own.Length, other.Length); band++)
            {
                double off = 10 * (other[band] - own[band]);
                squares[band] += off * off;
            }
        }
        return [.. squares.Select(Math.Sqrt)];
    }
}
