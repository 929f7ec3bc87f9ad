using GlowMix.Choosing;
using GlowMix.Materials;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Markings;

/// <summary>A prediction with its bands, and marking guidance from the same draws: each draw's light is solved once for both.</summary>
/// <param name="Outcome">As <see cref="Forecaster.Drawn"/> gives it.</param>
/// <param name="Guidance">As <see cref="MarkingGuide"/> gives it; null where the recipe has errors.</param>
public sealed record MarkedForecast(PredictionOutcome Outcome, MarkingGuidance? Guidance)
{
    /// <summary>Draws a recipe, with the criteria that it names.</summary>
    /// <param name="document">The recipe; one with errors gives its problems back.</param>
    /// <param name="predictor">Who predicts it; criteria and their lamps come from its shelf.</param>
    /// <param name="draws">How many; 0 for the runs that bound the doubt, the quick way.</param>
    /// <param name="stop">Ends the work.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static MarkedForecast Of(
        RecipeDocument document,
        Predictor predictor,
        int draws = Forecaster.UsualDraws,
        CancellationToken stop = default
    )
    {
        ArgumentNullException.ThrowIfNull(predictor);
        var (piece, problems) = predictor.Check(document);
        if (piece is null)
        {
            return new(new PredictionOutcome(null, problems), null);
        }
        var forecaster = new Forecaster(predictor);
        Criterion[] criteria =
        [
            .. piece
                .Recipe.CriteriaNames.Select(name => predictor.Shelf.Criterion(name).Material)
                .OfType<Criterion>(),
        ];
        if (draws == 0)
        {
            return new(
                forecaster.Bounded(document),
                MarkingGuide.Of(piece, predictor, criteria, drawn: null, stop)
            );
        }
        PredictionOutcome? outcome = null;
        var guidance = MarkingGuide.Of(
            piece,
            predictor,
            criteria,
            charges =>
            {
                var (ofDraws, table) = forecaster.DrawnWithTable(
                    document,
                    likely: null,
                    done: null,
                    draws,
                    cores: null,
                    charges,
                    stop
                );
                outcome = ofDraws;
                return [.. charges.Select((_, c) => table!.GlowsAfter(c))];
            },
            stop
        );
        // Without pigment no glow was asked for.
        return new(outcome ?? forecaster.Drawn(document, draws: draws, stop: stop), guidance);
    }
}
