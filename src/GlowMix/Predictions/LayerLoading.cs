namespace GlowMix.Predictions;

/// <summary>The pigment of one layer, told three ways.</summary>
/// <param name="Layer">The layer's name.</param>
/// <param name="Pigment">The pigment's name.</param>
/// <param name="DepthMm">The layer's depth.</param>
/// <param name="MassPercent">Of the whole mix, by mass.</param>
/// <param name="GramsPer100GResin">Per 100 g of resin, parts A and B together.</param>
/// <param name="VolumePercent">Of the cured layer.</param>
public sealed record LayerLoading(
    string Layer,
    string Pigment,
    double DepthMm,
    double MassPercent,
    double GramsPer100GResin,
    double VolumePercent
);
