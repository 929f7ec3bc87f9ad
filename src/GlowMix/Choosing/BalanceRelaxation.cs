using System.Collections.Immutable;
using GlowMix.Recipes;

namespace GlowMix.Choosing;

/// <summary>A target that, given up as far as this, makes all others possible.</summary>
/// <param name="Target">The target.</param>
/// <param name="To">The value that its figure can reach with all other targets met, in the figure's unit.</param>
/// <param name="Choices">Where it is reached.</param>
public sealed record BalanceRelaxation(
    RecipeTarget Target,
    double To,
    ImmutableArray<KeyValuePair<string, string>> Choices
);
