using GlowMix.Predictions;

namespace GlowMix.Readings.Spectral;

/// <summary>A figure as it was read, beside the predicted one.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Read">As read; null where it does not exist.</param>
/// <param name="Band">As predicted; low and high are null where the prediction has no band.</param>
public sealed record FigureAgainst(Figure Figure, double? Read, Band Band)
{
    /// <summary>The reading lies in the band; null where there is none.</summary>
    public bool? IsInside =>
        Read is { } read && Band is { Low: { } low, High: { } high } ? read >= low && read <= high : null;
}
