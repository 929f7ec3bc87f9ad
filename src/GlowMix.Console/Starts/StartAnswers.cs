using GlowMix.Documents;

namespace GlowMix.Console.Starts;

/// <summary>What was told of a new file, by option or answer; each value has passed its field.</summary>
internal sealed class StartAnswers
{
    private readonly Dictionary<string, IReadOnlyList<string>> values = [];

    /// <summary>The name of the new file's subject: a recipe's file without ending, a material's name.</summary>
    public required string Name { get; init; }

    /// <summary>Keeps an answer.</summary>
    public void Put(string field, IReadOnlyList<string> answer) => values[field] = answer;

    /// <summary>Whether anything was told.</summary>
    public bool Has(string field) => values.ContainsKey(field);

    /// <summary>A text, or null.</summary>
    public string? Text(string field) => values.GetValueOrDefault(field) is [.., var last] ? last : null;

    /// <summary>Several texts; empty if nothing was told.</summary>
    public IReadOnlyList<string> Texts(string field) => values.GetValueOrDefault(field) ?? [];

    /// <summary>A number, or null.</summary>
    public double? Number(string field) =>
        Text(field) is { } text && NumberText.TryRead(text, out double number) ? number : null;
}
