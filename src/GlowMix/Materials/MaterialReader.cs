using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Materials;

/// <summary>
/// Reads the sourced entries of a material's file: each is a mapping with a value (or a table) and its source, perhaps a
/// doubt. An entry that is not written is taken from the material this one is like, if there is one.
/// </summary>
internal sealed class MaterialReader(MappingReader keys, Material? like, List<MaterialFact> facts)
{
    public MaterialReader(MappingReader keys, Material? like = null)
        : this(keys, like, []) { }

    public MappingReader Keys { get; } = keys;

    public ProblemList Problems => Keys.Problems;

    public IReadOnlyList<MaterialFact> Facts => facts;

    /// <summary>The entries of a nested mapping; null and a problem if there is none.</summary>
    public MaterialReader? Group(string key) =>
        Keys.Mapping(key) is { } group ? new(group, like: null, facts) : null;

    /// <summary>A number with its source. Null and a problem if it is wrong, or missing with nothing to be like.</summary>
    public Sourced<double>? Number(string key, NumberRange allowed, Sourced<double>? other = null) =>
        Entry(key, other, isOptional: false, entry => ReadNumber(entry, key, allowed));

    /// <summary>A number that need not be there.</summary>
    public Sourced<double>? OptionalNumber(string key, NumberRange allowed, Sourced<double>? other = null) =>
        Entry(key, other, isOptional: true, entry => ReadNumber(entry, key, allowed));

    /// <summary>A word with its source.</summary>
    public Sourced<string>? Word(string key, Sourced<string>? other = null) =>
        Entry(
            key,
            other,
            isOptional: false,
            entry =>
                entry.Text("value") is { } word && Note(entry, key) is { } note
                    ? Remember(key, word, new Sourced<string>(word, note))
                    : null
        );

    /// <summary>A table below its axis, such as 'at_nm'; its doubt is a factor or a tolerance, the same at all points.</summary>
    public Sourced<PointTable>? Table(
        string key,
        string axis,
        NumberRange axisAllowed,
        NumberRange allowed,
        int least = 1,
        bool isOptional = false
    ) =>
        Entry(
            key,
            other: null,
            isOptional,
            entry =>
            {
                var table = Points(entry, axis, $"{key} {axis}", axisAllowed, allowed, least);
                var doubt = ReadDoubt(entry, key);
                var note = Note(entry, key);
                return table is not null && note is not null
                    ? Remember(key, "table", new Sourced<PointTable>(table, note.Value, doubt))
                    : null;
            }
        );

    /// <summary>Any mapping with a source. What is read of it is up to the caller, who returns null for a problem.</summary>
    public Sourced<T>? Entry<T>(
        string key,
        Sourced<T>? other,
        bool isOptional,
        Func<MappingReader, Sourced<T>?> read
    )
    {
        if (Keys.Take(key) is not { } node)
        {
            if (other is not null)
            {
                Borrow(key);
                return other;
            }
            if (!isOptional)
            {
                Keys.Problems.Error(
                    Keys.Where.Length == 0 ? null : Keys.Node.Place,
                    ProblemTexts.Missing(key, Keys.Where)
                );
            }
            return null;
        }
        if (node is ScalarNode { IsEmpty: false } bare)
        {
            Keys.Error(key, MaterialProblemTexts.ValueWithoutSource(key, bare.Value));
            return null;
        }
        if (Keys.Mapping(key) is not { } entry)
        {
            return null;
        }
        var value = read(entry);
        entry.Finish();
        return value;
    }

    /// <summary>The source of an entry.</summary>
    public static SourceNote? Note(MappingReader entry, string key)
    {
        if (!entry.Has("source"))
        {
            entry.Take("source");
            entry.Problems.Error(entry.Node.Place, MaterialProblemTexts.NoSource(key));
            return null;
        }
        if (entry.Text("source") is not { } text)
        {
            return null;
        }
        var note = SourceNote.Read(text);
        if (note is null)
        {
            entry.Error("source", MaterialProblemTexts.SourceNamesNothing(key, text));
        }
        return note;
    }

