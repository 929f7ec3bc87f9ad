using System.Text;
using System.Text.RegularExpressions;

namespace GlowMix.Readings.Files;

/// <summary>
/// Ways of typing that a table of numbers need not know: each is written over by its plain form, and blanks, at the same
/// place. So every place told later is that of the file.
/// </summary>
internal static partial class TypedForms
{
    private const int FewestRows = 3;

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

    private static readonly string[] PairEnds = ["),", "},", "],"];

    /// <summary>The same text in plain form, as long as before.</summary>
    public static string Plain(string text)
    {
        text = Bars(text);
        if (PowerMarks.Any(m => text.Contains(m, StringComparison.Ordinal)))
        {
            text = PowerOfTen()
                .Replace(text, m => ("e" + Exponent(m.Groups["exponent"].Value)).PadRight(m.Length));
        }
        if (PairEnds.Any(e => text.Contains(e, StringComparison.Ordinal)))
        {
            text = BetweenPairs().Replace(text, "\n");
        }
        if (HasColonBehindWavelength(text))
        {
            text = ColonBehindWavelength().Replace(text, "\t");
        }
        if (text.Contains('='))
        {
            text = NumberedPoint().Replace(text, m => new string(' ', m.Length));
        }
        if (text.Contains("  ", StringComparison.Ordinal) && HasGroupsOfThree(text))
        {
            text = GroupedBehindGap()
                .Replace(text, m => m.Groups["gap"].Value + m.Groups["number"].Value.Replace(' ', '\''));
        }
        if (text.Contains('\''))
        {
            text = QuotedCell().Replace(text, m => $"\"{m.Value[1..^1]}\"");
        }
        return text;
    }

    // Three digits of a wavelength at the beginning of a line; hours have fewer.
    private static bool HasColonBehindWavelength(string text)
    {
        for (int at = text.IndexOf(':'); at >= 0; at = text.IndexOf(':', at + 1))
        {
            int start = at;
            while (start > 0 && (char.IsAsciiDigit(text[start - 1]) || text[start - 1] is '.' or ','))
            {
                start--;
            }
            if (at - start >= 3 && (start == 0 || text[start - 1] is '\n' or '\r' or ' ' or '\t'))
            {
                return true;
            }
        }
        return false;
    }

    // Columns of three digits have as many on every line.
    private static bool HasGroupsOfThree(string text)
    {
        int[] groups =
        [
            .. GroupedBehindGap().Matches(text).Select(m => m.Groups["number"].Value.Count(c => c == ' ')),
        ];
        return groups.Length >= FewestRows && (groups.Min() < groups.Max() || PlainBehindGap().IsMatch(text));
    }

    // Drawn tables and typographic quotes.
    private static string Bars(string text) =>
        Ascii.IsValid(text)
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

    // A program's list of pairs on one line: '[(450, 0.82), (455, 0.87)]'.
    [GeneratedRegex(@"(?<=\d ?[)}\]]),(?= ?[({[] ?[-+]?[\d.])")]
    private static partial Regex BetweenPairs();

    // '450:0.82'; hours have fewer digits.
    [GeneratedRegex(
        @"(?<=^[ \t]*\d{3,4}(?:[.,]\d{1,4})?):(?!\d\d[ ]*(?:[;,|\t ]|\r?$))(?=[ \t]*[-+]?\d*[.,]?\d)",
        RegexOptions.Multiline
    )]
    private static partial Regex ColonBehindWavelength();

    // 'p12=450,0.82': the name tells nothing.
    [GeneratedRegex(
        @"^[ \t]*[A-Za-z_]\w{0,20}?\[?\d+\]?[ \t]*=[ \t]*(?=[\d.]+[ \t]*[,;\t ][ \t]*[-+]?[\d.])",
        RegexOptions.Multiline
    )]
    private static partial Regex NumberedPoint();

    // '450   12 345' beside '455   987'.
    [GeneratedRegex(
        @"(?<gap>^ *\d[\d.,]* {2,})(?<number>\d{1,3}(?: \d{3})+(?:[.,]\d+)?)(?= *\r?$)",
        RegexOptions.Multiline
    )]
    private static partial Regex GroupedBehindGap();

    [GeneratedRegex(@"^ *\d[\d.,]* {2,}\d{1,3}(?:[.,]\d+)? *\r?$", RegexOptions.Multiline)]
    private static partial Regex PlainBehindGap();

    // '450','0.82': the quotes at the edges of cells, not those in 1'234 or d'onde.
    [GeneratedRegex(@"(?<=^|[\t;,| ])'[^\r\n]*?'(?=[ ]*(?:[\t;,|]|\r?$))", RegexOptions.Multiline)]
    private static partial Regex QuotedCell();
}
