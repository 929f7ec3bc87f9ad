using GlowMix.Documents;
using GlowMix.Materials;

namespace GlowMix.Console.Starts;

/// <summary>Fields that several kinds of new material share.</summary>
internal static class LabelFields
{
    /// <summary>What the material is called in lists.</summary>
    public static StartField Title { get; } =
        new("title", "TEXT", "one line for lists") { Question = "What is it called in lists" };

    /// <summary>Where a number on a label or sheet comes from.</summary>
    public const string Label = "label";

    /// <summary>The shipped material to lean on.</summary>
    public static StartField Like(MaterialKind kind) =>
        new("like", "NAME", "the shipped material to lean on, instead of the nearest")
        {
            Words = Shelf.ShippedNames(kind),
        };

    /// <summary>Two numbers with a sign between.</summary>
    /// <returns>Null if it is not that.</returns>
    public static (double First, double Second)? Pair(string text, char between) =>
        text.Split(between) is [var first, var second]
        && NumberText.TryRead(first.Trim(), out double a)
        && NumberText.TryRead(second.Trim(), out double b)
            ? (a, b)
            : null;

    /// <summary>The head of a material's file.</summary>
    public static StartText Head(MaterialKind kind, StartAnswers answers, string usualTitle)
    {
        var text = new StartText();
        text.Line("material_format: 1")
            .Line($"kind: {kind.Word()}")
            .Line($"title: {ScalarText.Of(answers.Text("title") ?? usualTitle)}");
        return text;
    }

    /// <summary>The cautions of the nearest material, which hold for this one until its own sheet says more.</summary>
    public static void WriteCautions(StartText text, Material nearest)
    {
        if (nearest.Cautions.IsEmpty)
        {
            return;
        }
        text.Line("cautions:", $"of {nearest.Name}; the maker's safety sheet comes first");
        foreach (string caution in nearest.Cautions)
        {
            bool isPlain = !caution.Contains(": ", StringComparison.Ordinal);
            text.Line($"  - {(isPlain ? caution : ScalarText.Of(caution))}");
        }
    }

    /// <summary>Says what was not told, and what was taken instead.</summary>
    public static void WriteLeaning(StartText text, Material nearest) =>
        text.Comment(
            $"What the label does not say is as in {nearest.Name}, the nearest of the shelf: marked assumed, its doubt",
            "half as wide again. Put your own numbers in its place, with their source."
        );
}
