using GlowMix.Colour;

namespace GlowMix.Predictions;

/// <summary>What the piece is like at one place along a pour that runs out of level.</summary>
/// <param name="Place">'shallow', 'nominal' or 'deep'.</param>
/// <param name="DepthMm">All layers together there, over the board.</param>
/// <param name="CctK">Null too far from any white.</param>
/// <param name="Duv">Null likewise.</param>
/// <param name="FluxLm">Lumens of the piece, were it as deep as this all along; null where the recipe has no count.</param>
/// <param name="LuminanceAt10MinMcdPerM2">Ten minutes after the last light; null without pigment.</param>
public sealed record AlongPlace(
    string Place,
    double DepthMm,
    double? CctK,
    double? Duv,
    double? FluxLm,
    double? LuminanceAt10MinMcdPerM2
)
{
    /// <summary>Colour of the lit piece there; null without light.</summary>
    public Chromaticity? Chromaticity { get; init; }
}
