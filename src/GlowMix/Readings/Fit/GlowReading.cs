using System.Collections.Immutable;
using GlowMix.Materials;
using GlowMix.Pieces;

namespace GlowMix.Readings.Fit;

/// <summary>The decay of a piece after a charge.</summary>
/// <param name="Name">Its file.</param>
/// <param name="State">What was read, in words: 'decay of tile 2'.</param>
/// <param name="Piece">The piece as it was poured and charged, of the materials as they stand.</param>
/// <param name="Points">Luminance after minutes in the dark, ascending, each above 0.</param>
/// <param name="NoisePercent">Standard deviation of a reading that does not shrink with its level, %.</param>
/// <param name="StepMcdPerM2">Step of the meter's display, mcd/m²; 0 for one so fine that it does not show.</param>
public sealed record GlowReading(
    string Name,
    string State,
    Piece Piece,
    ImmutableArray<SheetPoint> Points,
    double NoisePercent = GlowReading.UsualNoisePercent,
    double StepMcdPerM2 = 0
)
{
    /// <summary>Noise of a meter where none is told. Assumed.</summary>
    public const double UsualNoisePercent = 2;
}
