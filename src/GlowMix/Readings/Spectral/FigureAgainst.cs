using GlowMix.Predictions;

namespace GlowMix.Readings.Spectral;

/// <summary>A figure as it was read, beside the predicted one.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Read">As read; null where it does not exist.</param>
/// <param name="Band">As predicted; low and high are null where the prediction has no band.</param>
public sealed record FigureAgainst(Figure Figure, double? Read, Band Band)
{
    // Half of the last digit that is printed: no instrument tells more.
    private double Rounding =>
        Figure.Name switch
        {
            "lit.cct_k" => 5,
            "lit.ra" or "lit.r9" or "lit.luminous_efficacy_lm_w" => 0.5,
            _ => 0.0005,
        };

    /// <summary>The reading lies in the band, to the digits that are printed; null where there is none.</summary>
    public bool? IsInside =>
        Read is { } read && Band is { Low: { } low, High: { } high }
            ? read >= low - Rounding && read <= high + Rounding
            : null;
}
