using GlowMix.Afterglow;
using GlowMix.Pieces;

namespace GlowMix.Choosing.Draws;

/// <summary>The glow of one piece after several charges, drawn: every draw's light is solved once for all of them.</summary>
internal static class DrawnGlows
{
    /// <summary>Draws.</summary>
    /// <param name="bench">A piece with pigment.</param>
    /// <param name="charges">What each makes of the piece: the same layers after another charge.</param>
    /// <param name="count">How many draws.</param>
    /// <param name="stop">Ends the run.</param>
    /// <returns>For each charge the glow of every draw that does not contradict its pigment's sheet.</returns>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static IReadOnlyList<GlowCurve[]> Of(
        DrawBench bench,
        IReadOnlyList<Func<Piece, Piece>> charges,
        int count,
        CancellationToken stop = default
    )
    {
        double[][] points = DrawTable.PointsFor(bench, count);
        bench.Prepare(points);
        var draws = new IReadOnlyList<GlowCurve>?[points.Length];
        Parallel.For(
            0,
            points.Length,
            new ParallelOptions { CancellationToken = stop },
            i => draws[i] = bench.GlowsOf(points[i], charges)
        );
        var kept = draws.OfType<IReadOnlyList<GlowCurve>>().ToArray();
        return [.. charges.Select((_, c) => kept.Select(glows => glows[c]).ToArray())];
    }
}
