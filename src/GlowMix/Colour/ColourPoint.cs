using GlowMix.Spectra;

namespace GlowMix.Colour;

/// <summary>The cheap half of the colour figures: where a light lies, without colour rendering.</summary>
/// <param name="Tristimulus">X, Y, Z; Y is the luminous flux in lm for a spectrum in W/nm.</param>
/// <param name="Chromaticity">Null without light.</param>
/// <param name="CctK">Correlated colour temperature, K; null without light or too far from the Planckian locus.</param>
/// <param name="Duv">Distance to the locus in CIE 1960 u, v, + is greenish; null together with the CCT.</param>
public readonly record struct ColourPoint(
    Tristimulus Tristimulus,
    Chromaticity? Chromaticity,
    double? CctK,
    double? Duv
)
{
    /// <summary>Of a spectrum on the model's grid.</summary>
    /// <param name="wattsPerNm">W/nm, or any other unit per nm.</param>
    public static ColourPoint Of(Spectrum wattsPerNm)
    {
        ArgumentNullException.ThrowIfNull(wattsPerNm);
        return Of(wattsPerNm.Samples, ObserverWeights.ModelGrid);
    }

    /// <summary>Of a spectrum on its own grid.</summary>
    /// <param name="samples">W/nm, one a wavelength of the grid.</param>
    /// <param name="weights">Weights of that grid.</param>
    public static ColourPoint Of(ReadOnlySpan<double> samples, ObserverWeights weights)
    {
        Tristimulus tristimulus = weights.TristimulusOf(samples);
        Chromaticity? chromaticity = tristimulus.Chromaticity;
        CorrelatedColourTemperature? white = chromaticity is { } point
            ? CorrelatedColourTemperature.Of(point)
            : null;
        return new(tristimulus, chromaticity, white?.CctK, white?.Duv);
    }
}