    /// <summary>Takes the facts of an entry over from the material this one is like.</summary>
    public void Borrow(string key) =>
        facts.AddRange(
            like?.Facts.Where(fact =>
                fact.Key == key || fact.Key.StartsWith(key + ".", StringComparison.Ordinal)
            )
                ?? []
        );

    /// <summary>Puts an entry among the facts.</summary>
    public Sourced<T> Remember<T>(string key, string text, Sourced<T> value)
    {
        facts.Add(new(Keys.Where.Length == 0 ? key : $"{Keys.Where}.{key}", text, value.Note, value.Doubt));
        return value;
    }

    private Sourced<double>? ReadNumber(MappingReader entry, string key, NumberRange allowed)
    {
        double? value = entry.Take("value") is { } node
            ? ValueReader.Number(node, key, allowed, Problems)
            : entry.Number("value", allowed);
        var doubt = ReadDoubt(entry, key, value, mayHaveEnds: true);
        var note = Note(entry, key);
        return value is { } number && note is not null
            ? Remember(key, NumberText.Write(number), new Sourced<double>(number, note.Value, doubt))
            : null;
    }

    /// <summary>The doubt of an entry; ends only where there is one value for them to lie around.</summary>
    public static Doubt ReadDoubt(
        MappingReader entry,
        string key,
        double? value = null,
        bool mayHaveEnds = false
    )
    {
        double? factor = entry.OptionalNumber("factor", NumberRange.Above(1, 1000));
        double? percent = entry.OptionalNumber("tolerance_percent", NumberRange.Above(0, 100));
        double? low = null;
        double? high = null;
        if (mayHaveEnds)
        {
            low = entry.OptionalNumber("low", NumberRange.Any);
            high = entry.OptionalNumber("high", NumberRange.Any);
        }
        bool ends = mayHaveEnds && (entry.Has("low") || entry.Has("high"));
        int statements = (ends ? 1 : 0) + (factor is null ? 0 : 1) + (percent is null ? 0 : 1);
        if (statements > 1)
        {
            entry.Problems.Error(entry.Node.Place, MaterialProblemTexts.SeveralDoubts(key));
            return default;
        }
        if (ends && !(low <= (value ?? low) && (value ?? high) <= high && low <= high))
        {
            entry.Problems.Error(entry.Node.Place, MaterialProblemTexts.EndsNotAround(key));
            return default;
        }
        return ends ? Doubt.Between(low!.Value, high!.Value)
            : factor is { } f ? Doubt.OfFactor(f)
            : percent is { } p ? Doubt.OfPercent(p)
            : default;
    }

    /// <summary>The points of a table, without its source.</summary>
    public static PointTable? Points(
        MappingReader entry,
        string axis,
        string words,
        NumberRange axisAllowed,
        NumberRange allowed,
        int least
    )
    {
        if (entry.Mapping(axis) is not { } rows)
        {
            return null;
        }
        var points = ImmutableArray.CreateBuilder<CurvePoint>();
        bool isWhole = true;
        double before = double.NegativeInfinity;
        foreach (var (key, node) in rows.Node.Entries)
        {
            rows.Take(key.Value);
            string? wrong =
                !NumberText.TryRead(key.Value, out double at)
                    ? MaterialProblemTexts.PointNotANumber(words, key.Value, axisAllowed)
                : !axisAllowed.Contains(at) ? MaterialProblemTexts.PointOutOfRange(words, at, axisAllowed)
                : at <= before ? MaterialProblemTexts.NotAscending(words, at)
                : null;
            if (wrong is not null)
            {
                rows.Problems.Error(key.Place, wrong);
                isWhole = false;
            }
            else
            {
                before = at;
            }
            if (ValueReader.Number(node, $"{words} {key.Value}", allowed, rows.Problems) is { } value)
            {
                points.Add(new(at, value));
            }
            else
            {
                isWhole = false;
            }
        }
        if (isWhole && points.Count < least)
        {
            rows.Problems.Error(rows.Node.Place, MaterialProblemTexts.TooFewPoints(words, least));
            isWhole = false;
        }
        return isWhole ? new(points.ToImmutable()) : null;
    }
}
