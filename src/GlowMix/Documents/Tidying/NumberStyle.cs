using System.Globalization;

namespace GlowMix.Documents.Tidying;

/// <summary>
/// How a number is written: '0.5' and not '.5', '5' and not '+5' or '05', '60' and not '6E1', '4.7e17' and not '4.7E+17'. Zeros
/// at the end stay: they say how well a number is known.
/// </summary>
public static class NumberStyle
{
    // Beyond, an exponent is easier to read than its zeros.
    private const double Least = 1e-4;
    private const double Most = 1e7;

    /// <summary>The text in this style; as it is where it is no number, or where the style would change the number.</summary>
    public static string Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (!NumberText.TryRead(text, out double number))
        {
            return text;
        }
        int e = text.AsSpan().IndexOfAny('e', 'E');
        string digits = Digits(e < 0 ? text : text[..e]);
        string styled = digits;
        if (e >= 0)
        {
            int power = int.Parse(
                text[(e + 1)..],
                NumberStyles.AllowLeadingSign,
                CultureInfo.InvariantCulture
            );
            double size = Math.Abs(number);
            bool isPlain = size == 0 || size is >= Least and < Most;
            styled =
                isPlain && Shifted(digits, power) is { } shifted ? shifted
                : power == 0 ? digits
                : string.Create(CultureInfo.InvariantCulture, $"{digits}e{power}");
        }
        return NumberText.TryRead(styled, out double same) && same == number ? styled : text;
    }

    // '+.50' → '0.50', '-05.' → '-5'
    private static string Digits(string text)
    {
        string sign = text.StartsWith('-') ? "-" : "";
        string unsigned = text.TrimStart('+', '-');
        int point = unsigned.IndexOf('.', StringComparison.Ordinal);
        string whole = (point < 0 ? unsigned : unsigned[..point]).TrimStart('0');
        string fraction = point < 0 ? "" : unsigned[(point + 1)..];
        return $"{sign}{(whole.Length == 0 ? "0" : whole)}{(fraction.Length == 0 ? "" : "." + fraction)}";
    }

    // The decimal type keeps every digit there is room for.
    private static string? Shifted(string digits, int power) =>
        power is > -20 and < 20
        && digits.Length < 20
        && decimal.TryParse(
            $"{digits}e{power.ToString(CultureInfo.InvariantCulture)}",
            NumberStyles.Float,
            CultureInfo.InvariantCulture,
            out decimal value
        )
            ? value.ToString(CultureInfo.InvariantCulture)
            : null;
}
