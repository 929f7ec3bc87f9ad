using System.Buffers;
using System.Text.RegularExpressions;

namespace GlowMix.Readings.Files;

/// <summary>
/// Ways of typing that a table of numbers need not know: each is written over by its plain form, and blanks, at the same
/// place. So every place told later is that of the file.
/// </summary>
internal static partial class TypedForms
{
    private static readonly SearchValues<char> BarsAndQuotes = SearchValues.Create("│┃║‖¦“”„«»‟");

    private static readonly string[] PowerMarks =
    [
        "10^",
        "10**",
        "10⁻",
        "×10",
        "x10",
        "X10",
        "*10",
        "·10",
        "*^",
        " x 1",
        " × 1",
        " * 1",
    ];

    /// <summary>The same text in plain form, as long as before.</summary>
    public static string Plain(string text)
    {
        text = Bars(text);
        if (PowerMarks.Any(m => text.Contains(m, StringComparison.Ordinal)))
        {
            text = PowerOfTen()
                .Replace(text, m => ("e" + Exponent(m.Groups["exponent"].Value)).PadRight(m.Length));
        }
        if (text.Contains('\''))
        {
            text = QuotedCell().Replace(text, m => $"\"{m.Value[1..^1]}\"");
        }
        return text;
    }

    // Drawn tables and typographic quotes.
    private static string Bars(string text) =>
        !text.AsSpan().ContainsAny(BarsAndQuotes)
            ? text
            : string.Create(
                text.Length,
                text,
                static (plain, from) =>
                {
                    for (int i = 0; i < plain.Length; i++)
                    {
                        plain[i] = from[i] switch
                        {
                            '│' or '┃' or '║' or '‖' or '¦' => '|',
                            '“' or '”' or '„' or '«' or '»' or '‟' => '"',
                            var c => c,
                        };
                    }
                }
            );

    private static string Exponent(string typed) =>
        string.Concat(
            typed.Select(c =>
                c switch
                {
                    '−' or '⁻' => '-',
                    '⁺' => '+',
                    '¹' => '1',
                    '²' => '2',
                    '³' => '3',
                    '⁰' or (>= '⁴' and <= '⁹') => (char)(c - '⁰' + '0'),
                    _ => c,
                }
            )
        );

    // '4.5×10^-3', '4,5 x 10-3', '4.5·10⁻³', '4.5*10**-3', '4.5*^-3'. A plain number behind the ten must be marked: '3x1024' is none.
    [GeneratedRegex(
        @"(?<=\d)[ \u00A0]?(?:[×xX*·⋅✕∙] ?10(?: ?(?:\^|\*\*) ?[({]?(?<exponent>[-+−]?\d{1,3})[)}]?|(?<exponent>[-+−]\d{1,3})|(?<exponent>[⁻⁺]?[⁰¹²³⁴-⁹]{1,3}))|\*\^(?<exponent>[-+−]?\d{1,3}))(?!\d)"
    )]
    private static partial Regex PowerOfTen();

    // '450','0.82': the quotes at the edges of cells, not those in 1'234 or d'onde.
    [GeneratedRegex(@"(?<=^|[\t;,| ])'[^\r\n]*?'(?=[ ]*(?:[\t;,|]|\r?$))", RegexOptions.Multiline)]
    private static partial Regex QuotedCell();
}
