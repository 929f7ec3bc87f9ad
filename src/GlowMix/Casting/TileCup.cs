namespace GlowMix.Casting;

/// <summary>The share of one test tile in a mix. Immutable.</summary>
/// <param name="Batch">The tile's layer as it would be mixed alone: loading, flow and settling.</param>
/// <param name="ResinG">Mixed A + B to weigh into its cup, in steps of the scale, g.</param>
/// <param name="PigmentG">Pigment to stir into it, in steps of the scale, g; 0 for a clear layer.</param>
public sealed record TileCup(LayerBatch Batch, double ResinG, double PigmentG)
{
    /// <summary>Loading as the scale shows it, % of the whole mix by mass.</summary>
    public double LoadingPercent => 100 * PigmentG / (PigmentG + ResinG);
}
