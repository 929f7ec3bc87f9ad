using System.Collections.Immutable;
using GlowMix.Materials;
using GlowMix.Pieces;

namespace GlowMix.Readings.Fit;

/// <summary>The decay of a piece after a charge.</summary>
/// <param name="Name">Its file.</param>
/// <param name="State">What was read, in words: 'decay of tile 2'.</param>
/// <param name="Piece">The piece as it was poured and charged, of the materials as they stand.</param>
/// <param name="Points">Luminance after minutes in the dark, ascending, each above 0; in any one unit where it is relative.</param>
/// <param name="NoisePercent">Standard deviation of a reading that does not shrink with its level, %.</param>
/// <param name="DisplayStep">Step of the meter's display in the unit of the points; 0 for one so fine that it does not show.</param>
/// <param name="IsRelative">The level is not known: the course alone counts.</param>
public sealed record GlowReading(
    string Name,
    string State,
    Piece Piece,
    ImmutableArray<SheetPoint> Points,
    double NoisePercent = GlowReading.UsualNoisePercent,
    double DisplayStep = 0,
    bool IsRelative = false
)
{
    /// <summary>Noise of a meter where none is told. Assumed.</summary>
    public const double UsualNoisePercent = 2;

    /// <summary>Whether a pigment is in the piece.</summary>
    internal bool IsOf(Pigment pigment) =>
        Piece.Layers.Any(l => l.HasPigment && l.Pigment!.Name == pigment.Name);
}
