using GlowMix.Documents;
using GlowMix.Materials;

namespace GlowMix.Console.Starts;

/// <summary>One thing to tell of a new file: an option of the command, and a question at a terminal.</summary>
/// <param name="Name">The option without its hyphens: 'depth-mm'.</param>
/// <param name="HelpName">What to write behind it: 'mm'.</param>
/// <param name="Description">For the help.</param>
internal sealed record StartField(string Name, string HelpName, string Description)
{
    /// <summary>The numbers allowed; null for what is no number.</summary>
    public NumberRange? Range { get; init; }

    /// <summary>Only whole numbers.</summary>
    public bool IsWhole { get; init; }

    /// <summary>The words allowed; empty for any.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>The kind of material it names; null for none.</summary>
    public MaterialKind? Kind { get; init; }

    /// <summary>Numbers that may stand in the place of a name; null for none.</summary>
    public NumberRange? OrNumber { get; init; }

    /// <summary>A word that may stand in the place of a name; null for none.</summary>
    public string? OrWord { get; init; }

    /// <summary>What is wrong with a value of its own form; null: nothing, or no such form.</summary>
    public Func<string, string?> Refusal { get; init; } = _ => null;

    /// <summary>May be given several times.</summary>
    public bool IsRepeated { get; init; }

    /// <summary>What a terminal asks; null if it does not.</summary>
    public string? Question { get; init; }

    /// <summary>Taken where nothing is told; null if it is then left open.</summary>
    public string? Usual { get; init; }

    /// <summary>Whether it applies, given what was answered before.</summary>
    public Func<StartAnswers, bool> Applies { get; init; } = _ => true;

    /// <summary>The option.</summary>
    public string Option => "--" + Name;

    /// <summary>A number.</summary>
    public static StartField Number(string name, string unit, string description, NumberRange range) =>
        new(name, unit, description) { Range = range };

    /// <summary>Why a value is refused, and with which exit code; null if it is fine.</summary>
    public (string Text, int Code)? ProblemOf(string value, Shelf shelf)
    {
        if (Range is { } range)
        {
            if (!NumberText.TryRead(value, out double number))
            {
                return (
                    ProblemTexts.NotANumber(Option, value, NumberText.Hint(value), range),
                    ExitCode.Usage
                );
            }
            return !range.Contains(number)
                    ? (ProblemTexts.OutOfRange(Option, number, range), ExitCode.Content)
                : IsWhole && number != Math.Floor(number)
                    ? (ProblemTexts.NotWhole(Option, number, range), ExitCode.Content)
                : null;
        }
        if (OrNumber is { } numbers && NumberText.TryRead(value, out double instead))
        {
            return numbers.Contains(instead)
                ? null
                : (ProblemTexts.OutOfRange(Option, instead, numbers), ExitCode.Content);
        }
        if (value == OrWord)
        {
            return null;
        }
        if (Words.Count > 0 && !Words.Contains(value))
        {
            string numbersToo = OrNumber is { } also ? $"; or a number, {also}" : "";
            return (ProblemTexts.NotOneOf(Option, value, Words) + numbersToo, ExitCode.Content);
        }
        if (Kind is { } kind && NotFound(value, kind, shelf) is { } missing)
        {
            return ($"{Option}: {missing}", ExitCode.Content);
        }
        return Refusal(value) is { } refusal ? ($"{Option}: {refusal}", ExitCode.Content) : null;
    }

    private static string? NotFound(string name, MaterialKind kind, Shelf shelf)
    {
        var loaded = shelf.Any(kind, name);
        return loaded.Material is not null
            ? null
            : loaded.NotFound
                ?? loaded.Problems.FirstOrDefault(p => p.Severity == Severity.Error)?.ToString();
    }
}
