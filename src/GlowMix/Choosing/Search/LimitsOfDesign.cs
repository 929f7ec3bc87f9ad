using System.Collections.Immutable;
using GlowMix.Recipes;

namespace GlowMix.Choosing.Search;

/// <summary>Finds what keeps a design from being better.</summary>
internal static class LimitsOfDesign
{
    /// <summary>
    /// The targets that the best better neighbour would miss, and the ends of ranges at which the design stands though stepping
    /// back makes it worse.
    /// </summary>
    /// <param name="best">A design that meets every target.</param>
    /// <param name="cost">What it has the least of, among those that do.</param>
    /// <param name="space">What was searched.</param>
    /// <param name="search">What was found; the design's neighbours are in it.</param>
    /// <param name="targets">The recipe's.</param>
    public static ImmutableArray<BalanceLimit> Of(
        DesignResult best,
        Func<DesignResult, double> cost,
        SearchSpace space,
        BalanceSearch search,
        ImmutableArray<RecipeTarget> targets
    )
    {
        double reached = cost(best);
        var limits = ImmutableArray.CreateBuilder<BalanceLimit>();
        var barred = search
            .Around(best.Design, stride: 1)
            .Select(search.Of)
            .OfType<DesignResult>()
            .Where(r => !r.IsFeasible && cost(r) < reached)
            .OrderBy(cost)
            .ThenBy(r => r.Design)
            .FirstOrDefault();
        for (int t = 0; barred is not null && t < targets.Length; t++)
        {
            if (barred.Shortfalls[t] > 0)
            {
                limits.Add(new(targets[t], null, null));
            }
        }
        for (int a = 0; a < space.Axes.Length; a++)
        {
            int at = best.Design.Steps[a];
            int last = space.Axes[a].Values.Length - 1;
            if (at != 0 && at != last)
            {
                continue;
            }
            var inward = search.Of(
                best.Design with
                {
                    Steps = best.Design.Steps.SetItem(a, at == 0 ? 1 : last - 1),
                }
            );
            if (inward is not null && cost(inward) > reached)
            {
                limits.Add(new(null, space.Axes[a].KeyPath, space.Axes[a].Values[at]));
            }
        }
        return limits.ToImmutable();
    }
}
