namespace GlowMix.Predictions;

/// <summary>A thin slice of a pigmented layer in a cut through the pour.</summary>
/// <param name="FromMm">Lower edge, mm over the board.</param>
/// <param name="ToMm">Upper edge, mm over the board.</param>
/// <param name="ChargingLight">
/// Photons of the piece's own LEDs, blue for the most part, that a mm³ of its pigment takes in, of those in the slice with most: 0
/// to 1; 0 everywhere if the packages stay in air.
/// </param>
/// <param name="FilledPercent">Traps filled of all traps when the last light goes off, %.</param>
/// <param name="PigmentVolumePercent">Share of its volume that is pigment, %: more in the bed that settles, less above it.</param>
public readonly record struct CutSlice(
    double FromMm,
    double ToMm,
    double ChargingLight,
    double FilledPercent,
    double PigmentVolumePercent
);
