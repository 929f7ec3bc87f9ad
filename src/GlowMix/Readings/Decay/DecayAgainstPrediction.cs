using System.Collections.Immutable;
using GlowMix.Predictions;

namespace GlowMix.Readings.Decay;

/// <summary>Readings of a glow beside the predicted decay.</summary>
public sealed record DecayAgainstPrediction
{
    private const int LeastForCause = 3;
    private const double LeastExplained = 0.5;
    private const double LeastLog = 0.05;

    private DecayAgainstPrediction(DecayFigures figures, Prediction prediction, DecayCurve curve)
    {
        Prediction = prediction;
        DecayReading reading = figures.Reading;
        double scale = 1;
        if (reading.Unit != DecayUnit.McdPerM2)
        {
            // Of relative readings only the course counts: made equal in the mean of the logarithms.
            double[] logs =
            [
                .. figures
                    .Usable.Where(i => IsWithin(curve, reading.Minutes[i]))
                    .Select(i =>
                        Math.Log(At(curve, curve.LikelyMcdPerM2, reading.Minutes[i]) / reading.Values[i])
                    )
                    .Where(double.IsFinite),
            ];
            scale = logs.Length > 0 ? Math.Exp(logs.Average()) : 1;
        }
        IsRelative = reading.Unit != DecayUnit.McdPerM2;
        Points =
        [
            .. figures
                .Usable.Where(i => IsWithin(curve, reading.Minutes[i]))
                .Select(i => new DecayPointAgainst(
                    reading.Minutes[i],
                    scale * reading.Values[i],
                    new(
                        At(curve, curve.LowMcdPerM2, reading.Minutes[i]),
                        At(curve, curve.LikelyMcdPerM2, reading.Minutes[i]),
                        At(curve, curve.HighMcdPerM2, reading.Minutes[i])
                    )
                ))
                .Where(p => p.Band.Likely > 0),
        ];
        Cause = Explained();
    }

    /// <summary>What was predicted.</summary>
    public Prediction Prediction { get; }

    /// <summary>Usable readings within the predicted times.</summary>
    public ImmutableArray<DecayPointAgainst> Points { get; }

    /// <summary>The readings are relative and were scaled to the prediction's level: only the course is compared.</summary>
    public bool IsRelative { get; }

    /// <summary>What would explain the differences best, in words; null where nothing stands out.</summary>
    public string? Cause { get; }

    /// <summary>Puts readings beside a prediction; null for a piece without glow.</summary>
    public static DecayAgainstPrediction? Of(DecayFigures figures, Prediction prediction)
    {
        ArgumentNullException.ThrowIfNull(figures);
        ArgumentNullException.ThrowIfNull(prediction);
        return prediction.Decay is { } curve ? new(figures, prediction, curve) : null;
    }

    private string? Explained()
    {
        if (Points.Length < LeastForCause)
        {
            return null;
        }
        double[] x = [.. Points.Select(p => Math.Log(p.Minutes))];
        double[] y = [.. Points.Select(p => Math.Log(p.Factor))];
        double all = y.Sum(v => v * v);
        if (Math.Sqrt(all / y.Length) < LeastLog)
        {
            return "none needed: the readings follow the prediction within 5 %";
        }
        double mean = y.Average();
        double afterLevel = y.Sum(v => (v - mean) * (v - mean));
        var (at1Min, slope) = MathNet.Numerics.Fit.Line(x, y);
        double afterSlope = x.Zip(y, (a, b) => Math.Pow(b - at1Min - (slope * a), 2)).Sum();
        if (!IsRelative && afterLevel <= (1 - LeastExplained) * all)
        {
            return ReadingTexts.Invariant(
                $"one factor of {Math.Exp(mean):0.00} on all of them: {(mean < 0 ? "fewer traps, less pigment or a weaker charge than assumed, or less of the sensor covered" : "more traps, more pigment or a stronger charge than assumed, or other light on the sensor")}"
            );
        }
        return afterSlope <= (1 - LeastExplained) * afterLevel
            ? ReadingTexts.Invariant(
                $"a glow that falls {(slope < 0 ? "faster" : "slower")} than predicted, by t^{slope:+0.00;-0.00}: another spread of the traps, or a {(slope < 0 ? "warmer" : "colder")} charge or darkness"
            )
            : null;
    }

    private static bool IsWithin(DecayCurve curve, double minutes) =>
        minutes >= curve.Minutes[0] && minutes <= curve.Minutes[^1];

    // On straight lines in the logarithms of both.
    private static double At(DecayCurve curve, IReadOnlyList<double> values, double minutes)
    {
        int after = 1;
        while (after < curve.Minutes.Count - 1 && curve.Minutes[after] < minutes)
        {
            after++;
        }
        double share =
            Math.Log(minutes / curve.Minutes[after - 1])
            / Math.Log(curve.Minutes[after] / curve.Minutes[after - 1]);
        double left = values[after - 1];
        double right = values[after];
        return left > 0 && right > 0 ? left * Math.Pow(right / left, share) : double.Lerp(left, right, share);
    }
}
