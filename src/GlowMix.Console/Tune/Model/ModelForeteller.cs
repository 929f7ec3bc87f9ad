using GlowMix.Choosing;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>The model that travels with the program.</summary>
internal sealed class ModelForeteller(Predictor predictor) : IForeteller
{
    private readonly Forecaster forecaster = new(predictor);

    /// <inheritdoc/>
    public Outlook Likely(RecipeDocument document)
    {
        var outcome = forecaster.Likely(document);
        return new(document.Text, outcome.Prediction, outcome.Problems, HasBands: false);
    }

    /// <inheritdoc/>
    public Outlook Banded(RecipeDocument document, CancellationToken stop)
    {
        var outcome = forecaster.Bounded(document);
        stop.ThrowIfCancellationRequested();
        return new(document.Text, outcome.Prediction, outcome.Problems, HasBands: true);
    }
}
