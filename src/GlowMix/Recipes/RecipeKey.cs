using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Recipes;

/// <summary>One key a recipe may hold.</summary>
/// <param name="Path">Dotted; a star stands for any layer, step, target or choice: 'layers.*.depth_mm'.</param>
/// <param name="Kind">What its value is.</param>
/// <param name="Range">The numbers allowed, in the unit the key ends in; every number for other kinds.</param>
/// <param name="Words">The words allowed; empty for other kinds.</param>
/// <param name="IsChoosable">The search for a balance may turn it.</param>
public sealed record RecipeKey(
    string Path,
    RecipeKeyKind Kind,
    NumberRange Range,
    ImmutableArray<string> Words,
    bool IsChoosable
)
{
    /// <summary>The last word of the path, as it stands in the file.</summary>
    public string Name { get; } = Path[(Path.LastIndexOf('.') + 1)..];

    /// <summary>The path of the mapping the key stands in; empty at the top.</summary>
    public string Section { get; } = Path[..Math.Max(0, Path.LastIndexOf('.'))];

    /// <summary>The value is a number of some kind.</summary>
    public bool IsNumber =>
        Kind is RecipeKeyKind.Number or RecipeKeyKind.WholeNumber or RecipeKeyKind.Minutes;
}
