using System.Globalization;
using System.Text.RegularExpressions;

namespace GlowMix.Documents;

/// <summary>Numbers as files and options write them: digits, a point, an exponent; the same in every country.</summary>
public static partial class NumberText
{
    private const NumberStyles Styles =
        NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    /// <summary>Reads a finite number.</summary>
    public static bool TryRead(string text, out double number)
    {
        bool read =
            double.TryParse(text, Styles, CultureInfo.InvariantCulture, out number)
            && double.IsFinite(number);
        // Minus zero would print as '-0'.
        number = read ? number + 0.0 : 0;
        return read;
    }

    /// <summary>The shortest text that reads back as the same number.</summary>
    public static string Write(double number) => number.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>What to write instead of a text that is no number, such as 'write it with a point, such as 3.5', or null.</summary>
    public static string? Hint(string text)
    {
        if (DecimalComma().IsMatch(text))
        {
            return $"write it with a point, such as {text.Replace(',', '.')}";
        }
        if (GroupedDigits().IsMatch(text))
        {
            return $"write the digits without separators, such as {text.Replace("_", "").Replace(",", "").Replace(" ", "")}";
        }
        if (NotFinite().IsMatch(text) || double.TryParse(text, Styles, CultureInfo.InvariantCulture, out _))
        {
            return "needed: a finite number";
        }
        var unit = NumberWithUnit().Match(text);
        return unit.Success ? $"write the number alone, such as {unit.Groups[1].Value}" : null;
    }

    [GeneratedRegex(@"^[+-]?\d+,\d+([eE][+-]?\d+)?$")]
    private static partial Regex DecimalComma();

    [GeneratedRegex(@"^[+-]?\d{1,3}([_, ]\d{3})+(\.\d+)?$|^[+-]?\d+(_\d+)+(\.\d+)?$")]
    private static partial Regex GroupedDigits();

    [GeneratedRegex(@"^[+-]?\.?(nan|inf|infinity)$", RegexOptions.IgnoreCase)]
    private static partial Regex NotFinite();

    [GeneratedRegex(@"^([+-]?\d+(?:\.\d+)?) ?(?![eE]$)[%°µμ\p{L}][\p{L}²³/%]*$")]
    private static partial Regex NumberWithUnit();
}
