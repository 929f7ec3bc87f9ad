using System.Collections.Immutable;

namespace GlowMix.Materials;

/// <summary>The first lines of a material's file.</summary>
internal sealed record MaterialHead(
    string Name,
    string Title,
    ImmutableArray<string> Cautions,
    MaterialOrigin Origin
);
