namespace GlowMix.Materials;

/// <summary>One point of a table; what both numbers are is in the name of the table's holder.</summary>
public readonly record struct CurvePoint(double At, double Value);
