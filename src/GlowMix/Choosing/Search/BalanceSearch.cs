using System.Collections.Immutable;

namespace GlowMix.Choosing.Search;

/// <summary>
/// A coarse grid over all designs, then finer and finer steps around those that matter: the trade-off front where targets can be
/// met, else the designs that miss least. Nothing is left to chance.
/// </summary>
internal sealed class BalanceSearch
{
    private const int MostCentres = 8;
    private const int MostRounds = 20;
    private const int NearestOfTarget = 2;
    private const int NearestOfAll = 4;

    private readonly SearchSpace space;
    private readonly Func<IReadOnlyList<Design>, IReadOnlyList<DesignResult>> solve;
    private readonly Dictionary<Design, DesignResult> found = [];
    private ImmutableArray<double> spans = [];

    /// <param name="space">Where to search.</param>
    /// <param name="solve">Predicts designs; returns fewer when the search is stopped.</param>
    public BalanceSearch(SearchSpace space, Func<IReadOnlyList<Design>, IReadOnlyList<DesignResult>> solve) =>
        (this.space, this.solve) = (space, solve);

    /// <summary>False once the search has been stopped.</summary>
    public bool IsComplete { get; private set; } = true;

    /// <summary>All designs tried, in an order of their own.</summary>
    public IEnumerable<DesignResult> Tried => found.Values.OrderBy(r => r.Design);

    /// <summary>How many.</summary>
    public int TriedCount => found.Count;

    /// <summary>What was found of a design; null if it was not tried.</summary>
    public DesignResult? Of(Design design) => found.GetValueOrDefault(design);

    /// <summary>Tries designs, and takes the spans of the targets' figures from them.</summary>
    public void Try(IReadOnlyList<Design> designs)
    {
        Add(designs);
        spans = [.. Enumerable.Range(0, TargetCount).Select(SpanOf)];
    }

    /// <summary>Halves the steps until they are fine enough.</summary>
    /// <param name="finest">In steps of the axes' fine rows.</param>
    public void Refine(int finest = 1)
    {
        int stride = space.Stride;
        while (IsComplete && stride > finest && !space.Axes.IsEmpty)
        {
            stride = (stride + 1) / 2;
            for (int round = 0; round < MostRounds && IsComplete; round++)
            {
                Design[] fresh =
                [
                    .. Centres()
                        .SelectMany(c => Around(c.Design, stride))
                        .Where(d => !found.ContainsKey(d))
                        .Distinct()
                        .Order(),
                ];
                if (fresh.Length == 0)
                {
                    break;
                }
                Add(fresh);
            }
        }
    }

    /// <summary>How far a design misses all its targets, each in the span of its figure; 0 if it meets them.</summary>
    public double Shortfall(DesignResult result) => result.Shortfalls.Select((s, t) => InSpans(t, s)).Sum();

    /// <summary>Designs that meet every target but one, nearest to that one first.</summary>
    public IEnumerable<DesignResult> MissingOnly(int target) =>
        Tried
            .Where(r =>
                double.IsFinite(r.Shortfalls[target])
                && r.Shortfalls.Select((s, t) => t == target ? s > 0 : s == 0).All(fits => fits)
            )
            .OrderBy(r => r.Shortfalls[target])
            .ThenBy(r => r.Design);

    /// <summary>A shortfall in spans of its figure over the first designs tried.</summary>
    public double InSpans(int target, double shortfall) =>
        double.IsFinite(shortfall) ? shortfall / spans[target] : 10;

    private int TargetCount => found.Values.FirstOrDefault()?.Shortfalls.Length ?? 0;

    private void Add(IReadOnlyList<Design> designs)
    {
        var results = solve(designs);
        IsComplete &= results.Count == designs.Count;
        foreach (var result in results)
        {
            found.TryAdd(result.Design, result);
        }
    }

    /// <summary>What is worth a closer look: the front where targets can be met, else what misses them least.</summary>
    public IEnumerable<DesignResult> Centres()
    {
        var front = Front.Of(found.Values.Where(r => r.IsFeasible));
        return front.IsEmpty ? Nearest() : Front.Thinned(front, MostCentres);
    }

    private IEnumerable<DesignResult> Nearest() =>
        Enumerable
            .Range(0, TargetCount)
            .SelectMany(t => MissingOnly(t).Take(NearestOfTarget))
            .Concat(found.Values.OrderBy(Shortfall).ThenBy(r => r.Design).Take(NearestOfAll));

    /// <summary>A design's neighbours, of which at most two numbers differ.</summary>
    public IEnumerable<Design> Around(Design centre, int stride)
    {
        int axes = space.Axes.Length;
        for (int a = 0; a < axes; a++)
        {
            foreach (int step in (int[])[-stride, stride])
            {
                if (Moved(centre, a, step) is not { } one)
                {
                    continue;
                }
                yield return one;
                for (int b = a + 1; b < axes; b++)
                {
                    foreach (int other in (int[])[-stride, stride])
                    {
                        if (Moved(one, b, other) is { } two)
                        {
                            yield return two;
                        }
                    }
                }
            }
        }
    }

    // Past an end stands the end itself.
    private Design? Moved(Design design, int axis, int step)
    {
        int last = space.Axes[axis].Values.Length - 1;
        int moved = Math.Clamp(design.Steps[axis] + step, 0, last);
        return moved == design.Steps[axis] ? null : design with { Steps = design.Steps.SetItem(axis, moved) };
    }

    private double SpanOf(int target)
    {
        double[] values = [.. found.Values.Select(r => r.Values[target]).OfType<double>()];
        double span = values.Length == 0 ? 0 : values.Max() - values.Min();
        return span > 0 ? span : 1;
    }
}
