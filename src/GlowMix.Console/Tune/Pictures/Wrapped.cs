namespace GlowMix.Console.Tune.Pictures;

/// <summary>Breaks a text into lines.</summary>
internal static class Wrapped
{
    /// <summary>Lines of at most so many columns, broken at blanks; a longer word is cut.</summary>
    public static IReadOnlyList<string> Lines(string text, int columns)
    {
        var lines = new List<string>();
        string rest = text.Trim();
        while (columns > 0 && rest.Length > columns)
        {
            int at = rest.LastIndexOf(' ', columns);
            int cut = at > 0 ? at : columns;
            lines.Add(rest[..cut].TrimEnd());
            rest = rest[cut..].TrimStart();
        }
        lines.Add(rest);
        return lines;
    }
}
