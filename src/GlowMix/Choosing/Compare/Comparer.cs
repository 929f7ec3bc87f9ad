using System.Collections.Immutable;
using GlowMix.Choosing.Draws;
using GlowMix.Documents;
using GlowMix.Optics.Pour;
using GlowMix.Pieces;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Choosing.Compare;

/// <summary>Puts two recipes side by side. The same two give the same answer, on any number of cores.</summary>
public static class Comparer
{
    /// <summary>Compares with the few runs that bound the doubt; the quick way.</summary>
    /// <param name="before">The first recipe, and who predicts it.</param>
    /// <param name="after">The second, likewise; the same predictor where both lie in one folder.</param>
    public static ComparisonOutcome Bounded(
        (RecipeDocument Recipe, Predictor Predictor) before,
        (RecipeDocument Recipe, Predictor Predictor) after
    )
    {
        var (first, second, problems) = Checked(before, after);
        if (first is null || second is null)
        {
            return new(null, problems);
        }
        var (a, runsOfA) = before.Predictor.Foretell(first, bounded: true);
        var (b, runsOfB) = after.Predictor.Foretell(second, bounded: true);
        return new(
            Of(
                (before.Recipe, first, a),
                (after.Recipe, second, b),
                before.Predictor,
                Run.LikelyOf(runsOfA).Light.Pour,
                PairedRuns.Of(runsOfA, runsOfB),
                0
            ),
            problems
        );
    }

