using GlowMix.Recipes;

namespace GlowMix.Choosing;

/// <summary>What keeps a recommended design from being whiter or brighter still: a target, or the end of a range.</summary>
/// <param name="Target">The target; null for the end of a range.</param>
/// <param name="KeyPath">The key whose range ends; null for a target.</param>
/// <param name="EndsAt">Where it ends, in the key's unit; null for a target.</param>
public sealed record BalanceLimit(RecipeTarget? Target, string? KeyPath, double? EndsAt);
