using System.Collections.Immutable;
using GlowMix.Afterglow;
using GlowMix.Predictions;
using MathNet.Numerics.Statistics;

namespace GlowMix.Choosing.Draws;

/// <summary>The draws of a piece, and what they say of each figure. Immutable.</summary>
internal sealed class DrawTable
{
    /// <summary>Share of the draws below a band, and above it.</summary>
    public const double Tail = 0.1;

    private const ulong Seed = 20_080_906;

    private readonly ImmutableArray<DoubtfulNumber> numbers;
    private readonly ImmutableArray<(double[] Point, Draw Draw)> kept;

    private DrawTable(
        ImmutableArray<DoubtfulNumber> numbers,
        ImmutableArray<(double[] Point, Draw Draw)> kept,
        ImmutableArray<Draw?> all
    ) => (this.numbers, this.kept, All) = (numbers, kept, all);

    /// <summary>Every draw in order; null for one that is left out.</summary>
    public ImmutableArray<Draw?> All { get; }

    /// <summary>Nothing is in doubt, and nothing was drawn.</summary>
    public bool IsEmpty => numbers.IsEmpty;

    /// <summary>Whether draws tell a figure: those of light and glow, but not the split of the shift by cause.</summary>
    public static bool Holds(Figure figure) =>
        figure.Name.StartsWith("bare.", StringComparison.Ordinal)
        || figure.Name.StartsWith("afterglow.", StringComparison.Ordinal)
        || (
            figure.Name.StartsWith("lit.", StringComparison.Ordinal)
            && !figure.Name.StartsWith("lit.shift_by_cause_", StringComparison.Ordinal)
        );

    /// <summary>Draws that count.</summary>
    public int Count => kept.Length;

    /// <summary>Draws left out: their pigment could not have given its own sheet.</summary>
    public int RefusedCount => All.Count(d => d is null);

    /// <summary>Draws a piece.</summary>
    /// <param name="bench">The piece.</param>
    /// <param name="count">How many draws, 1 or more; powers of two are the most even.</param>
    /// <param name="cores">How many cores to use, null for all; the draws are the same.</param>
    /// <param name="done">Told how many are done, from any thread; may be null.</param>
    /// <param name="stop">Ends the run.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static DrawTable Of(
        DrawBench bench,
        int count,
        int? cores = null,
        Action<int>? done = null,
        CancellationToken stop = default
    )
    {
        return At(bench, bench.Numbers.IsEmpty ? [] : PointsFor(bench, count), cores, done, stop);
    }

    /// <summary>Where a piece is drawn: the same for the same counts.</summary>
    /// <param name="dimensions">Numbers in doubt, 1 or more; the points of the first few are those of a piece with only them.</param>
    /// <param name="count">How many draws.</param>
    public static double[][] Points(int dimensions, int count)
    {
        var sequence = SobolPoints.Scrambled(dimensions, Seed);
        return [.. Enumerable.Range(0, count).Select(sequence.Point)];
    }

    /// <summary>Draws a piece at given points.</summary>
    /// <param name="bench">The piece.</param>
    /// <param name="points">A share above 0 and below 1 for each of its numbers in doubt.</param>
    /// <param name="cores">How many cores to use, null for all; the draws are the same.</param>
    /// <param name="done">Told how many are done, from any thread; may be null.</param>
    /// <param name="stop">Ends the run.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static DrawTable At(
        DrawBench bench,
        double[][] points,
        int? cores = null,
        Action<int>? done = null,
        CancellationToken stop = default
    )
    {
        if (bench.Numbers.IsEmpty)
        {
            return new([], [], []);
        }
        int count = points.Length;
        bench.Prepare(points);
        var draws = new Draw?[count];
        int finished = 0;
        Parallel.For(
            0,
            count,
            new ParallelOptions { CancellationToken = stop, MaxDegreeOfParallelism = cores ?? -1 },
            i =>
            {
                draws[i] = bench.Run(points[i]);
                done?.Invoke(Interlocked.Increment(ref finished));
            }
        );
        var kept = points.Zip(draws).Where(d => d.Second is not null).Select(d => (d.First, d.Second!));
        return new(bench.Numbers, [.. kept], [.. draws]);
    }

    /// <summary>The points that a piece is drawn at: the same for every use of the same piece.</summary>
    public static double[][] PointsFor(DrawBench bench, int count)
    {
        return Points(Math.Max(1, bench.Numbers.Length), count);
    }

    /// <summary>Every draw that counts, in order.</summary>
    public IEnumerable<Draw> Draws => kept.Select(k => k.Draw);

    /// <summary>The glow after one of the bench's other charges in every draw that counts, in order.</summary>
    public GlowCurve[] GlowsAfter(int charge) => [.. Draws.Select(d => d.Glows[charge])];

    /// <summary>A figure in every draw that counts, in order.</summary>
    public IReadOnlyList<double?> Of(Figure figure) => [.. kept.Select(d => d.Draw.Figures[figure])];

    /// <summary>
    /// From 10 to 90 % of the draws where the figure exists. The likely figure never lies outside: where doubt is one-sided, as of
    /// light that a lamp's table leaves out, most draws lie on one side of it.
    /// </summary>
    /// <returns>Null where no draw, or no likely run, has the figure.</returns>
    public Band? BandOf(Figure figure, double? likely)
    {
        double[] sorted = [.. Of(figure).OfType<double>().Order()];
        return sorted.Length == 0 || likely is not double l ? null : Around(sorted, l);
    }

    /// <summary>The decay with its band.</summary>
    public DecayCurve? DecayOf(DecayCurve? likely)
    {
        if (likely is null || kept.IsEmpty)
        {
            return likely;
        }
        Band[] bands =
        [
            .. likely.LikelyMcdPerM2.Select(
                (l, i) => Around([.. kept.Select(d => d.Draw.LuminancesMcdPerM2![i]).Order()], l)
            ),
        ];
        return likely with
        {
            LowMcdPerM2 = [.. bands.Select(b => b.Low!.Value)],
            HighMcdPerM2 = [.. bands.Select(b => b.High!.Value)],
        };
    }

    /// <summary>
    /// The cause whose numbers a figure follows most, by the square of the rank correlation, added up over its numbers; null if it
    /// follows none.
    /// </summary>
    public Cause? HeaviestCauseOf(Figure figure)
    {
        var existing = kept.Where(d => d.Draw.Figures[figure] is not null).ToArray();
        if (existing.Length < 3)
        {
            return null;
        }
        double[] values = [.. existing.Select(d => d.Draw.Figures[figure]!.Value)];
        var heaviest = numbers
            .Select((number, i) => (number.Cause, Weight: Square(RankCorrelation(i))))
            .GroupBy(n => n.Cause.Key, (_, group) => (group.First().Cause, Weight: group.Sum(n => n.Weight)))
            .MaxBy(c => c.Weight);
        return heaviest.Weight > 0 ? heaviest.Cause : null;

        double RankCorrelation(int number)
        {
            double r = Correlation.Spearman(existing.Select(d => d.Point[number]), values);
            return double.IsNaN(r) ? 0 : r;
        }
        static double Square(double x) => x * x;
    }

    /// <summary>From 10 to 90 % of some values, and never past the likely one.</summary>
    public static Band Around(double[] sorted, double likely) =>
        new(
            Math.Min(likely, SortedArrayStatistics.Quantile(sorted, Tail)),
            likely,
            Math.Max(likely, SortedArrayStatistics.Quantile(sorted, 1 - Tail))
        );
}
