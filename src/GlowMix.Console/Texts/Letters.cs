using System.Text;

namespace GlowMix.Console.Texts;

/// <summary>Keeps a text to what a terminal shows safely.</summary>
internal static class Letters
{
    /// <summary>
    /// A text on one line: a control character, which could steer the terminal, becomes a question mark. File names and
    /// words of the command line can hold any.
    /// </summary>
    public static string OneLine(string text, bool ascii)
    {
        bool isFine = true;
        foreach (char c in text)
        {
            isFine &= !char.IsControl(c) && (!ascii || char.IsAscii(c));
        }
        if (isFine)
        {
            return text;
        }
        var result = new StringBuilder(text.Length);
        foreach (char c in text)
        {
            if (char.IsControl(c))
            {
                result.Append(c is '\n' or '\r' or '\t' ? ' ' : '?');
            }
            else if (!ascii || char.IsAscii(c))
            {
                result.Append(c);
            }
            else
            {
                result.Append(InAscii(c));
            }
        }
        return result.ToString();
    }

    private static string InAscii(char c) =>
        c switch
        {
            '→' => "->",
            '²' => "2",
            '³' => "3",
            '′' => "'",
            '°' => " deg ",
            'µ' or 'μ' => "u",
            '·' => ".",
            '×' => "x",
            '÷' => "/",
            '±' => "+/-",
            '≤' => "<=",
            '≥' => ">=",
            'Δ' => "d",
            '…' => "...",
            '–' or '−' => "-",
            '‘' or '’' => "'",
            '“' or '”' => "\"",
            '\u00A0' => " ",
            'ä' => "ae",
            'ö' => "oe",
            'ü' => "ue",
            'ß' => "ss",
            'é' or 'è' => "e",
            _ => char.IsLowSurrogate(c) ? "" : "?",
        };
}