    /// <summary>Compares by draws within all tolerances and doubts, both pieces drawn alike.</summary>
    /// <param name="before">The first recipe, and who predicts it.</param>
    /// <param name="after">The second, likewise; the same predictor where both lie in one folder.</param>
    /// <param name="done">Told how many draws of both are done, from any thread; may be null.</param>
    /// <param name="draws">How many of each, 1 or more.</param>
    /// <param name="cores">How many cores to use, null for all; the answer is the same.</param>
    /// <param name="stop">Ends the run.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static ComparisonOutcome Drawn(
        (RecipeDocument Recipe, Predictor Predictor) before,
        (RecipeDocument Recipe, Predictor Predictor) after,
        Action<int>? done = null,
        int draws = Forecaster.UsualDraws,
        int? cores = null,
        CancellationToken stop = default
    )
    {
        return new DrawnComparer(before, draws, cores).With(after, done, stop);
    }

    /// <summary>Compares by draws, with what earlier ones took.</summary>
    internal static ComparisonOutcome Drawn(
        (RecipeDocument Recipe, Predictor Predictor) before,
        (RecipeDocument Recipe, Predictor Predictor) after,
        DrawShelf shelfBefore,
        DrawShelf shelfAfter,
        Action<int>? done,
        int draws,
        int? cores,
        CancellationToken stop
    ) => new DrawnComparer(before, shelfBefore, draws, cores).With(after, shelfAfter, done, stop);

    /// <summary>Both pieces, each null where its recipe has errors.</summary>
    internal static (Piece? Before, Piece? After, ImmutableArray<Problem> Problems) Checked(
        (RecipeDocument Recipe, Predictor Predictor) before,
        (RecipeDocument Recipe, Predictor Predictor) after
    )
    {
        var (first, ofFirst) = before.Predictor.Check(before.Recipe);
        var (second, ofSecond) = after.Predictor.Check(after.Recipe);
        return (first, second, [.. ofFirst.Concat(ofSecond).Distinct()]);
    }

    /// <summary>Puts two predicted pieces side by side.</summary>
    /// <param name="before">The first.</param>
    /// <param name="after">The second.</param>
    /// <param name="predictor">Who predicts the first with one thing or another taken from the second.</param>
    /// <param name="pour">The first piece's, solved.</param>
    /// <param name="pairs">Runs or draws of both, turned alike.</param>
    /// <param name="drawCount">How many of the pairs are draws.</param>
    internal static Comparison Of(
        (RecipeDocument Recipe, Piece Piece, Prediction Prediction) before,
        (RecipeDocument Recipe, Piece Piece, Prediction Prediction) after,
        Predictor predictor,
        PourOptics pour,
        PairedRuns pairs,
        int drawCount
    )
    {
        var targets = after.Piece.Recipe.Targets;
        var ofFirst = TargetJudge.Of(targets, before.Prediction, _ => null, _ => null);
        // The second's own, judged when it was drawn, tell the share of draws too.
        var ofSecond =
            after.Prediction.Targets.Count == targets.Length
                ? after.Prediction.Targets
                : TargetJudge.Of(targets, after.Prediction, _ => null, _ => null);
        return new()
        {
            Before = before.Prediction,
            After = after.Prediction with { Targets = ofSecond },
            Differences =
            [
                .. RecipeDifferences.Of(before.Recipe, after.Recipe),
                .. MaterialDifferences.Of(before.Piece, after.Piece),
            ],
            Targets = [.. ofFirst.Zip(ofSecond, (a, b) => new TargetChange(a, b))],
            Figures = [.. FiguresOf(before.Prediction, after.Prediction, pairs)],
            Causes = CausesOf(
                before.Piece,
                after.Piece,
                before.Prediction,
                after.Prediction,
                predictor,
                pour
            ),
            DrawCount = drawCount,
        };
    }

    private static IEnumerable<FigureChange> FiguresOf(Prediction before, Prediction after, PairedRuns pairs)
    {
        foreach (var figure in FigureCatalogue.All)
        {
            double? a = before.Figures[figure];
            double? b = after.Figures[figure];
            if (a is null && b is null)
            {
                continue;
            }
            Band? ratio =
                Comparison.IsByRatio(figure) && a > 0 && b is not null
                    ? pairs.BandOf(figure, b / a, (x, y) => y / x)
                    : null;
            yield return new(
                figure,
                BandOf(before, figure),
                BandOf(after, figure),
                pairs.BandOf(figure, b - a, (x, y) => y - x),
                ratio
            );
        }
    }

    private static Band BandOf(Prediction prediction, Figure figure)
    {
        double? likely = prediction.Figures[figure];
        var band = prediction.Bands.FirstOrDefault(b => b.Key.Index == figure.Index).Value;
        return band.Likely is null ? new(likely, likely, likely) : band;
    }

    private static ImmutableArray<CauseOfChange> CausesOf(
        Piece from,
        Piece to,
        Prediction before,
        Prediction after,
        Predictor predictor,
        PourOptics pour
    )
    {
        var exchanges = Exchanges.Between(from, to);
        if (exchanges.Count < 2)
        {
            return [];
        }
        var alone = new CauseOfChange[exchanges.Count];
        Parallel.For(
            0,
            alone.Length,
            i =>
            {
                var exchange = exchanges[i];
                var figures = FiguresOf(exchange.Apply(from), predictor, exchange.KeepsPour ? pour : null);
                alone[i] = new(
                    exchange.Key,
                    ImmutableArray.CreateRange(
                        Comparison.CauseFigures,
                        f => ChangeOf(f, before.Figures[f], figures?[f])
                    )
                );
            }
        );
        var together = ImmutableArray.CreateBuilder<double?>();
        for (int i = 0; i < Comparison.CauseFigures.Length; i++)
        {
            int at = i;
            var figure = Comparison.CauseFigures[i];
            double? whole = ChangeOf(figure, before.Figures[figure], after.Figures[figure]);
            together.Add(LeftOver(figure, whole, Array.ConvertAll(alone, c => c.Changes[at])));
        }
        return [.. alone, new(Comparison.Together, together.ToImmutable())];
    }

    // A mixture of two pieces need not be one that could be poured: grains may be too large for another resin's index.
    private static FigureValues? FiguresOf(Piece piece, Predictor predictor, PourOptics? pour)
    {
        if (piece.Layers.Any(l => l.HasPigment && predictor.LadderOf(l.Pigment!).Fit?.Ladder is null))
        {
            return null;
        }
        try
        {
            return (pour is null ? predictor.LikelyRun(piece) : predictor.LikelyRun(piece, pour)).Figures;
        }
        catch (ArgumentOutOfRangeException)
        {
            return null;
        }
    }

    private static double? ChangeOf(Figure figure, double? before, double? after) =>
        !Comparison.IsByRatio(figure) ? after - before
        : before > 0 ? after / before
        : null;

    private static double? LeftOver(Figure figure, double? whole, double?[] alone)
    {
        bool isByRatio = Comparison.IsByRatio(figure);
        double? left = whole;
        foreach (double? one in alone)
        {
            left =
                !isByRatio ? left - one
                : one > 0 ? left / one
                : null;
        }
        return left;
    }
}
