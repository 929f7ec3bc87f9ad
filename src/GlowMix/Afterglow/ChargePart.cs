namespace GlowMix.Afterglow;

/// <summary>Luminance that one rung at one depth still lacks, and the rate at which light makes up for it.</summary>
internal readonly record struct ChargePart(double MissingMcdM2, double TurnoverPerS);
