using System.Collections.Immutable;

namespace GlowMix.Choosing.Search;

/// <summary>The trade-off between white and glow: designs of which none is beaten in both.</summary>
internal static class Front
{
    /// <summary>The designs that no other dominates, whitest first; of equals the first in order.</summary>
    public static ImmutableArray<DesignResult> Of(IEnumerable<DesignResult> results)
    {
        var front = ImmutableArray.CreateBuilder<DesignResult>();
        double brightest = double.NegativeInfinity;
        foreach (
            var result in results
                .OrderBy(r => r.OffWhite)
                .ThenByDescending(r => r.GlowMcdPerM2)
                .ThenBy(r => r.Design)
        )
        {
            if (result.GlowMcdPerM2 > brightest && double.IsFinite(result.OffWhite))
            {
                front.Add(result);
                brightest = result.GlowMcdPerM2;
            }
        }
        return front.ToImmutable();
    }

    /// <summary>The best compromise of a front; null of an empty one.</summary>
    public static DesignResult? Compromise(IReadOnlyList<DesignResult> front)
    {
        if (front.Count == 0)
        {
            return null;
        }
        var scale = new FrontScale(front);
        return front.MinBy(scale.FromIdeal);
    }

    /// <summary>Both ends, the compromise, and others as evenly along the front as may be.</summary>
    /// <param name="front">A front.</param>
    /// <param name="most">How many at most, 3 or more.</param>
    public static ImmutableArray<DesignResult> Thinned(IReadOnlyList<DesignResult> front, int most)
    {
        if (front.Count <= most)
        {
            return [.. front];
        }
        var scale = new FrontScale(front);
        var along = new double[front.Count];
        for (int i = 1; i < along.Length; i++)
        {
            along[i] =
                along[i - 1]
                + Math.Abs(scale.OffWhite(front[i]) - scale.OffWhite(front[i - 1]))
                + Math.Abs(scale.Dark(front[i]) - scale.Dark(front[i - 1]));
        }
        var kept = new SortedSet<int> { 0, front.Count - 1, IndexOf(front, Compromise(front)!) };
        for (int k = 1; kept.Count < most && k < most - 1; k++)
        {
            double wanted = along[^1] * k / (most - 1);
            kept.Add(Enumerable.Range(0, along.Length).MinBy(i => Math.Abs(along[i] - wanted)));
        }
        return [.. kept.Select(i => front[i])];
    }

    private static int IndexOf(IReadOnlyList<DesignResult> front, DesignResult result)
    {
        int i = 0;
        while (!ReferenceEquals(front[i], result))
        {
            i++;
        }
        return i;
    }
}
