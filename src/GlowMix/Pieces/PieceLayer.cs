using GlowMix.Materials;

namespace GlowMix.Pieces;

/// <summary>One layer of a piece, with its pigment looked up.</summary>
/// <param name="Name">The layer's name.</param>
/// <param name="DepthMm">Its depth.</param>
/// <param name="Pigment">The pigment; null for a clear layer.</param>
/// <param name="LoadingPercent">Pigment mass over mass of the mix, %; 0 for a clear layer.</param>
/// <param name="VolumeFraction">Share of the layer's volume that is pigment.</param>
/// <param name="GrainMedianUm">Median grain diameter by mass; 0 for a clear layer.</param>
/// <param name="GrainGsd">Geometric standard deviation of the diameter; 1 for a clear layer.</param>
public sealed record PieceLayer(
    string Name,
    double DepthMm,
    Pigment? Pigment,
    double LoadingPercent,
    double VolumeFraction,
    double GrainMedianUm,
    double GrainGsd
)
{
    /// <summary>Whether there is any pigment in it.</summary>
    public bool HasPigment => Pigment is not null && VolumeFraction > 0;
}
