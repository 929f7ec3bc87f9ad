namespace GlowMix.Console.Texts;

/// <summary>
/// Sets a text for people: paragraphs, and rows with a label on the left, broken at the style's width. All of the text
/// passes <see cref="Letters"/> on its way out.
/// </summary>
internal sealed class Sheet(TextWriter writer, TextStyle style) : IRowSheet
{
    /// <summary>Width of the labels on the left.</summary>
    public const int LabelColumns = 11;

    private static readonly string[] units =
    [
        "%",
        "K",
        "mm",
        "nm",
        "min",
        "h",
        "lm",
        "lx",
        "g",
        "ml",
        "°C",
        "mcd/m²",
        "mcd/m2",
    ];

    private const string Bold = "\e[1m";
    private const string Faint = "\e[2m";
    private const string Normal = "\e[0m";

    /// <summary>How the text is set.</summary>
    public TextStyle Style => style;

    /// <summary>An empty line.</summary>
    public void Blank() => writer.Write('\n');

    /// <summary>A line of its own, bold.</summary>
    public void Heading(string text) => Broken(text, "", "", Bold);

    /// <summary>A paragraph, later lines further in.</summary>
    public void Paragraph(string text, int indent = 0, int hanging = 0) =>
        Broken(text, Spaces(indent), Spaces(indent + hanging), null);

    /// <summary>A paragraph that stands back.</summary>
    public void Aside(string text, int indent = 0) => Broken(text, Spaces(indent), Spaces(indent), Faint);

    /// <inheritdoc/>
    public void Row(string label, string text) =>
        Broken(text, Letters.OneLine(label, style.Ascii).PadRight(LabelColumns), Spaces(LabelColumns), null);

    /// <summary>A line as it stands, not broken: a row of a table or a plot.</summary>
    public void Line(string text) => Write(Letters.OneLine(text, style.Ascii).TrimEnd(), null);

    private void Broken(string text, string first, string later, string? code)
    {
        text = Letters.OneLine(text, style.Ascii);
        string lead = first;
        var words = text.AsSpan();
        do
        {
            int room = Math.Max(10, style.Columns - lead.Length);
            int end = BreakAt(words, room);
            Write(lead + words[..end].TrimEnd().ToString(), code);
            words = words[end..].TrimStart(' ');
            lead = later;
        } while (words.Length > 0);
    }

    // Behind the last blank that fits; a word longer than the line, such as a path, is left whole.
    private static int BreakAt(ReadOnlySpan<char> words, int room)
    {
        if (words.Length <= room)
        {
            return words.Length;
        }
        for (int i = room; i > 0; i--)
        {
            if (words[i] == ' ' && !HoldsTogether(words, i))
            {
                return i;
            }
        }
        int next = words[room..].IndexOf(' ');
        return next < 0 ? words.Length : room + next;
    }

    // A number keeps its unit on its line.
    private static bool HoldsTogether(ReadOnlySpan<char> words, int blank)
    {
        if (!char.IsAsciiDigit(words[blank - 1]))
        {
            return false;
        }
        var next = words[(blank + 1)..];
        foreach (string unit in units)
        {
            if (
                next.StartsWith(unit, StringComparison.Ordinal)
                && (next.Length == unit.Length || next[unit.Length] is ' ' or '.' or ',' or ';' or ':' or ')')
            )
            {
                return true;
            }
        }
        return false;
    }

    private void Write(string line, string? code)
    {
        bool marked = style.Emphasis && code is not null && line.Length > 0;
        writer.Write(marked ? code : "");
        writer.Write(line);
        writer.Write(marked ? Normal + "\n" : "\n");
    }

    private static string Spaces(int count) => new(' ', count);
}
