namespace GlowMix.Documents;

/// <summary>The edits that change one value or add one key and leave the rest of a text as it is.</summary>
public static class DocumentEdit
{
    private const int IndentStep = 2;

    /// <summary>Writes another value in the place of one.</summary>
    /// <param name="value">The value as it stands.</param>
    /// <param name="valueText">The new one, written as <see cref="ScalarText"/> does.</param>
    public static TextEdit Replace(DocumentNode value, string valueText)
    {
        // Nothing stands right behind the colon.
        bool isEmpty = value.Span.Length == 0;
        return new(value.Span, isEmpty ? " " + valueText : valueText);
    }

    /// <summary>Writes another key with another value in the place of an entry.</summary>
    public static TextEdit Replace(MappingEntry entry, string key, string valueText) =>
        new(new(entry.Key.Span.Start, entry.Value.Span.End), $"{key}: {valueText}");

    /// <summary>Adds a key to a mapping, behind the keys that precede it in the canonical order.</summary>
    /// <param name="document">The document.</param>
    /// <param name="mapping">One of its mappings.</param>
    /// <param name="keys">The key, or the section to open and the key in it.</param>
    /// <param name="valueText">The value, written as <see cref="ScalarText"/> does.</param>
    /// <param name="order">Names of the mapping's keys in canonical order.</param>
    public static TextEdit Insert(
        Document document,
        MappingNode mapping,
        IReadOnlyList<string> keys,
        string valueText,
        IReadOnlyList<string> order
    )
    {
        var before = order.TakeWhile(k => k != keys[0]).ToHashSet();
        var previous = mapping.Entries.LastOrDefault(e => before.Contains(e.Key.Value));
        if (mapping.IsFlow)
        {
            string pair = Flow(keys, valueText);
            return mapping.Entries.Length == 0 ? At(mapping.Span.Start + 1, pair)
                : previous is null ? At(mapping.Span.Start + 1, pair + ", ")
                : At(previous.Value.Span.End, ", " + pair);
        }
        int indent = mapping.Place.Column - 1;
        string lineEnd = SourceText.LineEndOf(document.Text);
        string lines = Block(keys, valueText, indent, lineEnd);
        return previous is null
            ? At(mapping.Entries[0].Key.Span.Start, lines + lineEnd + new string(' ', indent))
            : At(
                SourceText.EndOfLine(document.Text, previous.Value.Span.End),
                lineEnd + new string(' ', indent) + lines
            );
    }

    /// <summary>Adds a first key to a section that stands there without any.</summary>
    public static TextEdit InsertIntoEmpty(
        Document document,
        MappingEntry section,
        IReadOnlyList<string> keys,
        string valueText
    )
    {
        int indent = section.Key.Place.Column - 1 + IndentStep;
        string lineEnd = SourceText.LineEndOf(document.Text);
        return At(
            SourceText.EndOfLine(document.Text, section.Value.Span.End),
            lineEnd + new string(' ', indent) + Block(keys, valueText, indent, lineEnd)
        );
    }

    private static string Block(IReadOnlyList<string> keys, string valueText, int indent, string lineEnd)
    {
        string lines = keys[0] + ":";
        for (int i = 1; i < keys.Count; i++)
        {
            lines += $"{lineEnd}{new string(' ', indent + (i * IndentStep))}{keys[i]}:";
        }
        return $"{lines} {valueText}";
    }

    private static string Flow(IReadOnlyList<string> keys, string valueText) =>
        string.Join(": {", keys) + ": " + valueText + new string('}', keys.Count - 1);

    private static TextEdit At(int index, string text) => new(new(index, index), text);
}
