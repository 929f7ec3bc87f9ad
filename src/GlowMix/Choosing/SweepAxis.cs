using System.Collections.Immutable;
using System.Globalization;

namespace GlowMix.Choosing;

/// <summary>A key of a recipe and the numbers it is given one after the other.</summary>
/// <param name="KeyPath">The key, as the user wrote it or in full.</param>
/// <param name="Values">Rising, at least two, in the unit the key ends in.</param>
public sealed record SweepAxis(string KeyPath, ImmutableArray<double> Values)
{
    /// <summary>The most values a key can take in a sweep.</summary>
    public const int MostValues = 1000;

    private const int SignificantDigits = 12;

    /// <summary>Why so many values from one number to another make no sweep, or null if they do.</summary>
    public static string? ProblemOf(double from, double to, double count) =>
        !double.IsFinite(from) || !double.IsFinite(to) || !double.IsFinite(to - from)
            ? SweepTexts.EndsNotFinite
        : from >= to ? SweepTexts.RangeEnds(from, to)
        : !(count >= 2 && count <= MostValues && count == Math.Floor(count)) ? SweepTexts.ValueCount(count)
        : null;

    /// <summary>Evenly spaced values, both ends among them.</summary>
    /// <param name="keyPath">The key.</param>
    /// <param name="from">First value.</param>
    /// <param name="to">Last value, above the first.</param>
    /// <param name="count">How many, 2 to <see cref="MostValues"/>.</param>
    /// <exception cref="ArgumentException">See <see cref="ProblemOf"/>.</exception>
    public static SweepAxis Evenly(string keyPath, double from, double to, int count)
    {
        ArgumentException.ThrowIfNullOrEmpty(keyPath);
        if (ProblemOf(from, to, count) is { } problem)
        {
            throw new ArgumentException(problem, nameof(to));
        }
        return new(
            keyPath,
            [
                .. Enumerable
                    .Range(0, count)
                    .Select(i =>
                        i == count - 1 ? to : InShort(from + ((to - from) * i / (count - 1)), to - from)
                    ),
            ]
        );
    }

    // 0.1 + 0.2 is 0.30000000000000004, and would stand so in every table.
    private static double InShort(double value, double span)
    {
        int decimals = SignificantDigits - 1 - (int)Math.Floor(Math.Log10(Math.Max(Math.Abs(value), span)));
        return decimals is < 0 or > 28
            ? value
            : double.Parse(
                value.ToString($"F{decimals}", CultureInfo.InvariantCulture),
                CultureInfo.InvariantCulture
            );
    }
}
