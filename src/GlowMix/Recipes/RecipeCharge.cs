using System.Collections.Immutable;

namespace GlowMix.Recipes;

/// <summary>The light before the dark.</summary>
public sealed record RecipeCharge
{
    /// <summary>How full the traps are before the first step.</summary>
    public ChargeStart? Start { get; init; }

    /// <summary>The steps in order; empty if the recipe is silent.</summary>
    public ImmutableArray<RecipeChargeStep> Steps { get; init; } = [];
}
