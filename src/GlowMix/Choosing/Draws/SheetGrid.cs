using System.Collections.Immutable;
using GlowMix.Afterglow;
using GlowMix.Materials;
using GlowMix.Predictions;

namespace GlowMix.Choosing.Draws;

/// <summary>
/// What the sample of a pigment's sheet absorbs and sends out, for any strength of the pigment's absorption, any index and yield
/// near its own: interpolated between samples that were solved, in the logarithm. Immutable.
/// </summary>
/// <remarks>
/// A lattice of strengths and yields, since how often light is taken back and sent out again depends on both, and on top of it
/// one of strengths and indices. Resin, backing and lamp of the sample are taken as the sheet tells them.
/// </remarks>
internal sealed class SheetGrid
{
    private const double Reach = 1.2;
    private const double LeastYield = 0.01;

    private readonly SolvedSheet own;
    private readonly double[] logAbsorptions;
    private readonly double[] logYields;
    private readonly double[] fewLogAbsorptions;
    private readonly double[] indexShifts;
    private readonly Logs absorbed;
    private readonly Logs sentOut;

    /// <param name="sample">The sheet's sample.</param>
    /// <param name="sheets">Who solves it.</param>
    /// <param name="grains">Of the pigment's own size in the sample's resin.</param>
    public SheetGrid(SheetSample sample, PigmentSheets sheets, GrainGrid grains)
    {
        var pigment = sample.Pigment;
        double a = Reach * Math.Log(pigment.AbsorptionPerMm.Doubt.HighOf(1));
        logAbsorptions = Apart(-a, -a / 2, 0, a / 2, a);
        fewLogAbsorptions = Apart(-a, 0, a);
        double yield = pigment.PhotoluminescenceYield.Value;
        var (lowYield, highYield) = EndsOf(pigment.PhotoluminescenceYield.Doubt, yield);
        logYields = Apart(
            Math.Log(Math.Max(LeastYield, lowYield)),
            Math.Log(yield),
            Math.Log(Math.Min(1, highYield))
        );
        var index = pigment.RefractiveIndex;
        double lineD = IndexDoubt.AtLineD(index.Value);
        var (lowIndex, highIndex) = EndsOf(index.Doubt, lineD);
        indexShifts = Apart(lowIndex - lineD, (lowIndex - lineD) / 2, 0, highIndex - lineD);
        own = SolveAt(0, 0, Math.Log(yield));
        var byStrengthAndYield = Lattice(logAbsorptions, logYields, (x, y) => SolveAt(x, 0, y));
        var byStrengthAndIndex = Lattice(
            fewLogAbsorptions,
            indexShifts,
            (x, shift) => SolveAt(x, shift, Math.Log(yield))
        );
        ImmutableArray<SolvedSheet> byStrength =
        [
            .. fewLogAbsorptions.Select(
                (_, i) => byStrengthAndIndex[(i * indexShifts.Length) + Array.IndexOf(indexShifts, 0)]
            ),
        ];
        absorbed = LogsOf(s => s.AbsorbedPerSMm3);
        sentOut = LogsOf(s => s.McdM2PerPhotonPerSMm3);

        Logs LogsOf(Func<SolvedSheet, ImmutableArray<double>> part) =>
            new(
                part(own),
                [.. byStrengthAndYield.Select(part)],
                [.. byStrengthAndIndex.Select(part)],
                [.. byStrength.Select(part)]
            );

        SolvedSheet SolveAt(double logFactor, double shift, double logYield) =>
            sheets.Solve(
                sample,
                grains
                    .At(
                        Math.Exp(logFactor),
                        IndexDoubt.Shifted(index.Value, shift),
                        sample.Resin.RefractiveIndex.Value
                    )
                    .Whole,
                Math.Exp(logYield)
            );
    }

    /// <summary>The sheet of a pigment of other numbers.</summary>
    /// <param name="absorptionFactor">On its absorption.</param>
    /// <param name="indexShift">On its index.</param>
    /// <param name="yield">In place of its yield.</param>
    /// <param name="capacityPerMm3">In place of its trap capacity.</param>
    public SolvedSheet At(double absorptionFactor, double indexShift, double yield, double capacityPerMm3)
    {
        double logFactor = Math.Log(absorptionFactor);
        double[] few = WeightsAt(fewLogAbsorptions, logFactor);
        double[] ofYields = Products(
            WeightsAt(logAbsorptions, logFactor),
            WeightsAt(logYields, Math.Log(yield))
        );
        double[] ofIndices = Products(few, WeightsAt(indexShifts, indexShift));
        return new(
            own.Points,
            own.ChargeMinutes,
            own.TemperatureC,
            absorbed.At(ofYields, ofIndices, few),
            sentOut.At(ofYields, ofIndices, few),
            capacityPerMm3
        );
    }

    private static ImmutableArray<SolvedSheet> Lattice(
        double[] first,
        double[] second,
        Func<double, double, SolvedSheet> solve
    ) => [.. first.SelectMany(x => second.Select(y => solve(x, y)))];

    private static double[] WeightsAt(double[] nodes, double at)
    {
        var weights = new double[nodes.Length];
        Lagrange.Weights(nodes, at, weights);
        return weights;
    }

    private static double[] Products(double[] first, double[] second) =>
        [.. first.SelectMany(x => second.Select(y => x * y))];

    private static (double Low, double High) EndsOf(Doubt doubt, double value) =>
        (value + (Reach * (doubt.LowOf(value) - value)), value + (Reach * (doubt.HighOf(value) - value)));

    // One node where a number is not in doubt.
    private static double[] Apart(params double[] nodes) => [.. nodes.Distinct()];

    /// <summary>One number a depth: of the sheet as it stands, and how the lattices stand to it.</summary>
    private sealed class Logs(
        ImmutableArray<double> own,
        ImmutableArray<ImmutableArray<double>> byStrengthAndYield,
        ImmutableArray<ImmutableArray<double>> byStrengthAndIndex,
        ImmutableArray<ImmutableArray<double>> byStrength
    )
    {
        private readonly double[][] byStrengthAndYield = RatiosTo(own, byStrengthAndYield);
        private readonly double[][] byStrengthAndIndex = RatiosTo(own, byStrengthAndIndex);
        private readonly double[][] byStrength = RatiosTo(own, byStrength);

        public ImmutableArray<double> At(double[] ofYields, double[] ofIndices, double[] few) =>
            [
                .. own.Select(
                    (value, depth) =>
                        value > 0
                            ? value
                                * Math.Exp(
                                    Sum(byStrengthAndYield, ofYields, depth)
                                        + Sum(byStrengthAndIndex, ofIndices, depth)
                                        - Sum(byStrength, few, depth)
                                )
                            : 0
                ),
            ];

        private static double Sum(double[][] logs, double[] weights, int depth)
        {
            double sum = 0;
            for (int n = 0; n < weights.Length; n++)
            {
                sum += weights[n] * logs[n][depth];
            }
            return sum;
        }

        private static double[][] RatiosTo(
            ImmutableArray<double> own,
            ImmutableArray<ImmutableArray<double>> nodes
        ) => [.. nodes.Select(node => node.Zip(own, (value, o) => Math.Log(value / o)).ToArray())];
    }
}
