namespace GlowMix.Afterglow;

/// <summary>One line of a sheet: the luminance some minutes after the light went off.</summary>
/// <param name="Minutes">Time since lights out, min, above 0.</param>
/// <param name="LuminanceMcdM2">Luminance, mcd/m², above 0.</param>
public readonly record struct SheetPoint(double Minutes, double LuminanceMcdM2);
