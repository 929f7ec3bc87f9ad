using System.Collections.Immutable;

namespace GlowMix.Recipes;

/// <summary>One key that may be turned: within a range, or among some values.</summary>
public sealed record RecipeChoice
{
    /// <summary>The full key path, layers by name.</summary>
    public required string KeyPath { get; init; }

    /// <summary>Lower end, in the key's unit; null for a choice among values.</summary>
    public double? From { get; init; }

    /// <summary>Upper end, in the key's unit; null for a choice among values.</summary>
    public double? To { get; init; }

    /// <summary>The values as the recipe writes them; empty for a range.</summary>
    public ImmutableArray<string> AnyOf { get; init; } = [];
}
