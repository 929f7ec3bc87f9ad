using GlowMix.Spectra;

namespace GlowMix.Predictions;

/// <summary>Spectral power of all LEDs together, W/nm; of one LED where the recipe gives no count.</summary>
/// <param name="BareWPerNm">The bare board in air.</param>
/// <param name="LitWPerNm">Out of the cured piece, pigment's light included.</param>
/// <param name="PigmentWPerNm">The pigment's part of it.</param>
/// <param name="GlowShape">Spectrum of the unlit glow at 10 minutes, peak 1; null without pigment.</param>
public sealed record LitSpectra(
    Spectrum BareWPerNm,
    Spectrum LitWPerNm,
    Spectrum PigmentWPerNm,
    Spectrum? GlowShape
);
