namespace GlowMix.Console.Tune.Model;

/// <summary>Where no map is shown, none is filled.</summary>
internal sealed class NoMaps : IMapWork
{
    /// <inheritdoc/>
    public void Fill(DesignMap map, double? glowAtMinutes) { }
}
