using GlowMix.Console.Tune.Model;

namespace GlowMix.Console.Tests.Tune;

/// <summary>Fills a map at once from the invented predictions.</summary>
internal sealed class CannedMaps : IMapWork
{
    public int FilledCount { get; private set; }

    public void Fill(DesignMap map, double? glowAtMinutes)
    {
        FilledCount++;
        foreach (var (across, up) in map.Order())
        {
            var outlook = CannedDesk.Answer(map.At(across, up), banded: false);
            map.Keep(across, up, DesignMap.CellOf(outlook.Prediction, glowAtMinutes));
        }
    }
}
