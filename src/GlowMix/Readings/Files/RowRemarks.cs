namespace GlowMix.Readings.Files;

/// <summary>Remarks behind the numbers of a row: '450  0.82  # lamp warm'.</summary>
internal static class RowRemarks
{
    /// <summary>Cuts them off, from lines that begin with a number only: in a header '#' may stand for 'number'.</summary>
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
            if (trimmed.Length == 0 || !(char.IsAsciiDigit(trimmed[0]) || trimmed[0] is '+' or '-' or '.'))
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
}
