using System.Collections.Immutable;

namespace GlowMix.Materials;

/// <summary>What all materials have in common. Immutable; a changed copy keeps its name and origin.</summary>
public abstract record Material
{
    /// <summary>The name it was asked by: the file's name without folder and ending, or a path.</summary>
    public required string Name { get; init; }

    /// <summary>One line for people.</summary>
    public required string Title { get; init; }

    /// <summary>What can hurt, one sentence or two an item.</summary>
    public ImmutableArray<string> Cautions { get; init; } = [];

    /// <summary>Every sourced entry in the order of the file; what a 'like' material lends stands in its place.</summary>
    public ImmutableArray<MaterialFact> Facts { get; init; } = [];

    /// <summary>The file it was read from; null for one that was worked out from a reading or a label.</summary>
    public MaterialOrigin? Origin { get; init; }
}
