using GlowMix.Spectra;

namespace GlowMix.Colour;

/// <summary>Lumens of a spectrum on the model's grid.</summary>
public static class Photometry
{
    /// <summary>K_m V(λ), lm/W: times W/nm and summed over nm it gives photopic lumens.</summary>
    public static Spectrum LmPerW { get; } =
        Spectrum.FromNm(nm => LuminousEfficacy.PhotopicPeakLmPerW * StandardObserver.YBar.ValueAtNm(nm));

    /// <summary>K′_m V′(λ), scotopic lm/W.</summary>
    public static Spectrum ScotopicLmPerW { get; } =
        Spectrum.FromNm(nm => LuminousEfficacy.ScotopicPeakLmPerW * StandardObserver.VPrime.ValueAtNm(nm));

    /// <summary>Photopic luminous flux, lm.</summary>
    /// <param name="wattsPerNm">W/nm; per m² it gives lm/m², and so on.</param>
    public static double PhotopicLm(Spectrum wattsPerNm) =>
        ObserverWeights.ModelGrid.PhotopicLm(wattsPerNm.Samples);

    /// <summary>Scotopic luminous flux, scotopic lm.</summary>
    /// <param name="wattsPerNm">W/nm; per m² it gives scotopic lm/m², and so on.</param>
    public static double ScotopicLm(Spectrum wattsPerNm) =>
        ObserverWeights.ModelGrid.ScotopicLm(wattsPerNm.Samples);
}
