using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>A state kept to come back to.</summary>
/// <param name="Name">A letter, in the order of pinning.</param>
/// <param name="Document">The recipe.</param>
internal sealed record Pin(char Name, RecipeDocument Document);
