using System.Collections.Immutable;

namespace GlowMix.Materials;

/// <summary>Where a number comes from: the text of a 'source' key and the mark its first words carry.</summary>
/// <param name="Mark">How well the number is founded.</param>
/// <param name="Text">The text as written.</param>
public readonly record struct SourceNote(SourceMark Mark, string Text)
{
    private static readonly ImmutableArray<(string Words, SourceMark Mark, bool NeedsMore)> Marks =
    [
        ("assumed", SourceMark.Assumed, false),
        ("from memory", SourceMark.FromMemory, false),
        ("common practice, no source", SourceMark.CommonPractice, false),
        ("computed", SourceMark.Computed, true),
        ("secondary source", SourceMark.Secondary, true),
        ("own reading", SourceMark.Users, false),
        ("label", SourceMark.Users, false),
    ];

    private static readonly ImmutableArray<string> Empty =
    [
        "none",
        "no",
        "yes",
        "unknown",
        "n/a",
        "na",
        "todo",
        "tbd",
        "guess",
        "source",
    ];

    /// <summary>
    /// Reads a source: the name of a publication, or one of the marks ('assumed', 'from memory', 'common practice, no
    /// source', 'computed; how', 'secondary source; what was read', 'own reading', 'label'), each with '; note' or ': note'
    /// behind it; the words are told from the name of a publication by that sign.
    /// </summary>
    /// <returns>Null if the text names nothing.</returns>
    public static SourceNote? Read(string text)
    {
        text = text.Trim();
        foreach (var (words, mark, needsMore) in Marks)
        {
            // 'Labelle (1998)' is an author, no label.
            if (
                !text.StartsWith(words, StringComparison.OrdinalIgnoreCase)
                || (text.Length > words.Length && char.IsLetterOrDigit(text[words.Length]))
            )
            {
                continue;
            }
            string rest = text[words.Length..].TrimStart();
            bool hasNote = rest.Length > 1 && rest[0] is ';' or ':' && rest[1..].Any(char.IsLetterOrDigit);
            if (hasNote || (rest.Length == 0 && !needsMore))
            {
                return new(mark, text);
            }
            // 'computed' without how, 'assumed by me': a mark that is not quite one must not pass for a publication.
            return null;
        }
        bool names =
            text.Count(char.IsLetter) >= 3 && !Empty.Contains(text, StringComparer.OrdinalIgnoreCase);
        return names ? new(SourceMark.Published, text) : null;
    }
}
