using GlowMix.Afterglow;
using GlowMix.Materials;

namespace GlowMix.Predictions;

/// <summary>
/// The ladder of a decay reading. Rungs slower than the reading told rest on the pigment's sheet, and follow the sheet's smoothing.
/// Immutable.
/// </summary>
internal sealed class MeasuredLadder
{
    private const double SecondsPerMinute = 60;

    private readonly Pigment pigment;
    private readonly MeasuredTraps traps;
    private readonly double[] logSmoothings;
    private readonly double[][] logRatios;

    /// <param name="pigment">A pigment with a ladder of its own, and the one on the shelf that it was calibrated from.</param>
    /// <param name="sheetLadderAt">The ladder behind the shelf's sheet, by smoothing; null where the sheet cannot be met.</param>
    public MeasuredLadder(Pigment pigment, Func<double, TrapLadder?> sheetLadderAt)
    {
        this.pigment = pigment;
        traps = pigment.Traps!;
        var likely = sheetLadderAt(LadderFit.LikelySmoothing);
        var nodes = Variation
            .Smoothings.Select(s => (Log: Math.Log(s), Ladder: sheetLadderAt(s)))
            .Where(n => n.Ladder is not null)
            .ToArray();
        logSmoothings = [.. nodes.Select(n => n.Log)];
        logRatios =
        [
            .. nodes.Select(n =>
                Enumerable
                    .Range(0, TrapLadder.RungCount)
                    .Select(k => LogRatio(k, n.Ladder!, likely))
                    .ToArray()
            ),
        ];
    }

    /// <summary>The ladder.</summary>
    /// <param name="trapsPerG">All traps; those of the reading, or what a draw takes for them.</param>
    /// <param name="smoothing">Of the sheet's fit.</param>
    /// <param name="lean">By which it leans more than it was read to, decades from its middle to its slowest rung.</param>
    /// <param name="trappingFactor">On its trapping efficiency.</param>
    public TrapLadder At(double trapsPerG, double smoothing, double lean = 0, double trappingFactor = 1)
    {
        double perMm3 = pigment.DensityGPerCm3.Value / 1000 * trapsPerG / traps.PerG.Sum();
        double[] weights = WeightsAt(Math.Log(smoothing));
        var rungs = new double[TrapLadder.RungCount];
        for (int k = 0; k < rungs.Length; k++)
        {
            double log = 0;
            for (int n = 0; n < weights.Length; n++)
            {
                log += weights[n] * logRatios[n][k];
            }
            rungs[k] = traps.PerG[k] * perMm3 * Math.Exp(log) * Leaning(k, lean);
        }
        return new(
            rungs,
            Math.Min(1, trappingFactor * traps.TrappingEfficiencyAt20C),
            LadderShelf.ConstantsOf(pigment)
        );
    }

    private double Leaning(int rung, double lean) =>
        lean != 0 && traps.MiddleMinutes is double middle ? TrapLadder.Leaning(rung, lean, middle) : 1;

    private double LogRatio(int rung, TrapLadder other, TrapLadder? likely)
    {
        bool isTold = TrapLadder.RateAt20CPerS(rung) * SecondsPerMinute * traps.ReachesMinutes >= 1;
        return isTold || likely is null || likely.TrapsPerMm3[rung] <= 0 || other.TrapsPerMm3[rung] <= 0
            ? 0
            : Math.Log(other.TrapsPerMm3[rung] / likely.TrapsPerMm3[rung]);
    }

    // Lagrange's parabola through the bounding smoothings; 1 at a node, and no further out than they are.
    private double[] WeightsAt(double log)
    {
        var weights = new double[logSmoothings.Length];
        if (weights.Length == 0)
        {
            return weights;
        }
        double at = Math.Clamp(log, logSmoothings[0], logSmoothings[^1]);
        for (int i = 0; i < weights.Length; i++)
        {
            weights[i] = 1;
            for (int j = 0; j < weights.Length; j++)
            {
                if (j != i)
                {
                    weights[i] *= (at - logSmoothings[j]) / (logSmoothings[i] - logSmoothings[j]);
                }
            }
        }
        return weights;
    }
}
