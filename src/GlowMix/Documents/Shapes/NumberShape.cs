using System.Collections.Immutable;

namespace GlowMix.Documents.Shapes;

/// <summary>A number.</summary>
/// <param name="Range">The numbers allowed.</param>
/// <param name="IsWhole">Whole numbers only.</param>
public sealed record NumberShape(NumberRange Range, bool IsWhole = false) : Shape
{
    /// <summary>The only numbers allowed; empty where the range says all.</summary>
    public ImmutableArray<double> Only { get; init; } = [];
}
