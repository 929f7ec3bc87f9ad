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
    public Outlook Rough(RecipeDocument document)
    {
        var outcome = forecaster.Bounded(document);
        return new(document.Text, outcome.Prediction, outcome.Problems, HasBands: true, IsRough: true);
    }

    /// <inheritdoc/>
    public Outlook Banded(RecipeDocument document, CancellationToken stop)
    {
        // As `predict` does, so that both say the same. One core stays free for the hand.
        int cores = Math.Max(1, Environment.ProcessorCount - 1);
        var outcome = forecaster.Drawn(document, cores: cores, stop: stop);
        return new(document.Text, outcome.Prediction, outcome.Problems, HasBands: true);
    }
}
