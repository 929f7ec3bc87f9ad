using System.Collections.Immutable;
using GlowMix.Choosing.Draws;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Choosing.Compare;

/// <summary>
/// Two pieces predicted again and again with their doubtful numbers turned alike, so that a difference between them shows what
/// the change does, and not what is unknown of both.
/// </summary>
/// <param name="Pairs">Figures of the first and the second under one and the same doubt.</param>
/// <param name="Tail">Share of the pairs left out at either end of a band; 0 for the least and the greatest.</param>
internal sealed record PairedRuns(
    ImmutableArray<(FigureValues Before, FigureValues After)> Pairs,
    double Tail
)
{
    /// <summary>The bounding runs of two pieces; one that is not in doubt stands against each of the other's.</summary>
    public static PairedRuns Of(IReadOnlyList<Run> before, IReadOnlyList<Run> after)
    {
        var pairs = ImmutableArray.CreateBuilder<(FigureValues, FigureValues)>();
        foreach (var a in before)
        {
            foreach (var b in after)
            {
                if (a.Variation == b.Variation || before.Count == 1 || after.Count == 1)
                {
                    pairs.Add((a.Figures, b.Figures));
                }
            }
        }
        return new(pairs.ToImmutable(), 0);
    }

    /// <summary>The draws of two pieces, pair by pair; a piece in no doubt stands as it is against each of the other's.</summary>
    public static PairedRuns Of(
        DrawTable before,
        FigureValues likelyBefore,
        DrawTable after,
        FigureValues likelyAfter
    )
    {
        var pairs = ImmutableArray.CreateBuilder<(FigureValues, FigureValues)>();
        for (int i = 0; i < Math.Max(before.All.Length, after.All.Length); i++)
        {
            var a = before.IsEmpty ? likelyBefore : before.All[i]?.Figures;
            var b = after.IsEmpty ? likelyAfter : after.All[i]?.Figures;
            if (a is not null && b is not null)
            {
                pairs.Add((a, b));
            }
        }
        return new(pairs.ToImmutable(), DrawTable.Tail);
    }

    /// <summary>The band of what becomes of a figure from the first to the second; null where no pair has it.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="likely">What becomes of the likely one.</param>
    /// <param name="change">From both values.</param>
    public Band BandOf(Figure figure, double? likely, Func<double, double, double> change)
    {
        var changes = new List<double>();
        foreach (var (before, after) in Pairs)
        {
            if (
                before[figure] is { } a
                && after[figure] is { } b
                && change(a, b) is var c
                && double.IsFinite(c)
            )
            {
                changes.Add(c);
            }
        }
        if (changes.Count == 0 || likely is not { } middle)
        {
            return new(likely, likely, likely);
        }
        changes.Sort(Ascending.Order);
        return new(Math.Min(middle, At(changes, Tail)), middle, Math.Max(middle, At(changes, 1 - Tail)));
    }

    private static double At(List<double> sorted, double share)
    {
        double place = share * (sorted.Count - 1);
        int below = (int)place;
        int above = Math.Min(below + 1, sorted.Count - 1);
        return sorted[below] + ((place - below) * (sorted[above] - sorted[below]));
    }
}
