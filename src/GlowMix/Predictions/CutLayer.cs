namespace GlowMix.Predictions;

/// <summary>A layer as a cut through the pour shows it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="DepthMm">Its depth, mm.</param>
/// <param name="Pigment">Its pigment; null for a clear layer.</param>
/// <param name="LoadingPercent">Pigment mass over mass of the mix, %; 0 for a clear layer.</param>
public sealed record CutLayer(string Name, double DepthMm, string? Pigment, double LoadingPercent);
