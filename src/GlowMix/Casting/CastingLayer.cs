namespace GlowMix.Casting;

/// <summary>One layer, poured in one go. Immutable.</summary>
/// <param name="Name">Its name.</param>
/// <param name="DepthMm">Depth, mm; that of the first layer is measured from the board.</param>
/// <param name="Pigment">Its pigment; null for a clear layer.</param>
/// <param name="Loading">How much of it.</param>
public sealed record CastingLayer(
    string Name,
    double DepthMm,
    CastingPigment? Pigment = null,
    PigmentLoading Loading = default
);
