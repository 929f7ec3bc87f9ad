using System.Text;
using GlowMix.Documents;

namespace GlowMix.Console.Starts;

/// <summary>Writes the text of a new file, with comments, in the style of the shipped ones.</summary>
internal sealed class StartText
{
    private const int CommentColumn = 35;
    private readonly StringBuilder text = new();

    /// <summary>A line, perhaps with a comment behind it.</summary>
    public StartText Line(string line, string? comment = null)
    {
        text.Append(comment is null ? line : $"{line.PadRight(CommentColumn - 1)} # {comment}").Append('\n');
        return this;
    }

    /// <summary>An empty line.</summary>
    public StartText Blank()
    {
        text.Append('\n');
        return this;
    }

    /// <summary>Comment lines.</summary>
    public StartText Comment(params ReadOnlySpan<string> lines)
    {
        foreach (string line in lines)
        {
            text.Append("# ").Append(line).Append('\n');
        }
        return this;
    }

    /// <summary>A sourced value.</summary>
    /// <param name="key">Its key.</param>
    /// <param name="value">As written.</param>
    /// <param name="source">Where it is from.</param>
    /// <param name="doubt">A line such as 'factor: 2'; null for none.</param>
    public StartText Entry(string key, string value, string source, string? doubt = null) =>
        Line($"{key}:").Line($"  value: {value}").Doubt(doubt).Source(source);

    /// <summary>A sourced number.</summary>
    public StartText Entry(string key, double value, string source, string? doubt = null) =>
        Entry(key, NumberText.Write(value), source, doubt);

    /// <summary>A sourced table.</summary>
    public StartText Table(
        string key,
        string axis,
        IEnumerable<(double At, double Value)> points,
        string source,
        string? doubt = null
    )
    {
        Line($"{key}:").Line($"  {axis}:");
        foreach (var (at, value) in points)
        {
            Line($"    {NumberText.Write(at)}: {NumberText.Write(value)}");
        }
        return Doubt(doubt).Source(source);
    }

    /// <summary>The source below a value.</summary>
    public StartText Source(string source, int indent = 2) =>
        Line($"{new string(' ', indent)}source: {ScalarTextOf(source)}");

    /// <inheritdoc/>
    public override string ToString() => text.ToString();

    private StartText Doubt(string? doubt) => doubt is null ? this : Line("  " + doubt);

    // A source is free text; a colon or hash in it would end it.
    private static string ScalarTextOf(string source) =>
        source.Contains(": ", StringComparison.Ordinal) || source.Contains(" #", StringComparison.Ordinal)
            ? ScalarText.Of(source)
            : source;
}
