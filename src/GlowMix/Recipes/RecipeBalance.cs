using System.Collections.Immutable;

namespace GlowMix.Recipes;

/// <summary>What the search for a balance of white and glow may turn, and what it goes by.</summary>
public sealed record RecipeBalance
{
    /// <summary>Colour temperature of the Planckian white aimed at, K; null for the bare board's own.</summary>
    public double? WhiteCctK { get; init; }

    /// <summary>When the glow is judged: one of <see cref="DecayMinutes"/>.</summary>
    public double? GlowAtMinutes { get; init; }

    /// <summary>What may be turned; empty if the recipe is silent.</summary>
    public ImmutableArray<RecipeChoice> Choices { get; init; } = [];
}
