using GlowMix.Predictions;

namespace GlowMix.Markings;

/// <summary>A predicted luminance beside one limit of a criterion. Immutable.</summary>
/// <param name="Minutes">After the light of the criterion's charge goes off, min.</param>
/// <param name="LeastMcdPerM2">The least luminance asked for, mcd/m²; null where there is none or it is not known.</param>
/// <param name="Luminance">Predicted under the criterion's charge, mcd/m²; null where that charge is not known.</param>
public sealed record LimitComparison(double Minutes, double? LeastMcdPerM2, Band? Luminance)
{
    /// <summary>How the one stands to the other.</summary>
    public MarkingState State =>
        (LeastMcdPerM2, Luminance) switch
        {
            (double least, { Low: double low }) when low >= least => MarkingState.Above,
            (double least, { High: double high }) when high < least => MarkingState.Below,
            (double, { Low: not null, High: not null }) => MarkingState.TooClose,
            _ => MarkingState.NotJudged,
        };

    /// <summary>Low end over the limit; the smallest of a criterion decides. Null where it is not judged.</summary>
    public double? LowShareOfLimit => Luminance?.Low / LeastMcdPerM2;
}
