using GlowMix.Predictions;

namespace GlowMix.Choosing.Compare;

/// <summary>A figure before and after.</summary>
/// <param name="Figure">Which.</param>
/// <param name="Before">With its band; low and high are the likely value where it has none.</param>
/// <param name="After">Likewise.</param>
/// <param name="Change">
/// After minus before, with the band of that difference: both from the same draws, so that what is in doubt on either side alike
/// falls out. Null ends where one side has no such figure.
/// </param>
/// <param name="Ratio">After over before, likewise; null where a figure can be zero or below.</param>
public sealed record FigureChange(Figure Figure, Band Before, Band After, Band Change, Band? Ratio)
{
    /// <summary>Whether the likely value moved at all.</summary>
    public bool IsMoved => Before.Likely != After.Likely;
}
