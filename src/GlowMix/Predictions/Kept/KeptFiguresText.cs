using System.Globalization;
using System.Text;
using GlowMix.Documents;

namespace GlowMix.Predictions.Kept;

/// <summary>The text of a figures file.</summary>
public static class KeptFiguresText
{
    internal const string FormatKey = "figures_format";
    internal const string ChecksumKey = "checksum";
    internal const string BoundingRuns = "bounding runs";
    private const string DrawsEnding = " draws";

    /// <summary>Behind a recipe's name without its ending.</summary>
    public const string Ending = ".figures.yaml";

    /// <summary>The path of the figures file beside a recipe.</summary>
    public static string PathBeside(string recipe) => Path.ChangeExtension(recipe, null) + Ending;

    /// <summary>Line feeds, no blanks at line ends, a last line that seals the others.</summary>
    public static string Of(KeptFigures kept)
    {
        ArgumentNullException.ThrowIfNull(kept);
        var text = new StringBuilder();
        Line(
            $"# Made by 'glowmix predict {kept.Recipe} --write', not by hand; after a merge conflict run it again."
        );
        Line($"{FormatKey}: {KeptFigures.Format}");
        Line($"recipe: {ScalarText.Of(kept.Recipe)}");
        Line($"model_version: {kept.ModelVersion}");
        Line($"bands_of: {(kept.DrawCount == 0 ? BoundingRuns : $"{kept.DrawCount}{DrawsEnding}")}");
        Line($"inputs:");
        foreach (var input in kept.Inputs)
        {
            Line($"  {ScalarText.Of(input.Name)}: {input.Hash}");
        }
        Numbers("figures", kept.Figures);
        Numbers("bands", kept.Bands);
        if (kept.Targets.Length > 0)
        {
            Line($"targets:");
        }
        foreach (var target in kept.Targets)
        {
            Line($"  - {target.Figure}: {target.State.Word()}");
        }
        if (kept.Warnings.Length > 0)
        {
            Line($"warnings:");
        }
        foreach (string code in kept.Warnings)
        {
            Line($"  - {code}");
        }
        Line($"{ChecksumKey}: {ChecksumOf(text.ToString())}");
        return text.ToString();

        void Numbers(string section, IReadOnlyCollection<KeptFigure> figures)
        {
            if (figures.Count > 0)
            {
                Line($"{section}:");
            }
            foreach (var (name, value) in figures)
            {
                Line($"  {name}: {value}");
            }
        }

        void Line(FormattableString line) =>
            text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
    }

    /// <summary>Of all lines of a text but that of the checksum; line ends and blanks at them do not count.</summary>
    public static string ChecksumOf(string text)
    {
        var hash = new InputHash();
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            var trimmed = line.TrimEnd();
            if (trimmed.Length > 0 && !trimmed.StartsWith(ChecksumKey + ":", StringComparison.Ordinal))
            {
                hash.Add(trimmed.ToString());
            }
        }
        return $"fnv-{hash}";
    }

    /// <summary>The number of draws that 'bands_of' tells; null where it tells nothing.</summary>
    internal static int? DrawCountOf(string text) =>
        text == BoundingRuns ? 0
        : text.EndsWith(DrawsEnding, StringComparison.Ordinal)
        && int.TryParse(
            text[..^DrawsEnding.Length],
            NumberStyles.None,
            CultureInfo.InvariantCulture,
            out int draws
        )
        && draws > 0
            ? draws
        : null;
}
