using System.Globalization;
using GlowMix.Predictions.Kept;

namespace GlowMix.Console.Commands;

/// <summary>The words about a figures file.</summary>
internal static class FiguresTexts
{
    /// <summary>Whatever it is, it was not made by the program, or not by it alone.</summary>
    public const string NotOurs =
        "kept as it is: it holds lines that no figures file has; rename or delete it, then run this again";

    /// <summary>Nothing is wrong.</summary>
    public const string Fresh = "these are the figures";

    /// <summary>What to do.</summary>
    public static string Again(string recipe) => $"run 'glowmix predict {recipe} --write' again";

    /// <summary>The recipe that the figures were made from is not there.</summary>
    public static string NoRecipe(string recipe) => $"the recipe it was made from, {recipe}, is not there";

    /// <summary>It was renamed, or copied.</summary>
    public static string OtherName(string recipe, string name) =>
        $"it was made from {recipe}, whose figures are kept in {name}";

    /// <summary>Inputs are not what they were.</summary>
    public static string Stale(IReadOnlyList<string> changed, string recipe) =>
        $"stale: {string.Join(", ", changed)} changed since; {Again(recipe)}";

    /// <summary>The inputs are the same, the figures are not.</summary>
    public static string MovedByProgram(KeptComparison comparison, int most, string recipe)
    {
        var moved = comparison.Moved.Take(most).Select(Words).ToList();
        if (comparison.Moved.Length > most)
        {
            moved.Add(FormattableString.Invariant($"and {comparison.Moved.Length - most} more"));
        }
        if (moved.Count == 0)
        {
            moved.Add("targets or warnings");
        }
        return $"stale: moved by the program, not by the recipe: {string.Join(", ", moved)}; {Again(recipe)}";
    }

    private static string Words(MovedFigure moved) => $"{moved.Name} {Words(moved.Was)} → {Words(moved.Now)}";

    private static string Words(decimal? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "none";
}
