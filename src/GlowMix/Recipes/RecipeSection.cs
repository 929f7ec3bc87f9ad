using GlowMix.Documents;

namespace GlowMix.Recipes;

/// <summary>Reads the keys of one section as <see cref="RecipeKeys"/> describes them.</summary>
internal sealed class RecipeSection(MappingReader reader, string pattern)
{
    /// <summary>The reader beneath.</summary>
    public MappingReader Reader { get; } = reader;

    /// <summary>Where problems go.</summary>
    public ProblemList Problems => Reader.Problems;

    /// <summary>A section that may be missing: then one without any key.</summary>
    public static RecipeSection Optional(MappingReader parent, string key)
    {
        var section = parent.OptionalMapping(key) ?? new MappingReader(Nothing, parent.Problems, key);
        return new(section, key);
    }

    /// <summary>A number within the key's range, or null.</summary>
    public double? Number(string key) => Reader.OptionalNumber(key, KeyOf(key).Range);

    /// <summary>A number that must be there; 0 and a problem if it is not.</summary>
    public double NeededNumber(string key) => Reader.Number(key, KeyOf(key).Range) ?? 0;

    /// <summary>A whole number within the key's range, or null.</summary>
    public int? WholeNumber(string key) =>
        Reader.OptionalWholeNumber(key, (int)KeyOf(key).Range.Least, (int)KeyOf(key).Range.Most);

    /// <summary>One of the decay's minutes, or null.</summary>
    public double? Minutes(string key)
    {
        if (Reader.OptionalNumber(key, NumberRange.Any) is not { } minutes)
        {
            return null;
        }
        if (!DecayMinutes.All.Contains(minutes))
        {
            Reader.Error(key, RecipeTexts.NotDecayMinutes(key, minutes));
        }
        return minutes;
    }

    /// <summary>One of the key's words, or null.</summary>
    public string? Word(string key) => Reader.OptionalOneOf(key, KeyOf(key).Words);

    /// <summary>A text on one line, or null.</summary>
    public string? Text(string key) => OneLine(key, Reader.OptionalText(key));

    /// <summary>A text that must be there; empty and a problem if it is not.</summary>
    public string NeededText(string key) => OneLine(key, Reader.Text(key)) ?? "";

    /// <summary>A material's name or path, or null.</summary>
    public string? Material(string key) => AsMaterial(key, Reader.OptionalText(key));

    /// <summary>A material that must be there; empty and a problem if it is not.</summary>
    public string NeededMaterial(string key) => AsMaterial(key, Reader.Text(key)) ?? "";

    /// <summary>Refuses a key that says nothing without another.</summary>
    public void Needs(string key, string other)
    {
        if (Reader.Has(key) && !Reader.Has(other))
        {
            Reader.Error(key, RecipeTexts.Needs(key, other));
        }
    }

    /// <summary>Refuses what nobody read.</summary>
    public void Finish() => Reader.Finish();

    /// <summary>The text is a material's name, or the path of a file.</summary>
    public static bool IsMaterial(string text) => PlainName.IsWords(text, joints: ".-") || IsYamlPath(text);

    /// <summary>The text ends as the path of a file with YAML in it.</summary>
    public static bool IsYamlPath(string text) =>
        text.Length > 5 && text.EndsWith(".yaml", StringComparison.Ordinal);

    private static MappingNode Nothing { get; } =
        (MappingNode)Document.Read("nothing: {}", "").Root!["nothing"]!;

    private string? OneLine(string key, string? text)
    {
        if (text?.Contains('\n', StringComparison.Ordinal) == true)
        {
            Reader.Error(key, ProblemTexts.NotOneLine(key));
        }
        return text;
    }

    private string? AsMaterial(string key, string? text)
    {
        if (text is not null && !IsMaterial(text))
        {
            Reader.Error(key, RecipeTexts.NotAMaterial(key, text));
        }
        return text;
    }

    private RecipeKey KeyOf(string key) =>
        RecipeKeys.Find(pattern.Length == 0 ? key : $"{pattern}.{key}")
        ?? throw new InvalidOperationException($"'{pattern}.{key}' is not among the keys of a recipe.");
}
