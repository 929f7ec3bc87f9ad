namespace GlowMix.Documents.Shapes;

/// <summary>Numbers at numbers: '450: 6.3', ascending.</summary>
/// <param name="Value">What stands behind the colon.</param>
public sealed record TableShape(NumberShape Value) : Shape;
