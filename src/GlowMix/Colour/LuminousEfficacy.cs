namespace GlowMix.Colour;

/// <summary>Lumens a watt at the peak of each of the eye's curves.</summary>
public static class LuminousEfficacy
{
    /// <summary>K_m, lm/W, at the peak of V(λ).</summary>
    /// <remarks>
    /// The SI fixes 683 lm/W at 540 THz, which is 555.016 nm in standard air, where V is a little less than 1
    /// (ISO 23539: 683.002).
    /// </remarks>
    public const double PhotopicPeakLmPerW = 683.002;

    /// <summary>K′_m, lm/W, at the peak of V′(λ), 507 nm.</summary>
    /// <remarks>ISO 23539: 683 / V′(555.016 nm). CIE 191:2010 keeps 1699.</remarks>
    public const double ScotopicPeakLmPerW = 1700.06;
}
