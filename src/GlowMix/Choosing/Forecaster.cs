using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Choosing;

/// <summary>
/// From a recipe to its prediction with the doubt in it and its targets judged. Keep one and ask it again. Safe to use from
/// several threads; the same recipe gives the same answer, on any number of cores.
/// </summary>
public sealed class Forecaster
{
    private readonly Predictor predictor;

    /// <param name="predictor">Who predicts.</param>
    public Forecaster(Predictor predictor)
    {
        ArgumentNullException.ThrowIfNull(predictor);
        this.predictor = predictor;
    }

    /// <summary>
    /// The likely figures alone, without bands, and the targets judged by them; the quickest way. Of figures that need further runs or
    /// the casting (shift by cause, along the piece) only those that a target asks for.
    /// </summary>
    /// <param name="document">The recipe; one with errors gives its problems back.</param>
    public PredictionOutcome Likely(RecipeDocument document)
    {
        var (piece, problems) = predictor.Check(document);
        if (piece is null)
        {
            return new(null, problems);
        }
        var targets = piece.Recipe.Targets;
        Figure[] wanted = [.. targets.Select(t => FigureCatalogue.Find(t.Figure, t.AtMinutes)!)];
        var prediction = predictor.Foretell(piece, bounded: false, wanted).Prediction;
        return new(
            prediction with
            {
                Targets = TargetJudge.Of(targets, prediction, _ => null, _ => null),
            },
            problems
        );
    }

    /// <summary>A prediction whose bands are those of the few runs that bound its doubt; the quick way.</summary>
    /// <param name="document">The recipe; one with errors gives its problems back.</param>
    public PredictionOutcome Bounded(RecipeDocument document)
    {
        var (piece, problems) = predictor.Check(document);
        if (piece is null)
        {
            return new(null, problems);
        }
        var (prediction, runs) = predictor.Foretell(piece, bounded: true);
        return new(
            prediction with
            {
                Targets = TargetJudge.Of(
                    piece.Recipe.Targets,
                    prediction,
                    _ => null,
                    figure => ReadingOf(figure, runs)
                ),
            },
            problems
        );
    }

    /// <summary>Of the two numbers that the bounding runs turn, the one that moves a figure more.</summary>
    private static string? ReadingOf(Figure figure, IReadOnlyList<Run> runs)
    {
        double byAbsorption = Range(
            runs.Where(r => r.Variation.LadderSmoothing == Variation.Likely.LadderSmoothing)
        );
        double byLadder = Range(
            runs.Where(r => r.Variation.PigmentAbsorptionFactor == Variation.Likely.PigmentAbsorptionFactor)
        );
        return byAbsorption == 0 && byLadder == 0 ? null
            : byAbsorption >= byLadder ? TargetTexts.PigmentReading
            : TargetTexts.DecayReading;

        double Range(IEnumerable<Run> some)
        {
            double[] values = [.. some.Select(r => r.Figures[figure]).OfType<double>()];
            return values.Length == 0 ? 0 : values.Max() - values.Min();
        }
    }
}
