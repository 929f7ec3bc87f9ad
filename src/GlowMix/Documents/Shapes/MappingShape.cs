using System.Collections.Immutable;

namespace GlowMix.Documents.Shapes;

/// <summary>Keys with values.</summary>
/// <param name="Keys">In canonical order.</param>
public sealed record MappingShape(ImmutableArray<KeyShape> Keys) : Shape
{
    /// <summary>Sets of keys of which at least one must be there.</summary>
    public ImmutableArray<ImmutableArray<string>> OneNeededOf { get; init; } = [];

    /// <summary>Pairs of keys that exclude each other.</summary>
    public ImmutableArray<(string Key, string Other)> Exclusive { get; init; } = [];

    /// <summary>A key that makes all needed ones optional where it stands, because it lends them; null without.</summary>
    public string? Lender { get; init; }

    /// <summary>Keys of no fixed name whose values have a shape; null where every key is named.</summary>
    public Shape? OtherKeys { get; init; }

    /// <summary>The key of a name, or null.</summary>
    public KeyShape? Find(string name)
    {
        foreach (var key in Keys)
        {
            if (key.Name == name)
            {
                return key;
            }
        }
        return null;
    }
}
