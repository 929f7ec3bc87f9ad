using System.Diagnostics;

namespace GlowMix.Console.Tune.Model;

/// <summary>Fills maps beside the text UI, behind everything else.</summary>
/// <param name="foreteller">The model.</param>
/// <param name="post">Runs something where the text UI runs, and shows it.</param>
internal sealed class MapWork(IForeteller foreteller, Action<Action> post) : IMapWork, IDisposable
{
    private static readonly TimeSpan handAtRest = TimeSpan.FromMilliseconds(100);

    // As often as an eye follows progress.
    private static readonly TimeSpan tellEvery = TimeSpan.FromMilliseconds(150);

    private readonly LatestWork work = new("map", handAtRest, ThreadPriority.BelowNormal);

    /// <inheritdoc/>
    public void Fill(DesignMap map, double? glowAtMinutes) =>
        work.Put(stop =>
        {
            var known = new List<(int, int, MapCell)>();
            var since = Stopwatch.StartNew();
            foreach (var (across, up) in map.Order())
            {
                stop.ThrowIfCancellationRequested();
                var outlook = foreteller.Likely(map.At(across, up));
                known.Add((across, up, DesignMap.CellOf(outlook.Prediction, glowAtMinutes)));
                if (since.Elapsed > tellEvery)
                {
                    Tell(map, known, stop);
                    known = [];
                    since.Restart();
                }
            }
            Tell(map, known, stop);
        });

    /// <inheritdoc/>
    public void Dispose() => work.Dispose();

    private void Tell(DesignMap map, List<(int Across, int Up, MapCell Cell)> known, CancellationToken stop)
    {
        if (stop.IsCancellationRequested)
        {
            return;
        }
        post(() =>
        {
            foreach (var (across, up, cell) in known)
            {
                map.Keep(across, up, cell);
            }
        });
    }
}
