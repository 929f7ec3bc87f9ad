namespace GlowMix.Materials;

/// <summary>One point of a decay sheet.</summary>
/// <param name="Minutes">After the light goes off, min.</param>
/// <param name="LuminanceMcdM2">mcd/m².</param>
public readonly record struct SheetPoint(double Minutes, double LuminanceMcdM2);
