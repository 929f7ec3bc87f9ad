using GlowMix.Materials;
using GlowMix.Spectra;

namespace GlowMix.Pieces;

/// <summary>Some time of constant light, or of darkness, at one temperature.</summary>
/// <param name="OwnLeds">The piece's own LEDs are on.</param>
/// <param name="Lamp">The lamp from above; null without.</param>
/// <param name="LampWPerM2Nm">What that lamp brings to the face; null without.</param>
/// <param name="Minutes">How long, above 0.</param>
/// <param name="TemperatureC">Temperature of the piece.</param>
/// <param name="Words">The step in words: '8 h by its own LEDs'.</param>
public sealed record PieceStep(
    bool OwnLeds,
    Lamp? Lamp,
    Spectrum? LampWPerM2Nm,
    double Minutes,
    double TemperatureC,
    string Words
)
{
    /// <summary>Whether a light is on.</summary>
    public bool IsLit => OwnLeds || Lamp is not null;
}
