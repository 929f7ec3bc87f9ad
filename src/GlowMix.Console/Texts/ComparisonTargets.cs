using GlowMix.Choosing.Compare;
using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>What becomes of the targets, as a page tells it.</summary>
internal static class ComparisonTargets
{
    /// <summary>Blocks of a page; none without targets.</summary>
    public static IEnumerable<PageBlock> Of(Comparison comparison)
    {
        if (comparison.Targets.IsEmpty)
        {
            yield break;
        }
        yield return new PageBlock.Heading("Targets");
        yield return new PageBlock.Paragraph(Verdict(comparison.Targets));
        yield return new PageBlock.Points([
            .. comparison.Targets.Select(t =>
                TargetRows.Of(t.After)
                + (t.Before.State == t.After.State ? "" : $" (before: {InWords(t.Before)})")
            ),
        ]);
    }

    private static string Verdict(IReadOnlyList<TargetChange> targets)
    {
        string[] broken = [.. targets.Where(t => t.Breaks).Select(t => NameOf(t.After))];
        string[] mended = [.. targets.Where(t => t.Mends).Select(t => NameOf(t.After))];
        string[] missed =
        [
            .. targets
                .Where(t => t.After.State == TargetState.Missed && !t.Breaks)
                .Select(t => NameOf(t.After)),
        ];
        string[] unsure =
        [
            .. targets
                .Where(t => t.Before.State == TargetState.Met && t.After.State == TargetState.TooClose)
                .Select(t => NameOf(t.After)),
        ];
        var parts = new List<string>();
        AddPart("breaks", broken);
        AddPart("no longer sure", unsure);
        AddPart("still missed", missed);
        AddPart("no longer missed", mended);
        if (parts.Count > 0)
        {
            string text = string.Join("; ", parts);
            return $"{char.ToUpperInvariant(text[0])}{text[1..]}.";
        }
        return targets.All(t => t.After.State == TargetState.Met)
            ? targets.All(t => t.Before.State == TargetState.Met)
                ? "All still met."
                : "All met."
            : "None breaks.";

        void AddPart(string word, string[] names)
        {
            if (names.Length > 0)
            {
                parts.Add($"{word}: {string.Join(", ", names)}");
            }
        }
    }

    /// <summary>The figure of a target.</summary>
    public static string NameOf(TargetVerdict verdict) =>
        verdict.Target.AtMinutes is { } minutes
            ? $"{verdict.Figure.Family} at {Digits.Plain(minutes)} min"
            : verdict.Figure.Name;

    private static string InWords(TargetVerdict verdict) =>
        TargetRows.WordOf(verdict.State).Replace('_', ' ');
}
