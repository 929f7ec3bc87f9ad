namespace GlowMix.Recipes;

/// <summary>A LED of the shelf.</summary>
/// <param name="MaterialName">The material's name or the path of its file.</param>
public sealed record LedByName(string MaterialName) : LedSource;
