using GlowMix.Spectra;

namespace GlowMix.Readings.Files;

/// <summary>How the numbers of a column follow each other: whether they could be wavelengths or times.</summary>
internal readonly record struct NumberSequence
{
    private NumberSequence(double[] numbers)
    {
        int up = 0;
        int down = 0;
        int pairs = 0;
        for (int i = 1; i < numbers.Length; i++)
        {
            up += numbers[i] > numbers[i - 1] ? 1 : 0;
            down += numbers[i] < numbers[i - 1] ? 1 : 0;
            pairs++;
        }
        IsDescending = down > up;
        int breaks = Math.Min(up, down);
        int moves = Math.Max(up, down);
        int allowed = numbers.Length < 8 ? 0 : (int)Math.Max(1, 0.02 * pairs);
        IsOrdered = moves > 0 && breaks <= allowed && moves >= (breaks == 0 ? 0.15 : 0.4) * pairs;
        double[] sorted = [.. numbers];
        Array.Sort(sorted, Ascending.Order);
        // A header's number or two among the rows must not decide.
        int cut = numbers.Length >= 30 ? 2 : 0;
        Least = sorted.Length > 0 ? sorted[cut] : double.NaN;
        Most = sorted.Length > 0 ? sorted[^(1 + cut)] : double.NaN;
        IsConstant = sorted.Length > 0 && sorted[0] == sorted[^1];
        Unevenness = UnevennessOf(numbers, IsDescending ? -1 : 1);
        IsRunningNumber = IsOrdered && AreSteppedByOne(numbers);
    }

    /// <summary>They rise or fall throughout, but for a slip or two; equal neighbours count as neither.</summary>
    public bool IsOrdered { get; }

    /// <summary>They fall.</summary>
    public bool IsDescending { get; }

    /// <summary>Least of them, without a stray or two in long columns.</summary>
    public double Least { get; }

    /// <summary>Greatest of them.</summary>
    public double Most { get; }

    /// <summary>All are the same.</summary>
    public bool IsConstant { get; }

    /// <summary>Whole numbers in steps of exactly 1, but for a row or two that are missing in long columns.</summary>
    public bool IsRunningNumber { get; }

    /// <summary>Standard deviation of the steps over their mean; 0 for an even scale.</summary>
    public double Unevenness { get; }

    /// <summary>Of a column.</summary>
    public static NumberSequence Of(double[] numbers) => new(numbers);

    private static bool AreSteppedByOne(double[] numbers)
    {
        const double MostGaps = 0.05;
        int gaps = 0;
        for (int i = 1; i < numbers.Length; i++)
        {
            double step = Math.Abs(numbers[i] - numbers[i - 1]);
            if (step != Math.Floor(step))
            {
                return false;
            }
            gaps += step > 1 ? 1 : 0;
        }
        return numbers[0] == Math.Floor(numbers[0]) && gaps <= MostGaps * numbers.Length;
    }

    // Deviation of the steps that go the column's way over their mean; equal neighbours make none.
    private static double UnevennessOf(double[] numbers, int sign)
    {
        double sum = 0;
        double squares = 0;
        int steps = 0;
        for (int i = 1; i < numbers.Length; i++)
        {
            double step = sign * (numbers[i] - numbers[i - 1]);
            if (step > 0)
            {
                sum += step;
                squares += step * step;
                steps++;
            }
        }
        if (steps == 0)
        {
            return double.PositiveInfinity;
        }
        double mean = sum / steps;
        return Math.Sqrt(Math.Max(0, (squares / steps) - (mean * mean))) / mean;
    }
}
