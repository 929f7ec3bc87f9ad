using System.Text;

namespace GlowMix.Documents;

/// <summary>
/// Changes a text in places and leaves all else as the user wrote it: blank lines, alignment, comments and line ends.
/// Writing a document anew from its tree would lose them.
/// </summary>
public static class SourceText
{
    /// <summary>The text with the edits made; all spans are those of the text as given.</summary>
    /// <exception cref="ArgumentException">Two edits overlap or one lies outside the text.</exception>
    public static string Apply(string text, params IEnumerable<TextEdit> edits)
    {
        var result = new StringBuilder(text.Length + 64);
        int copied = 0;
        foreach (var (span, newText) in edits.OrderBy(e => e.Span.Start).ThenBy(e => e.Span.End))
        {
            if (span.Start < copied || span.End < span.Start || span.End > text.Length)
            {
                throw new ArgumentException($"The edit of {span} overlaps another or leaves the text.");
            }
            result.Append(text, copied, span.Start - copied).Append(newText);
            copied = span.End;
        }
        return result.Append(text, copied, text.Length - copied).ToString();
    }

    /// <summary>The text of a span as it is written, quotes included.</summary>
    public static string Slice(string text, SourceSpan span) => text[span.Start..span.End];

    /// <summary>The line end the text uses: that of its first line, or a line feed.</summary>
    public static string LineEndOf(string text)
    {
        int feed = text.IndexOf('\n');
        return feed > 0 && text[feed - 1] == '\r' ? "\r\n" : "\n";
    }

    /// <summary>Index behind the last character of the line an index lies in, before its line end.</summary>
    internal static int EndOfLine(string text, int index)
    {
        int end = text.AsSpan(index).IndexOfAny('\r', '\n');
        return end < 0 ? text.Length : index + end;
    }
}
