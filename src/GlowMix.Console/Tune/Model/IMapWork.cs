namespace GlowMix.Console.Tune.Model;

/// <summary>Fills maps in the background.</summary>
internal interface IMapWork
{
    /// <summary>Fills a map, point by point; one begun before is given up.</summary>
    /// <param name="map">The map. Its points are kept where the text UI runs.</param>
    /// <param name="glowAtMinutes">When the glow counts; null for the usual hour.</param>
    void Fill(DesignMap map, double? glowAtMinutes);
}
