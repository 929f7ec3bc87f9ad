using GlowMix.Optics.Pour;
using GlowMix.Pieces;
using GlowMix.Predictions;

namespace GlowMix.Choosing.Search;

/// <summary>
/// Predicts designs by the thousand: one run each, no bands. What does not change is worked out once: sheets, ladders and
/// materials for all, grains for a pigment and size; with grains evenly spread also the diffusing modes for all depths of a mix.
/// </summary>
internal sealed class DesignBench
{
    // Enough depths to share the modes of, few enough for all cores to have work.
    private const int MostTogether = 16;

    private readonly Predictor predictor;
    private readonly SearchSpace space;
    private readonly BalanceGoal goal;
    private readonly int cores;
    private readonly bool isSettled;
    private readonly bool[] isDepth;

    /// <param name="predictor">Who predicts.</param>
    /// <param name="space">Where the designs are from.</param>
    /// <param name="goal">What they are judged by.</param>
    /// <param name="cores">How many to use; the results are the same.</param>
    /// <param name="isSettled">False takes grains as evenly spread, which is some times quicker.</param>
    public DesignBench(Predictor predictor, SearchSpace space, BalanceGoal goal, int cores, bool isSettled)
    {
        (this.predictor, this.space, this.goal, this.cores, this.isSettled) = (
            predictor,
            space,
            goal,
            cores,
            isSettled
        );
        isDepth = [.. space.Axes.Select(a => a.KeyPath.EndsWith(".depth_mm", StringComparison.Ordinal))];
    }

    /// <summary>The results, in the order of the designs; fewer, from the beginning on, if stopped.</summary>
    public IReadOnlyList<DesignResult> Solve(
        IReadOnlyList<Design> designs,
        Action<int> done,
        CancellationToken stop
    )
    {
        var results = new DesignResult?[designs.Count];
        int[][] groups =
        [
            .. Enumerable
                .Range(0, designs.Count)
                .GroupBy(i => MixOf(designs[i]))
                // Grains that fall make another mix of every slice at every depth.
                .SelectMany(mix => mix.Chunk(isSettled ? 1 : MostTogether)),
        ];
        int begun = 0;
        int count = 0;
        // Grains are computed on all cores, one table after the other: before the crowd, not within it.
        foreach (int[] group in groups.DistinctBy(g => GrainsOf(designs[g[0]])))
        {
            if (stop.IsCancellationRequested)
            {
                break;
            }
            predictor.Prepare(PieceOf(designs[group[0]]));
        }
        Parallel.For(
            0,
            Math.Min(cores, groups.Length),
            new ParallelOptions { MaxDegreeOfParallelism = cores },
            _ =>
            {
                for (
                    int g = Interlocked.Increment(ref begun) - 1;
                    g < groups.Length && !stop.IsCancellationRequested;
                    g = Interlocked.Increment(ref begun) - 1
                )
                {
                    SolveTogether(designs, groups[g], results);
                    done(Interlocked.Add(ref count, groups[g].Length));
                }
            }
        );
        return [.. results.TakeWhile(r => r is not null).Select(r => r!)];
    }

    private void SolveTogether(IReadOnlyList<Design> designs, int[] group, DesignResult?[] results)
    {
        var pieces = group.Select(i => PieceOf(designs[i])).ToArray();
        var pours = PourOptics.OfDepths([.. pieces.Select(predictor.StackOf)]);
        for (int k = 0; k < group.Length; k++)
        {
            var run = predictor.LikelyRun(pieces[k], pours[k]);
            results[group[k]] = goal.Judge(
                designs[group[k]],
                predictor.FiguresFor(run, goal.TargetFigures),
                !goal.TargetFigures.Any(BalanceGoal.IsRendering) || run.RaMeaningful
            );
        }
    }

    private Piece PieceOf(Design design) => space.PieceOf(design, isSettled);

    /// <summary>A design without its depths.</summary>
    private Design MixOf(Design design) =>
        design with
        {
            Steps = [.. design.Steps.Select((step, a) => isDepth[a] ? 0 : step)],
        };

    private Design GrainsOf(Design design) =>
        design with
        {
            Steps =
            [
                .. design.Steps.Select(
                    (step, a) =>
                        space.Axes[a].KeyPath.EndsWith(".grain_median_um", StringComparison.Ordinal)
                            ? step
                            : 0
                ),
            ],
        };
}
