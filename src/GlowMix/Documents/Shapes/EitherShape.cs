using System.Collections.Immutable;

namespace GlowMix.Documents.Shapes;

/// <summary>One of several shapes.</summary>
/// <param name="Shapes">Two or more.</param>
public sealed record EitherShape(ImmutableArray<Shape> Shapes) : Shape;
