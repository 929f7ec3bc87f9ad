using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>One state of the recipe on the way from the start.</summary>
/// <param name="Document">The recipe.</param>
/// <param name="KeyPath">What was turned to come here; empty at the start.</param>
/// <param name="What">The turn in words: 'glow loading 20 → 22 %'.</param>
/// <param name="From">The value the turn began at.</param>
internal sealed record Revision(RecipeDocument Document, string KeyPath, string What, string From);
