namespace GlowMix.Predictions;

/// <summary>The traps of one slice of a piece when the light goes off.</summary>
/// <param name="FilledPercent">Share filled.</param>
/// <param name="MostFilledPercent">What endless light of any strength would fill: it empties traps as well.</param>
internal sealed record TrapFilling(double FilledPercent, double MostFilledPercent);
