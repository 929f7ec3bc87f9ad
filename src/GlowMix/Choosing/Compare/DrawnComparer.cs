using GlowMix.Choosing.Draws;
using GlowMix.Optics.Pour;
using GlowMix.Pieces;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Choosing.Compare;

/// <summary>
/// Holds one recipe against several others by draws, each pair drawn alike. The first recipe is drawn once for all of them. Not for
/// several threads; every answer is that of <see cref="Comparer"/> for the pair.
/// </summary>
public sealed class DrawnComparer
{
    private readonly (RecipeDocument Recipe, Predictor Predictor) before;
    private readonly int draws;
    private readonly int? cores;
    private readonly DrawShelf shelf;
    private (Prediction Likely, PourOptics Pour, DrawTable Table)? first;

    /// <param name="before">The first recipe, and who predicts it.</param>
    /// <param name="draws">How many of each, 1 or more.</param>
    /// <param name="cores">How many cores to use, null for all; the answer is the same.</param>
    public DrawnComparer(
        (RecipeDocument Recipe, Predictor Predictor) before,
        int draws = Forecaster.UsualDraws,
        int? cores = null
    )
        : this(before, new DrawShelf(before.Predictor.Optics, before.Predictor.Sheets), draws, cores) { }

    internal DrawnComparer(
        (RecipeDocument Recipe, Predictor Predictor) before,
        DrawShelf shelf,
        int draws,
        int? cores
    )
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 1);
        (this.before, this.shelf, this.draws, this.cores) = (before, shelf, draws, cores);
    }

    /// <summary>Compares with one other.</summary>
    /// <param name="after">The second recipe; the same predictor where both lie in one folder.</param>
    /// <param name="done">Told how many draws of both are done, from any thread; may be null.</param>
    /// <param name="stop">Ends the run.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public ComparisonOutcome With(
        (RecipeDocument Recipe, Predictor Predictor) after,
        Action<int>? done = null,
        CancellationToken stop = default
    ) =>
        With(
            after,
            ReferenceEquals(before.Predictor, after.Predictor)
                ? shelf
                : new(after.Predictor.Optics, after.Predictor.Sheets),
            done,
            stop
        );

    internal ComparisonOutcome With(
        (RecipeDocument Recipe, Predictor Predictor) after,
        DrawShelf shelfAfter,
        Action<int>? done,
        CancellationToken stop
    )
    {
        var (a, b, problems) = Comparer.Checked(before, after);
        if (a is null || b is null)
        {
            return new(null, problems);
        }
        var (likelyOfA, pourOfA) = first is { } known ? (known.Likely, known.Pour) : LikelyOf(a);
        var likelyOfB = after.Predictor.Foretell(b, bounded: false).Prediction;
        stop.ThrowIfCancellationRequested();
        var (tableOfA, tableOfB) = PairedDraws.Of(
            new DrawBench(a, shelf),
            new DrawBench(b, shelfAfter),
            draws,
            cores,
            done,
            first?.Table,
            stop
        );
        first = (likelyOfA, pourOfA, tableOfA);
        var pairs = PairedRuns.Of(tableOfA, likelyOfA.Figures, tableOfB, likelyOfB.Figures);
        bool isDrawn = !(tableOfA.IsEmpty && tableOfB.IsEmpty);
        if (isDrawn && pairs.Pairs.Length < Math.Min(draws, Forecaster.FewestDraws) / 2)
        {
            return Comparer.Bounded(before, after);
        }
        return new(
            Comparer.Of(
                (before.Recipe, a, Forecaster.Banded(a, likelyOfA, tableOfA)),
                (after.Recipe, b, Forecaster.Banded(b, likelyOfB, tableOfB)),
                before.Predictor,
                pourOfA,
                pairs,
                pairs.Pairs.Length
            ),
            problems
        );
    }

    private (Prediction, PourOptics) LikelyOf(Piece piece)
    {
        var (prediction, runs) = before.Predictor.Foretell(piece, bounded: false);
        return (prediction, Run.LikelyOf(runs).Light.Pour);
    }
}
