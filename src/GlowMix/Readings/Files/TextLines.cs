namespace GlowMix.Readings.Files;

/// <summary>The lines of a text, whichever ends they have: CR LF, LF, CR, or the separators of Unicode.</summary>
internal static class TextLines
{
    /// <summary>Start and length of each line, without its end.</summary>
    public static List<(int Start, int Length)> Of(string text)
    {
        var lines = new List<(int, int)>();
        int start = 0;
        while (start < text.Length)
        {
            int length = text.AsSpan(start).IndexOfAny("\r\n\u0085\u2028\u2029");
            if (length < 0)
            {
                lines.Add((start, text.Length - start));
                break;
            }
            lines.Add((start, length));
            int end = start + length;
            start = end + (text[end] == '\r' && end + 1 < text.Length && text[end + 1] == '\n' ? 2 : 1);
        }
        return lines;
    }
}
