namespace GlowMix.Documents.Tidying;

/// <summary>Lines as they are moved.</summary>
internal static class TidyLines
{
    public static bool IsCommentOrBlank(string line)
    {
        var trimmed = line.AsSpan().TrimStart();
        return trimmed.Length == 0 || trimmed[0] == '#';
    }

    public static string Shifted(string line, int shift) =>
        line.Trim().Length == 0 ? ""
        : shift >= 0 ? Spaces(shift) + line
        : line[Math.Min(-shift, line.Length - line.TrimStart().Length)..];

    public static string Spaces(int count) => new(' ', Math.Max(0, count));
}
