using System.Collections.Immutable;

namespace GlowMix.Choosing.Search;

/// <summary>Draws the map from the designs of the coarse grid.</summary>
internal static class MapOfDesigns
{
    /// <summary>The map over the two ranges that move white and glow most; null without any range.</summary>
    public static BalanceMap? Of(SearchSpace space, BalanceSearch search)
    {
        if (space.Axes.IsEmpty)
        {
            return null;
        }
        DesignResult[] grid = [.. space.CoarseDesigns.Select(search.Of).OfType<DesignResult>()];
        int[] shown =
        [
            .. Enumerable.Range(0, space.Axes.Length).OrderByDescending(a => Weight(grid, a)).Take(2).Order(),
        ];
        var across = space.Axes[shown[0]];
        var up = shown.Length > 1 ? space.Axes[shown[1]] : null;
        var best = grid.GroupBy(r =>
                (Across: r.Design.Steps[shown[0]], Up: up is null ? 0 : r.Design.Steps[shown[1]])
            )
            .ToDictionary(
                g => g.Key,
                g =>
                    g.OrderBy(r => r.Shortfalls.Count(s => s > 0))
                        .ThenBy(search.Shortfall)
                        .ThenBy(r => r.Design)
                        .First()
            );
        ImmutableArray<int> upIndices = up?.CoarseIndices ?? [0];
        return new(
            across.KeyPath,
            [.. across.CoarseIndices.Select(i => across.Values[i])],
            up?.KeyPath,
            [.. upIndices.Select(i => up?.Values[i] ?? 0)],
            [
                .. upIndices.Select(u =>
                    across
                        .CoarseIndices.Select(a => Missed(best.GetValueOrDefault((a, u))))
                        .ToImmutableArray()
                ),
            ]
        );
    }

    private static ImmutableArray<int> Missed(DesignResult? result) =>
        result is null
            ? []
            : [.. Enumerable.Range(0, result.Shortfalls.Length).Where(t => result.Shortfalls[t] > 0)];

    // How much of the variance of white and of glow, in factors, an axis explains by itself.
    private static double Weight(DesignResult[] grid, int axis) =>
        Explained(grid, axis, r => r.OffWhite)
        + Explained(grid, axis, r => Math.Log(Math.Max(r.GlowMcdPerM2, 1e-6)));

    private static double Explained(DesignResult[] grid, int axis, Func<DesignResult, double> value)
    {
        DesignResult[] finite = [.. grid.Where(r => double.IsFinite(value(r)))];
        if (finite.Length == 0)
        {
            return 0;
        }
        double mean = finite.Average(value);
        double all = finite.Sum(r => Squared(value(r) - mean));
        double explained = finite
            .GroupBy(r => r.Design.Steps[axis])
            .Sum(g => g.Count() * Squared(g.Average(value) - mean));
        return all > 0 ? explained / all : 0;
    }

    private static double Squared(double difference) => difference * difference;
}
