namespace GlowMix.Recipes;

/// <summary>A key that a recipe holds.</summary>
/// <param name="Path">Its full path, layers by name: 'layers.glow.depth_mm'.</param>
/// <param name="Key">What is known of it.</param>
/// <param name="Value">As written; the items of a list with commas between.</param>
public sealed record WrittenKey(string Path, RecipeKey Key, string Value);
