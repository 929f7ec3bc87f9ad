using System.Collections.Immutable;
using GlowMix.Predictions;

namespace GlowMix.Choosing.Draws;

/// <summary>What to measure first: the share of each cause in the doubt of a few figures. Immutable.</summary>
public sealed class CauseStudy
{
    private const ulong Seed = 19_930_407;
    private const int FewestRows = 16;

    private CauseStudy(ImmutableArray<FigureCauses> figures, int runCount, int refusedCount) =>
        (Figures, RunCount, RefusedCount) = (figures, runCount, refusedCount);

    /// <summary>The figures in the order asked for.</summary>
    public ImmutableArray<FigureCauses> Figures { get; }

    /// <summary>How often the model was run.</summary>
    public int RunCount { get; }

    /// <summary>Runs left out: their pigment could not have given its own sheet.</summary>
    public int RefusedCount { get; }

    /// <summary>Studies a piece.</summary>
    /// <param name="bench">The piece.</param>
    /// <param name="figures">Which figures.</param>
    /// <param name="rows">Points of each of the two sets; a power of two.</param>
    /// <param name="cores">How many cores to use, null for all; the answer is the same.</param>
    /// <param name="done">Told how many runs of how many are done, from any thread; may be null.</param>
    /// <param name="stop">Ends the study.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    internal static CauseStudy Of(
        DrawBench bench,
        IReadOnlyList<Figure> figures,
        int rows,
        int? cores = null,
        Action<int, int>? done = null,
        CancellationToken stop = default
    )
    {
        var numbers = bench.Numbers;
        if (numbers.IsEmpty)
        {
            return new([.. figures.Select(f => new FigureCauses(f, []))], 0, 0);
        }
        var causes = numbers.Select(n => n.Cause).DistinctBy(c => c.Key).ToArray();
        var sequence = SobolPoints.Scrambled(2 * numbers.Length, Seed);
        double[][] both = [.. Enumerable.Range(0, rows).Select(sequence.Point)];
        // Set A, set B, then A with the numbers of one cause after the other from B.
        double[][][] sets =
        [
            [.. both.Select(p => p[..numbers.Length])],
            [.. both.Select(p => p[numbers.Length..])],
            .. causes.Select(c =>
                both.Select(p =>
                        numbers.Select((n, i) => p[n.Cause.Key == c.Key ? numbers.Length + i : i]).ToArray()
                    )
                    .ToArray()
            ),
        ];
        int runs = sets.Length * rows;
        bench.Prepare(sets.SelectMany(s => s));
        var results = new double?[sets.Length][][];
        for (int s = 0; s < sets.Length; s++)
        {
            results[s] = new double?[rows][];
        }
        int finished = 0;
        int refused = 0;
        Parallel.For(
            0,
            runs,
            new ParallelOptions { CancellationToken = stop, MaxDegreeOfParallelism = cores ?? -1 },
            run =>
            {
                var (set, row) = (run / rows, run % rows);
                var draw = bench.Run(sets[set][row]);
                results[set][row] = [.. figures.Select(f => draw?.Figures[f])];
                if (draw is null)
                {
                    Interlocked.Increment(ref refused);
                }
                done?.Invoke(Interlocked.Increment(ref finished), runs);
            }
        );
        return new([.. figures.Select((f, i) => new FigureCauses(f, SharesOf(i)))], runs, refused);

        ImmutableArray<CauseShare> SharesOf(int figure) =>
            [
                .. causes
                    .Select((cause, c) => (Cause: cause, Indices: IndicesOf(figure, results[c + 2])))
                    .Where(c => c.Indices is not null)
                    .Select(c => new CauseShare(c.Cause, c.Indices!.Value))
                    .OrderByDescending(c => c.Indices.TotalOrder),
            ];

        // Of the rows where all three runs have the figure.
        SobolIndices? IndicesOf(int figure, double?[][] mixed)
        {
            int[] whole =
            [
                .. Enumerable
                    .Range(0, rows)
                    .Where(r =>
                        results[0][r][figure] is not null
                        && results[1][r][figure] is not null
                        && mixed[r][figure] is not null
                    ),
            ];
            double[] Values(double?[][] set) => [.. whole.Select(r => set[r][figure]!.Value)];
            var indices =
                whole.Length < FewestRows
                    ? default
                    : SobolIndices.Of(Values(results[0]), Values(results[1]), Values(mixed));
            return indices.TotalOrder > 0 ? indices : null;
        }
    }
}
