namespace GlowMix.Readings.Files;

/// <summary>What stands round the numbers of a row: remarks as in '450  0.82  # lamp warm', brackets as in '[450, 0.82],'.</summary>
internal static class RowRemarks
{
    /// <summary>Cuts brackets off, from lines that begin with one before a number.</summary>
    public static void CutBrackets(string text, List<(int Start, int Length)> lines)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            var (start, length) = lines[i];
            var line = text.AsSpan(start, length);
            var inner = line.Trim(" \t");
            // A list's dash.
            inner = inner is ['-', ' ', .. var item] ? item.TrimStart() : inner;
            // The first and the last pair of a list have the list's own brackets as well.
            var row = inner.TrimStart("[({ \t");
            if (inner is not ['[' or '(' or '{', ..] || !IsNumberLike(row))
            {
                continue;
            }
            int end = row.IndexOfAny("])}");
            bool isWhole =
                end > 0 && row[end..].TrimStart("])},; \t").IsEmpty && !row[..end].ContainsAny("[({");
            if (isWhole && line.Overlaps(row, out int offset))
            {
                lines[i] = (start + offset, end);
            }
        }
    }

    /// <summary>Cuts remarks off, from lines that begin with a number only: in a header '#' may stand for 'number'.</summary>
    public static void CutFrom(string text, List<(int Start, int Length)> lines)
    {
        if (!text.Contains('#') && !text.Contains("//", StringComparison.Ordinal))
        {
            return;
        }
        for (int i = 0; i < lines.Count; i++)
        {
            var line = text.AsSpan(lines[i].Start, lines[i].Length);
            var trimmed = line.TrimStart(" \t\u00A0\",;|");
            if (!IsNumberLike(trimmed))
            {
                continue;
            }
            int sign = line.IndexOf('#');
            int slashes = line.IndexOf("//");
            int at =
                sign < 0 ? slashes
                : slashes < 0 ? sign
                : Math.Min(sign, slashes);
            if (at > 0)
            {
                lines[i] = (lines[i].Start, at);
            }
        }
    }

    /// <summary>Cuts off what ends a row in a program: '450, 0.82;'.</summary>
    public static void CutEnds(string text, List<(int Start, int Length)> lines)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            var (start, length) = lines[i];
            if (length > 0 && text[start + length - 1] is ';' or ',')
            {
                lines[i] = (start, text.AsSpan(start, length).TrimEnd(",; ").Length);
            }
        }
    }

    private static bool IsNumberLike(ReadOnlySpan<char> text) =>
        text is [(>= '0' and <= '9') or '+' or '-' or '.', ..];
}
