namespace GlowMix.Documents.Shapes;

/// <summary>A list of alike items.</summary>
/// <param name="Item">What each is.</param>
/// <param name="Least">The fewest items allowed.</param>
/// <param name="Most">The most items allowed; null for any number.</param>
public sealed record ListShape(Shape Item, int Least = 1, int? Most = null) : Shape;
