namespace GlowMix.Predictions;

/// <summary>A thin slice of a pigmented layer in a cut through the pour.</summary>
/// <param name="FromMm">Lower edge, mm over the board.</param>
/// <param name="ToMm">Upper edge, mm over the board.</param>
/// <param name="BlueShare">
/// Blue light (400 to 500 nm) of the piece's own LEDs in it, of that in the slice with most, 0 to 1; null where it is not counted:
/// between the packages, and everywhere if they stay in air.
/// </param>
/// <param name="FilledPercent">Traps filled of all traps when the last light goes off, %.</param>
/// <param name="PigmentVolumePercent">Share of its volume that is pigment, %: more in the bed that settles, less above it.</param>
public readonly record struct CutSlice(
    double FromMm,
    double ToMm,
    double? BlueShare,
    double FilledPercent,
    double PigmentVolumePercent
);
