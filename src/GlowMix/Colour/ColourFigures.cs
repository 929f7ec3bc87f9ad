using GlowMix.Spectra;

namespace GlowMix.Colour;

/// <summary>All figures of the colour of a light. A figure that does not exist is null.</summary>
public sealed record ColourFigures
{
    private ColourFigures(ReadOnlySpan<double> wattsPerNm, ObserverWeights weights)
    {
        Point = ColourPoint.Of(wattsPerNm, weights);
        Rendering = CctK is { } cctK ? ColourRendering.Of(wattsPerNm, weights, cctK) : null;
        ScotopicLuminousFluxLm = weights.ScotopicLm(wattsPerNm);
        double radiantW = weights.RadiantW(wattsPerNm);
        LuminousEfficacyLmPerW = LuminousFluxLm > 0 && radiantW > 0 ? LuminousFluxLm / radiantW : null;
        ScotopicPhotopicRatio = LuminousFluxLm > 0 ? ScotopicLuminousFluxLm / LuminousFluxLm : null;
    }

    /// <summary>Where the light lies, in one value.</summary>
    public ColourPoint Point { get; }

    /// <summary>X, Y, Z; Y is the luminous flux.</summary>
    public Tristimulus Tristimulus => Point.Tristimulus;

    /// <summary>Null without light.</summary>
    public Chromaticity? Chromaticity => Point.Chromaticity;

    /// <summary>CIE 1931 x.</summary>
    public double? ChromaticityX => Chromaticity?.X;

    /// <summary>CIE 1931 y.</summary>
    public double? ChromaticityY => Chromaticity?.Y;

    /// <summary>CIE 1976 u′.</summary>
    public double? UPrime => Chromaticity?.UPrime;

    /// <summary>CIE 1976 v′.</summary>
    public double? VPrime => Chromaticity?.VPrime;

    /// <summary>Correlated colour temperature, K; null too far from the Planckian locus.</summary>
    public double? CctK => Point.CctK;

    /// <summary>Distance to the locus in CIE 1960 u, v, + is greenish; null together with the CCT.</summary>
    public double? Duv => Point.Duv;

    /// <summary>R1 to R14 and the distance to the reference; null together with the CCT.</summary>
    public ColourRendering? Rendering { get; }

    /// <summary>General colour rendering index; null together with the CCT.</summary>
    public double? Ra => Rendering?.Ra;

    /// <summary>Special index of the saturated red; null together with the CCT.</summary>
    public double? R9 => Rendering?.R(9);

    /// <summary>The light is near enough to its reference for Ra to be told without a warning.</summary>
    public bool RaMeaningful => Rendering is { IsMeaningful: true };

    /// <summary>Photopic luminous flux, lm, for a spectrum in W/nm.</summary>
    public double LuminousFluxLm => Tristimulus.Y;

    /// <summary>Scotopic luminous flux, scotopic lm, for a spectrum in W/nm.</summary>
    public double ScotopicLuminousFluxLm { get; }

    /// <summary>
    /// Luminous efficacy of the radiation inside the grid, lm per W of light; null without light. Light beyond the grid
    /// would lower it: daylight D65 has 193 lm/W over 340 to 780 nm, 203 over 380 to 780.
    /// </summary>
    public double? LuminousEfficacyLmPerW { get; }

    /// <summary>S/P, scotopic over photopic flux; null without light.</summary>
    public double? ScotopicPhotopicRatio { get; }

    /// <summary>Of a spectrum on the model's grid.</summary>
    /// <param name="wattsPerNm">W/nm.</param>
    public static ColourFigures Of(Spectrum wattsPerNm)
    {
        ArgumentNullException.ThrowIfNull(wattsPerNm);
        return new(wattsPerNm.Samples, ObserverWeights.ModelGrid);
    }

    /// <summary>Of a spectrum on its own grid, such as a reading.</summary>
    /// <param name="wattsPerNm">W/nm.</param>
    public static ColourFigures Of(TabulatedSpectrum wattsPerNm)
    {
        ArgumentNullException.ThrowIfNull(wattsPerNm);
        return new(wattsPerNm.Values, ObserverWeights.For(wattsPerNm));
    }

    /// <summary>Of a spectrum on its own grid whose weights are kept.</summary>
    /// <param name="wattsPerNm">W/nm, one a wavelength of the grid.</param>
    /// <param name="weights">Weights of that grid.</param>
    public static ColourFigures Of(ReadOnlySpan<double> wattsPerNm, ObserverWeights weights) =>
        new(wattsPerNm, weights);
}
