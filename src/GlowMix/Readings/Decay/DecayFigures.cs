using System.Collections.Immutable;
using GlowMix.Predictions;

namespace GlowMix.Readings.Decay;

/// <summary>What a decay reading says: how steeply the glow falls, and when it reaches the limit of the marking standards.</summary>
public sealed record DecayFigures
{
    /// <summary>'Visible' of the marking standards, mcd/m².</summary>
    public const double LimitMcdPerM2 = 0.3;

    private const int LeastForExponent = 3;
    private const int LeastForLate = 4;

    private DecayFigures(DecayReading reading)
    {
        Reading = reading;
        Usable = [.. Enumerable.Range(0, reading.Minutes.Length).Where(reading.IsUsable)];
        TooFewSteps = Enumerable
            .Range(0, reading.Minutes.Length)
            .Count(i => reading.Minutes[i] > 0 && !reading.IsUsable(i));
        (Exponent, ExponentError) = Slope(Usable);
        (MinutesToLimit, IsExtrapolated) = ToLimit();
        Warnings = [.. reading.Warnings, .. Found()];
    }

    /// <summary>The reading.</summary>
    public DecayReading Reading { get; }

    /// <summary>Indices of the readings that are used: in the dark, with 5 display steps or more.</summary>
    public ImmutableArray<int> Usable { get; }

    /// <summary>How many are left out because the display shows too little.</summary>
    public int TooFewSteps { get; }

    /// <summary>n of L ∝ t⁻ⁿ through the usable readings; null for fewer than three.</summary>
    public double? Exponent { get; }

    /// <summary>Its standard error; null for fewer than three.</summary>
    public double? ExponentError { get; }

    /// <summary>Minutes to 0.3 mcd/m²; 0 if never above; null for relative readings, or too few.</summary>
    public double? MinutesToLimit { get; }

    /// <summary>The limit lies beyond the last usable reading, along the line of the last ones.</summary>
    public bool IsExtrapolated { get; }

    /// <summary>Least luminance that the meter can tell by this geometry, mcd/m²; null where not known.</summary>
    public double? LeastMcdPerM2 =>
        Reading is { Unit: DecayUnit.McdPerM2, DisplayStep: > 0 }
            ? DecayReading.LeastSteps * Reading.DisplayStep
            : null;

    /// <summary>The reading's own, then those of its figures.</summary>
    public ImmutableArray<Warning> Warnings { get; }

    /// <summary>Works them out.</summary>
    public static DecayFigures Of(DecayReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return new(reading);
    }

    // Least squares in the logarithms of both.
    private (double? Exponent, double? Error) Slope(IReadOnlyList<int> points)
    {
        if (points.Count < LeastForExponent)
        {
            return (null, null);
        }
        double[] x = [.. points.Select(i => Math.Log(Reading.Minutes[i]))];
        double[] y = [.. points.Select(i => Math.Log(Reading.Values[i]))];
        double meanX = x.Average();
        double spread = x.Sum(v => (v - meanX) * (v - meanX));
        if (spread <= 0)
        {
            return (null, null);
        }
        var (intercept, slope) = MathNet.Numerics.Fit.Line(x, y);
        double squares = x.Zip(y, (a, b) => Math.Pow(b - intercept - (slope * a), 2)).Sum();
        return (-slope, Math.Sqrt(squares / (points.Count - 2) / spread));
    }

    private (double? Minutes, bool IsExtrapolated) ToLimit()
    {
        if (Reading.Unit != DecayUnit.McdPerM2 || Usable.Length == 0)
        {
            return (null, false);
        }
        int last = Usable.LastOrDefault(i => Reading.Values[i] >= LimitMcdPerM2, -1);
        if (last < 0)
        {
            return (0, false);
        }
        int at = Usable.IndexOf(last);
        if (at + 1 < Usable.Length)
        {
            int next = Usable[at + 1];
            double share =
                Math.Log(Reading.Values[last] / LimitMcdPerM2)
                / Math.Log(Reading.Values[last] / Reading.Values[next]);
            return (
                Reading.Minutes[last] * Math.Pow(Reading.Minutes[next] / Reading.Minutes[last], share),
                false
            );
        }
        int[] late = [.. Usable.TakeLast(LeastForLate)];
        return Slope(late).Exponent is > 0 and var exponent
            ? (Reading.Minutes[last] * Math.Pow(Reading.Values[last] / LimitMcdPerM2, 1 / exponent), true)
            : (null, false);
    }

    private IEnumerable<Warning> Found()
    {
        if (Reading.Unit == DecayUnit.Lux)
        {
            yield return new(
                "geometry_missing",
                null,
                "lux are no luminance; say how the meter looked with --geometry, until then only the course of the decay counts"
            );
        }
        if (TooFewSteps > 0)
        {
            string floor = LeastMcdPerM2 is { } least
                ? ReadingTexts.Invariant($" This meter tells {least:0.##} mcd/m² at least.")
                : "";
            yield return new(
                "too_few_steps",
                null,
                ReadingTexts.Invariant(
                    $"{TooFewSteps} of the readings in the dark {(TooFewSteps == 1 ? "is" : "are")} too few to use; under {DecayReading.LeastSteps:0} steps of the display, left out.{floor}"
                )
            );
        }
        if (Usable.Length < LeastForExponent)
        {
            yield return new(
                "few_readings",
                null,
                ReadingTexts.Invariant(
                    $"{Usable.Length} usable {(Usable.Length == 1 ? "reading" : "readings")} in the dark; three or more make an exponent"
                )
            );
        }
        if (IsExtrapolated)
        {
            yield return new(
                "extrapolated",
                "minutes_to_0_3_mcd_m2",
                ReadingTexts.Invariant(
                    $"0.3 mcd/m² lies beyond the last usable reading at {Reading.Minutes[Usable[^1]]:0.#} min; the time follows the line of the last {Math.Min(LeastForLate, Usable.Length)}"
                )
            );
        }
    }
}
