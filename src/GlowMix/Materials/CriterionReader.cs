using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Materials;

/// <summary>Reads a file of data/criteria. 'unknown' is said where a value is not known, 'none' where there is no limit.</summary>
internal static class CriterionReader
{
    private const string Unknown = "unknown";
    private const string None = "none";

    public static Criterion? Read(MaterialReader reader, MaterialHead head)
    {
        var keys = reader.Keys;
        var document = reader.Word("document");
        string? clause = keys.Text("clause");
        var charge = reader.Group("charge") is { } group ? Charge(group) : null;
        if (!keys.Has("limits"))
        {
            reader.Problems.Error(null, MaterialProblemTexts.NoLimits);
        }
        var limits = reader.Entry<CriterionLimits>(
            "limits",
            null,
            isOptional: true,
            entry => Limits(reader, entry)
        );
        var asks = keys.OptionalList("asks_also");
        return document is null || clause is null || charge is null || limits is null
            ? null
            : new()
            {
                Name = head.Name,
                Title = head.Title,
                Cautions = head.Cautions,
                Origin = head.Origin,
                Document = document,
                Clause = clause == Unknown ? null : clause,
                Charge = charge,
                Limits = limits,
                AsksAlso = asks is null ? [] : Texts(asks),
            };
    }

    private static ImmutableArray<string> Texts(ListReader list)
    {
        var texts = ImmutableArray.CreateBuilder<string>();
        for (int i = 0; i < list.Count; i++)
        {
            if (list.Text(i) is { } text)
            {
                texts.Add(text);
            }
        }
        return texts.ToImmutable();
    }

    private static CriterionCharge? Charge(MaterialReader group)
    {
        var lamp = group.Word("lamp");
        var lux = NumberOrUnknown(group, "illuminance_lx", NumberRange.Above(0, 200000));
        var minutes = NumberOrUnknown(group, "minutes", NumberRange.Above(0, 100000));
        group.Keys.Finish();
        return lamp is null || lux is null || minutes is null
            ? null
            : new()
            {
                Lamp = lamp.Select(name => name == Unknown ? null : name),
                IlluminanceLx = lux,
                Minutes = minutes,
            };
    }

    private static Sourced<double?>? NumberOrUnknown(MaterialReader group, string key, NumberRange allowed)
    {
        bool isUnknown =
            group.Keys.Node[key] is MappingNode entry && entry["value"] is ScalarNode { Value: Unknown };
        return isUnknown
            ? group.Word(key)?.Select(_ => (double?)null)
            : group.Number(key, allowed)?.Select(value => (double?)value);
    }

    private static Sourced<CriterionLimits>? Limits(MaterialReader reader, MappingReader entry)
    {
        const string Key = "limits";
        const string Points = "mcd_m2_at_minutes";
        if (!entry.Has("value") && !entry.Has(Points))
        {
            reader.Problems.Error(entry.Node.Place, MaterialProblemTexts.NoLimits);
            entry.Take("source");
            return null;
        }
        CriterionLimits? limits = null;
        string text = "table";
        if (entry.Has("value"))
        {
            text = entry.OneOf("value", Unknown, None) ?? "";
            limits = text.Length == 0 ? null : new([], IsKnown: text == None);
        }
        else if (
            MaterialReader.Points(
                entry,
                Points,
                $"{Key} {Points}",
                NumberRange.Above(0, 10000),
                NumberRange.Above(0, 1e6),
                least: 1
            ) is
            { } table
        )
        {
            limits = new(
                ImmutableArray.CreateRange(table.Points, p => new CriterionLimit(p.At, p.Value)),
                IsKnown: true
            );
        }
        var note = MaterialReader.Note(entry, Key);
        return limits is not null && note is { } source
            ? reader.Remember(Key, text, new Sourced<CriterionLimits>(limits, source))
            : null;
    }
}
