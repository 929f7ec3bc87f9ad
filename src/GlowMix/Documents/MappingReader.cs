namespace GlowMix.Documents;

/// <summary>
/// Reads the keys of one mapping. Each method ticks its key off; <see cref="Finish"/> refuses what nobody read. A value that
/// is missing or wrong is null, and a problem stands in the list: read on, so that all problems of a file are found.
/// </summary>
/// <param name="node">The mapping.</param>
/// <param name="problems">Where problems go.</param>
/// <param name="where">The mapping's key path for messages, such as 'layers.glow'; empty at the top of a file.</param>
public sealed class MappingReader(MappingNode node, ProblemList problems, string where = "")
{
    // In the order asked for, which is the canonical one.
    private readonly List<string> known = [];

    /// <summary>The mapping.</summary>
    public MappingNode Node { get; } = node;

    /// <summary>The mapping's key path for messages; empty at the top of a file.</summary>
    public string Where { get; } = where;

    /// <summary>Where problems go.</summary>
    public ProblemList Problems { get; } = problems;

    /// <summary>The key is written, with or without a value.</summary>
    public bool Has(string key) => Node.Find(key) is not null;

    /// <summary>Where the value of a key stands, else the mapping; null at the top of a file.</summary>
    public Place? PlaceOf(string key) => Node[key]?.Place ?? (Where.Length == 0 ? null : Node.Place);

    /// <summary>Ticks a key off and returns its value, whatever it is; null if the key is not there.</summary>
    public DocumentNode? Take(string key)
    {
        if (!known.Contains(key))
        {
            known.Add(key);
        }
        return Node[key];
    }

    /// <summary>A number that must be there.</summary>
    public double? Number(string key, NumberRange allowed) =>
        Required(key) is { } value ? ValueReader.Number(value, key, allowed, Problems) : null;

    /// <summary>A number, or null if the key is not there.</summary>
    public double? OptionalNumber(string key, NumberRange allowed) =>
        Take(key) is { } value ? ValueReader.Number(value, key, allowed, Problems) : null;

    /// <summary>A whole number that must be there.</summary>
    public int? WholeNumber(string key, int least, int most) =>
        Required(key) is { } value ? ValueReader.WholeNumber(value, key, least, most, Problems) : null;

    /// <summary>A whole number, or null if the key is not there.</summary>
    public int? OptionalWholeNumber(string key, int least, int most) =>
        Take(key) is { } value ? ValueReader.WholeNumber(value, key, least, most, Problems) : null;

    /// <summary>A text that must be there; not empty, blanks at its ends cut.</summary>
    public string? Text(string key) =>
        Required(key) is { } value ? ValueReader.Text(value, key, Problems) : null;

    /// <summary>A text, or null if the key is not there.</summary>
    public string? OptionalText(string key) =>
        Take(key) is { } value ? ValueReader.Text(value, key, Problems) : null;

    /// <summary>One of some words; the key must be there.</summary>
    public string? OneOf(string key, params IReadOnlyCollection<string> words) =>
        Required(key) is { } value ? ValueReader.OneOf(value, key, words, Problems) : null;

    /// <summary>One of some words, or null if the key is not there.</summary>
    public string? OptionalOneOf(string key, params IReadOnlyCollection<string> words) =>
        Take(key) is { } value ? ValueReader.OneOf(value, key, words, Problems) : null;

    /// <summary>A nested mapping that must be there. Finish the one returned, too.</summary>
    public MappingReader? Mapping(string key) =>
        Required(key) is { } value ? ValueReader.Mapping(value, key, Path(key), Problems) : null;

    /// <summary>A nested mapping, or null if the key is not there.</summary>
    public MappingReader? OptionalMapping(string key) =>
        Take(key) is { } value ? ValueReader.Mapping(value, key, Path(key), Problems) : null;

    /// <summary>A list that must be there.</summary>
    /// <param name="key">The key.</param>
    /// <param name="least">The fewest items allowed.</param>
    /// <param name="most">The most items allowed; a longer list is one problem and is not read.</param>
    public ListReader? List(string key, int least = 1, int most = int.MaxValue) =>
        Required(key) is { } value ? ValueReader.List(value, key, Path(key), least, most, Problems) : null;

    /// <summary>A list, or null if the key is not there.</summary>
    public ListReader? OptionalList(string key, int least = 1, int most = int.MaxValue) =>
        Take(key) is { } value ? ValueReader.List(value, key, Path(key), least, most, Problems) : null;

    /// <summary>Refuses the second of two keys that exclude each other; true if both are there.</summary>
    public bool NotBoth(string key, string other)
    {
        bool both = Has(key) && Has(other);
        if (both)
        {
            var (first, second) = Node[key]!.Place < Node[other]!.Place ? (key, other) : (other, key);
            Problems.Error(Node.Find(second)!.Key.Place, ProblemTexts.NotBoth(second, first));
        }
        return both;
    }

    /// <summary>Adds an error at the value of a key.</summary>
    public void Error(string key, string text) => Problems.Error(PlaceOf(key), text);

    /// <summary>Adds a warning at the value of a key.</summary>
    public void Warning(string key, string text) => Problems.Warning(PlaceOf(key), text);

    /// <summary>Refuses every key that was not read, with the nearest known one or the line in the right unit.</summary>
    public void Finish()
    {
        foreach (var (key, value) in Node.Entries)
        {
            if (!known.Contains(key.Value))
            {
                string? converted = KnownUnits.Convert(key.Value, (value as ScalarNode)?.Value, known);
                Problems.Error(
                    key.Place,
                    converted is null
                        ? ProblemTexts.UnknownKey(key.Value, known)
                        : ProblemTexts.UnknownUnit(key.Value, converted)
                );
            }
        }
    }

    private DocumentNode? Required(string key)
    {
        var value = Take(key);
        if (value is null)
        {
            Problems.Error(Where.Length == 0 ? null : Node.Place, ProblemTexts.Missing(key, Where));
        }
        return value;
    }

    private string Path(string key) => Where.Length == 0 ? key : $"{Where}.{key}";
}
