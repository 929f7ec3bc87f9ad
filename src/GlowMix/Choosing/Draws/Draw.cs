using GlowMix.Afterglow;
using GlowMix.Predictions;

namespace GlowMix.Choosing.Draws;

/// <summary>What one draw came to.</summary>
/// <param name="Figures">Its figures.</param>
/// <param name="RaMeaningful">Whether the lit Ra is within its method's limit.</param>
/// <param name="LuminancesMcdPerM2">At the minutes of <see cref="Bounds.CurveMinutes"/>; null without pigment.</param>
/// <param name="Glows">After each of the bench's other charges.</param>
internal sealed record Draw(
    FigureValues Figures,
    bool RaMeaningful,
    double[]? LuminancesMcdPerM2,
    IReadOnlyList<GlowCurve> Glows
);
