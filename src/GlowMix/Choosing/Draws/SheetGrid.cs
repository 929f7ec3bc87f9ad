using System.Collections.Immutable;
using GlowMix.Afterglow;
using GlowMix.Predictions;

namespace GlowMix.Choosing.Draws;

/// <summary>
/// What the sample of a pigment's sheet absorbs and sends out, for any strength of the pigment's absorption, any index and yield
/// near its own: the logarithms follow parabolas, one for each of the three, through samples that were solved. Immutable.
/// </summary>
/// <remarks>Resin, backing and lamp of the sample are taken as the sheet tells them: their doubt is the reading's of whoever made the sheet.</remarks>
internal sealed class SheetGrid
{
    private const double Reach = 1.2;
    private const double LeastYield = 0.01;

    private readonly SolvedSheet own;
    private readonly double ownYield;
    private readonly Axis absorption;
    private readonly Axis index;
    private readonly Axis yield;

    /// <param name="sample">The sheet's sample.</param>
    /// <param name="sheets">Who solves it.</param>
    /// <param name="grains">Of the pigment's own size in the sample's resin.</param>
    public SheetGrid(SheetSample sample, PigmentSheets sheets, GrainGrid grains)
    {
        var pigment = sample.Pigment;
        var ownIndex = pigment.RefractiveIndex.Value;
        ownYield = pigment.PhotoluminescenceYield.Value;
        double logAbsorption = Reach * Math.Log(pigment.AbsorptionPerMm.Doubt.HighOf(1));
        double lineD = IndexDoubt.AtLineD(ownIndex);
        var doubt = pigment.RefractiveIndex.Doubt;
        var doubtOfYield = pigment.PhotoluminescenceYield.Doubt;
        own = SolveAt(0, 0, ownYield);
        absorption = Axis.Of(Spaced(logAbsorption, -logAbsorption, 5), x => SolveAt(x, 0, ownYield));
        index = Axis.Of(
            [Reach * (doubt.LowOf(lineD) - lineD), 0, Reach * (doubt.HighOf(lineD) - lineD)],
            x => SolveAt(0, x, ownYield)
        );
        yield = Axis.Of(
            [
                Math.Max(LeastYield, ownYield + (Reach * (doubtOfYield.LowOf(ownYield) - ownYield))),
                ownYield,
                Math.Min(1, ownYield + (Reach * (doubtOfYield.HighOf(ownYield) - ownYield))),
            ],
            x => SolveAt(0, 0, x)
        );

        SolvedSheet SolveAt(double logFactor, double shift, double ofYield) =>
            sheets.Solve(
                sample,
                grains
                    .At(
                        Math.Exp(logFactor),
                        IndexDoubt.Shifted(ownIndex, shift),
                        sample.Resin.RefractiveIndex.Value
                    )
                    .Whole,
                ofYield
            );
    }

    /// <summary>The sheet of a pigment of other numbers.</summary>
    /// <param name="absorptionFactor">On its absorption.</param>
    /// <param name="indexShift">On its index.</param>
    /// <param name="withYield">In place of its yield.</param>
    /// <param name="capacityPerMm3">In place of its trap capacity.</param>
    public SolvedSheet At(double absorptionFactor, double indexShift, double withYield, double capacityPerMm3)
    {
        (Axis Axis, double At)[] turned =
        [
            (absorption, Math.Log(absorptionFactor)),
            (index, indexShift),
            (yield, withYield),
        ];
        return new(
            own.Points,
            own.ChargeMinutes,
            own.TemperatureC,
            Turned(own.AbsorbedPerSMm3, s => s.AbsorbedPerSMm3),
            Turned(own.McdM2PerPhotonPerSMm3, s => s.McdM2PerPhotonPerSMm3),
            capacityPerMm3
        );

        ImmutableArray<double> Turned(
            ImmutableArray<double> values,
            Func<SolvedSheet, ImmutableArray<double>> part
        )
        {
            var logs = new double[values.Length];
            foreach (var (axis, at) in turned)
            {
                axis.AddLogRatios(logs, at, values, part);
            }
            return [.. values.Select((v, i) => v * Math.Exp(logs[i]))];
        }
    }

    private static double[] Spaced(double high, double low, int count) =>
        [.. Enumerable.Range(0, count).Select(i => low + ((high - low) * i / (count - 1)))];

    /// <summary>Samples solved along one number; nothing where that number is not in doubt.</summary>
    private sealed record Axis(double[] Nodes, ImmutableArray<SolvedSheet> Sheets)
    {
        public static Axis Of(double[] nodes, Func<double, SolvedSheet> solve) =>
            nodes[^1] > nodes[0] && nodes.Distinct().Count() == nodes.Length
                ? new(nodes, [.. nodes.Select(solve)])
                : new([], []);

        public void AddLogRatios(
            double[] logs,
            double at,
            ImmutableArray<double> own,
            Func<SolvedSheet, ImmutableArray<double>> part
        )
        {
            if (Nodes.Length == 0)
            {
                return;
            }
            var weights = new double[Nodes.Length];
            Lagrange.Weights(Nodes, at, weights);
            for (int i = 0; i < logs.Length; i++)
            {
                for (int n = 0; n < weights.Length && own[i] > 0; n++)
                {
                    logs[i] += weights[n] * Math.Log(part(Sheets[n])[i] / own[i]);
                }
            }
        }
    }
}
