using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>Finds the band of a figure.</summary>
internal static class PredictionBands
{
    /// <summary>The band, or the value three times where the figure has none.</summary>
    public static Band BandOf(this Prediction prediction, Figure figure)
    {
        foreach (var (banded, band) in prediction.Bands)
        {
            if (banded.Index == figure.Index)
            {
                return band;
            }
        }
        double? value = prediction.Figures[figure];
        return new(value, value, value);
    }

    /// <summary>The band of a figure by its full name.</summary>
    public static Band BandOf(this Prediction prediction, string figure) =>
        prediction.BandOf(
            FigureCatalogue.Find(figure)
                ?? throw new ArgumentException($"No figure is called '{figure}'.", nameof(figure))
        );
}
