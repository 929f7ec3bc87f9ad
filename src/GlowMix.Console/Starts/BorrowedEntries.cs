using System.Globalization;
using GlowMix.Console.Texts;
using GlowMix.Documents;
using GlowMix.Documents.Shapes;
using GlowMix.Materials;
using GlowMix.Materials.Shapes;

namespace GlowMix.Console.Starts;

/// <summary>
/// Entries of the nearest shipped material, taken over for what a label does not say: every value marked assumed, every doubt
/// half as wide again, and a doubt added where the shipped file states none and the label could differ.
/// </summary>
internal sealed class BorrowedEntries
{
    private const double Wider = 1.5;
    private const double MostFactor = 1000;
    private const double MostPercent = 100;

    private static readonly string[] head = ["material_format", "kind", "title", "like", "cautions"];

    private readonly Material nearest;
    private readonly MappingNode root;
    private readonly MappingShape? shape;
    private readonly string[] lines;

    public BorrowedEntries(Material nearest)
    {
        this.nearest = nearest;
        string text = nearest.Origin!.Text;
        root = Document.Read(text, nearest.Name).Root!;
        lines = text.Split('\n');
        shape =
            root["kind"] is ScalarNode { Value: var word } && KindWords.Find(word) is { } kind
                ? MaterialShapes.Of(kind)
                : null;
    }

    /// <summary>How a borrowed value names its source.</summary>
    public string Source => $"assumed; as {nearest.Name}, the nearest of the shelf";

    /// <summary>Writes every entry in the order of the shipped file: the told ones where there are, else borrowed.</summary>
    /// <param name="text">Where to.</param>
    /// <param name="told">Writes the entry of a key and says so; else it is borrowed.</param>
    /// <param name="addedDoubts">Doubt lines by key, where the shipped file states none.</param>
    public void Write(
        StartText text,
        Func<string, bool> told,
        IReadOnlyDictionary<string, string>? addedDoubts = null
    )
    {
        foreach (var entry in root.Entries)
        {
            string key = entry.Key.Value;
            if (head.Contains(key) || told(key))
            {
                continue;
            }
            if (entry.Value is ScalarNode plain)
            {
                text.Line($"{key}: {ScalarText.Of(plain.Value)}", $"as {nearest.Name}");
                continue;
            }
            WriteComments(text, entry.Key.Place.Line);
            text.Line($"{key}:");
            WriteBelow(text, entry.Value, 2, RangeOf(key), addedDoubts?.GetValueOrDefault(key));
        }
    }

    // The shipped file's own words for what follows.
    private void WriteComments(StartText text, int line)
    {
        int first = line - 1;
        while (first > 0 && lines[first - 1].StartsWith('#'))
        {
            first--;
        }
        for (int i = first; i < line - 1; i++)
        {
            text.Line(lines[i].TrimEnd());
        }
    }

    private void WriteBelow(
        StartText text,
        DocumentNode node,
        int indent,
        NumberRange range,
        string? addedDoubt
    )
    {
        if (node is MappingNode mapping)
        {
            WriteMapping(text, mapping, new string(' ', indent), indent, range, addedDoubt);
        }
        else if (node is ListNode list)
        {
            foreach (var item in list.Items)
            {
                if (item is MappingNode row)
                {
                    WriteMapping(text, row, new string(' ', indent) + "- ", indent + 2, range, addedDoubt);
                }
            }
        }
    }

    private void WriteMapping(
        StartText text,
        MappingNode mapping,
        string lead,
        int indent,
        NumberRange range,
        string? addedDoubt
    )
    {
        bool isSourced = mapping.Find("source") is not null;
        bool hasDoubt = mapping.Entries.Any(e =>
            e.Key.Value is "factor" or "tolerance_percent" or "low" or "high"
        );
        foreach (var entry in mapping.Entries)
        {
            string key = entry.Key.Value;
            if (key == "source" && isSourced)
            {
                if (!hasDoubt && addedDoubt is not null)
                {
                    text.Line(lead + addedDoubt);
                }
                text.Source(Source, lead.Length);
            }
            else if (entry.Value is ScalarNode scalar)
            {
                text.Line($"{lead}{key}: {Widened(mapping, key, scalar.Value, range)}");
            }
            else
            {
                text.Line($"{lead}{key}:");
                WriteBelow(text, entry.Value, indent + 2, range, null);
            }
            lead = new string(' ', indent);
        }
    }

    // No doubt is so wide that it holds what cannot be: more photons out than in.
    private NumberRange RangeOf(string key) =>
        shape?.Find(key)?.Shape is MappingShape entry && entry.Find("value")?.Shape is NumberShape number
            ? number.Range
            : NumberRange.Any;

    /// <summary>A factor half as wide again in its logarithm.</summary>
    public static string WidenedFactor(double factor) =>
        Rounded(Math.Min(MostFactor, Math.Pow(factor, Wider)));

    private static string Widened(MappingNode entry, string key, string value, NumberRange range)
    {
        if (!NumberText.TryRead(value, out double number))
        {
            return ScalarText.Of(value);
        }
        double? around =
            entry["value"] is ScalarNode v && NumberText.TryRead(v.Value, out double a) ? a : null;
        return key switch
        {
            "factor" => WidenedFactor(number),
            "tolerance_percent" => Rounded(Math.Min(MostPercent, number * Wider)),
            "low" or "high" when around is { } middle => Rounded(
                Math.Clamp(middle + ((number - middle) * Wider), range.Least, range.Most)
            ),
            _ => value,
        };
    }

    private static string Rounded(double number) => number.ToString("0.####", CultureInfo.InvariantCulture);
}
