namespace GlowMix.Materials;

/// <summary>Least luminance a criterion asks for.</summary>
/// <param name="Minutes">After the light goes off, min.</param>
/// <param name="LeastMcdM2">mcd/m².</param>
public readonly record struct CriterionLimit(double Minutes, double LeastMcdM2);
