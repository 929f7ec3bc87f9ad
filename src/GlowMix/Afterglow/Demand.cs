using System.Globalization;

namespace GlowMix.Afterglow;

/// <summary>Checks at the public edge of this folder; the pattern also refuses NaN.</summary>
internal static class Demand
{
    internal static double Within(double value, double least, double most, string name, string unit) =>
        value >= least && value <= most
            ? value
            : throw new ArgumentOutOfRangeException(
                name,
                value,
                string.Create(CultureInfo.InvariantCulture, $"{name} must be {least:R} to {most:R} {unit}")
                    .TrimEnd() + "."
            );

    internal static double Positive(double value, string name, string unit) =>
        value > 0 && double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(
                name,
                value,
                $"{name} must be above 0 {unit}".TrimEnd() + "."
            );

    internal static double TemperatureC(double value, string name) => Within(value, -100, 200, name, "°C");

    internal static double NotNegative(double value, string name, string unit) =>
        value >= 0 && double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(
                name,
                value,
                $"{name} must be 0 {unit} or more".TrimEnd() + "."
            );

    internal static void NoneNegative(ReadOnlySpan<double> values, string name, string unit)
    {
        foreach (double value in values)
        {
            NotNegative(value, name, unit);
        }
    }

    internal static void Length(int length, int wanted, string name)
    {
        if (length != wanted)
        {
            throw new ArgumentException($"{name} holds {length} numbers; {wanted} are needed.", name);
        }
    }
}
