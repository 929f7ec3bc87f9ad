using System.Globalization;

namespace GlowMix.Predictions.Kept;

/// <summary>How finely a figure is kept: in fixed steps, or with so many digits.</summary>
public readonly record struct FigureStep
{
    // Rounded to so many digits first. What is worked out from the round numbers of recipes likes to lie right on the edge
    // between two steps, where the last bit of a sum would decide; this moves the edge away from every number people write,
    // and a figure at most by half a millionth of itself.
    private const string SevenDigits = "E6";

    private readonly int digits;
    private readonly int finest;
    private readonly decimal step;

    private FigureStep(int digits, int finest, decimal step) =>
        (this.digits, this.finest, this.step) = (digits, finest, step);

    /// <summary>Always in steps of this.</summary>
    public static FigureStep Of(decimal step) => new(0, 0, step);

    /// <summary>So many significant digits, and never finer than a power of ten: -3 for a thousandth.</summary>
    public static FigureStep Digits(int digits, int finest) => new(digits, finest, 0);

    /// <summary>The nearest number that is kept, halves away from zero; its scale is that of the step.</summary>
    /// <param name="value">A finite number of less than 10²⁶.</param>
    public decimal Round(double value)
    {
        if (!(Math.Abs(value) < 1e26))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "No figure is as large.");
        }
        decimal near = decimal.Parse(
            value.ToString(SevenDigits, CultureInfo.InvariantCulture),
            NumberStyles.Float,
            CultureInfo.InvariantCulture
        );
        decimal here = At(near);
        return decimal.Round(near / here, 0, MidpointRounding.AwayFromZero) * here;
    }

    /// <summary>The step at a value.</summary>
    public decimal At(decimal value)
    {
        if (digits == 0)
        {
            return step;
        }
        decimal size = Math.Abs(value);
        int power = finest;
        while (size >= PowerOfTen(power + digits))
        {
            power++;
        }
        return PowerOfTen(power);
    }

    private static decimal PowerOfTen(int power)
    {
        if (power <= 0)
        {
            return new(1, 0, 0, isNegative: false, scale: (byte)-power);
        }
        decimal ten = 10;
        for (int i = 1; i < power; i++)
        {
            ten *= 10;
        }
        return ten;
    }
}
