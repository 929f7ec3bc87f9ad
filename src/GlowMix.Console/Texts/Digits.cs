using System.Globalization;

namespace GlowMix.Console.Texts;

/// <summary>
/// Numbers for people, with no more digits than they are worth. What does not exist is 'none'. Culture-invariant.
/// </summary>
internal static class Digits
{
    /// <summary>What stands for a figure that does not exist.</summary>
    public const string None = "none";

    // Duv and chromaticity need no more, and what is smaller is rounding.
    private const int MostDecimals = 6;

    /// <summary>A colour temperature to 10 K.</summary>
    public static string Cct(double? cctK) => cctK is double k ? Fixed(RoundedCct(k), 0) : None;

    /// <summary>A colour temperature as it is printed.</summary>
    public static double RoundedCct(double cctK) => Math.Round(cctK / 10) * 10;

    /// <summary>Duv to 3 decimals, always with its sign.</summary>
    public static string Duv(double? duv) => duv is double d ? Signed(d, 3) : None;

    /// <summary>A whole percentage; what is there but small is '&lt;1 %'.</summary>
    public static string Percent(double? percent) =>
        percent switch
        {
            null => None,
            > 0 and < 0.5 => "<1 %",
            double p => $"{Fixed(p, 0)} %",
        };

    /// <summary>Two digits at most: '1300', '53', '4.7', '0.31'.</summary>
    public static string Two(double? value)
    {
        if (value is not double v)
        {
            return None;
        }
        if (v == 0)
        {
            return "0";
        }
        // Below this a glow is darker than the eye is.
        return Math.Abs(v) < 0.001 ? "<0.001" : Significant(v, 2);
    }

    /// <summary>Up to so many digits, without zeros at the end of a fraction.</summary>
    public static string Significant(double value, int digits)
    {
        if (value == 0)
        {
            return "0";
        }
        int exponent = (int)Math.Floor(Math.Log10(Math.Abs(value)));
        int decimals = digits - 1 - exponent;
        if (decimals < 0)
        {
            double step = Math.Pow(10, -decimals);
            return Fixed(Math.Round(value / step) * step, 0);
        }
        double rounded = Math.Round(value, Math.Min(decimals, MostDecimals));
        return (rounded == 0 ? 0 : rounded).ToString("0.######", CultureInfo.InvariantCulture);
    }

    /// <summary>So many decimals; a zero has no sign.</summary>
    public static string Fixed(double value, int decimals)
    {
        double rounded = Math.Round(value, decimals);
        return (rounded == 0 ? 0 : rounded).ToString("F" + decimals, CultureInfo.InvariantCulture);
    }

    /// <summary>So many decimals with a sign; a zero has none.</summary>
    public static string Signed(double value, int decimals)
    {
        string text = Fixed(value, decimals);
        return Math.Round(value, decimals) > 0 ? "+" + text : text;
    }

    /// <summary>As the user would write it: every digit that counts.</summary>
    public static string Plain(double value) => Math.Round(value, 10).ToString(CultureInfo.InvariantCulture);

    /// <summary>Grams as a kitchen scale shows them.</summary>
    public static string Grams(double? grams) => grams is double g ? $"{Fixed(g, 1)} g" : None;
}
