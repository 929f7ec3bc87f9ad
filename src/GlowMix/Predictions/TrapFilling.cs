namespace GlowMix.Predictions;

/// <summary>The traps of one slice of a piece when the light goes off.</summary>
/// <param name="OverPackages">Whether the slice lies in the light of the piece's own LEDs.</param>
/// <param name="TrapsPerMm2">Traps in the slice.</param>
/// <param name="FilledPercent">Share filled.</param>
/// <param name="MostFilledPercent">What endless light of any strength would fill: it empties traps as well.</param>
internal readonly record struct TrapFilling(
    bool OverPackages,
    double TrapsPerMm2,
    double FilledPercent,
    double MostFilledPercent
);
