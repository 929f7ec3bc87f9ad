using System.Text.Json;
using GlowMix.Choosing.Compare;
using GlowMix.Console.Texts;
using GlowMix.Predictions;

namespace GlowMix.Console.Tables;

/// <summary>Comparisons for programs, unrounded.</summary>
internal static class ComparisonJson
{
    /// <summary>One object, or an array of them where there are several, with a line end.</summary>
    public static string Of(IReadOnlyList<Comparison> comparisons) =>
        comparisons.Count == 1
            ? JsonText.Of(json => Write(json, comparisons[0]))
            : JsonText.OfEach(comparisons, Write);

    /// <summary>A recipe that was not there before.</summary>
    public static string OfNew(string recipe, string since) =>
        JsonText.Of(json =>
        {
            json.WriteStartObject();
            json.WriteNull("before");
            json.WriteString("after", recipe);
            json.WriteString("new_since", since);
            json.WriteEndObject();
        });

    private static void Write(Utf8JsonWriter json, Comparison comparison)
    {
        json.WriteStartObject();
        json.WriteString("before", comparison.Before.Recipe);
        json.WriteString("after", comparison.After.Recipe);
        json.WriteNumber("draws", comparison.DrawCount);
        WriteDifferences(json, "yardstick", comparison.Differences.Where(d => d.IsYardstick));
        WriteTargets(json, comparison);
        WriteDifferences(json, "differences", comparison.Differences.Where(d => !d.IsYardstick));
        json.WriteStartObject("figures");
        foreach (var change in comparison.Figures)
        {
            json.WriteStartObject(change.Figure.Name);
            WriteBand(json, "before", change.Before);
            WriteBand(json, "after", change.After);
            WriteBand(json, "change", change.Change);
            if (change.Ratio is { } ratio)
            {
                WriteBand(json, "ratio", ratio);
            }
            json.WriteEndObject();
        }
        json.WriteEndObject();
        WriteCauses(json, comparison);
        json.WriteEndObject();
    }

    private static void WriteDifferences(
        Utf8JsonWriter json,
        string name,
        IEnumerable<RecipeDifference> differences
    )
    {
        json.WriteStartArray(name);
        foreach (var difference in differences)
        {
            json.WriteStartObject();
            json.WriteString("key", difference.KeyPath);
            json.WriteString("before", difference.Before);
            json.WriteString("after", difference.After);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void WriteTargets(Utf8JsonWriter json, Comparison comparison)
    {
        json.WriteStartArray("targets");
        foreach (var target in comparison.Targets)
        {
            json.WriteStartObject();
            json.WriteString("figure", target.After.Target.Figure);
            json.WriteNumberOrNull("at_minutes", target.After.Target.AtMinutes);
            json.WriteNumberOrNull("at_least", target.After.Target.AtLeast);
            json.WriteNumberOrNull("at_most", target.After.Target.AtMost);
            json.WriteNumberOrNull("before", target.Before.Value);
            json.WriteNumberOrNull("after", target.After.Value);
            json.WriteString("state_before", TargetRows.WordOf(target.Before.State));
            json.WriteString("state_after", TargetRows.WordOf(target.After.State));
            json.WriteBoolean("breaks", target.Breaks);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void WriteCauses(Utf8JsonWriter json, Comparison comparison)
    {
        json.WriteStartArray("causes");
        foreach (var cause in comparison.Causes)
        {
            json.WriteStartObject();
            json.WriteString("cause", cause.Key);
            for (int i = 0; i < Comparison.CauseFigures.Length; i++)
            {
                var figure = Comparison.CauseFigures[i];
                string by = Comparison.IsByRatio(figure) ? "ratio" : "change";
                json.WriteNumberOrNull($"{by}:{figure.Name}", cause.Changes[i]);
            }
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void WriteBand(Utf8JsonWriter json, string name, Band band)
    {
        json.WriteStartObject(name);
        json.WriteNumberOrNull("low", band.Low);
        json.WriteNumberOrNull("likely", band.Likely);
        json.WriteNumberOrNull("high", band.High);
        json.WriteEndObject();
    }
}
