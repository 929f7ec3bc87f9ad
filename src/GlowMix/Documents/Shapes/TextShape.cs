using System.Collections.Immutable;

namespace GlowMix.Documents.Shapes;

/// <summary>A word or a text on one line.</summary>
public sealed record TextShape : Shape
{
    /// <summary>The only words allowed; empty where any text is.</summary>
    public ImmutableArray<string> Only { get; init; } = [];

    /// <summary>Words that everybody has, such as the names of the shelf; others are allowed as well.</summary>
    public ImmutableArray<string> Known { get; init; } = [];
}
