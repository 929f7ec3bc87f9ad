using System.Collections.Immutable;
using GlowMix.Choosing.Draws;
using GlowMix.Choosing.Search;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Choosing;

/// <summary>
/// The search for a balance of white and glow among what a recipe lets be turned. Every end of every choice is tried on the recipe
/// before the search begins. The same recipe gives the same answer, on any number of cores.
/// </summary>
public sealed class Balance
{
    /// <summary>The fewest steps a range can be cut into.</summary>
    public const int FewestSteps = 2;

    /// <summary>The most steps a range can be cut into.</summary>
    public const int MostSteps = 200;

    /// <summary>The most designs of one grid.</summary>
    public const int MostDesigns = 200_000;

    private const int MostOfFront = 9;

    private readonly Predictor predictor;
    private readonly RecipeDocument recipe;
    private readonly SearchSpace space;
    private readonly BalanceGoal goal;

    private Balance(Predictor predictor, RecipeDocument recipe, SearchSpace space) =>
        (this.predictor, this.recipe, this.space, goal) = (
            predictor,
            recipe,
            space,
            new BalanceGoal(recipe.Recipe!)
        );

    /// <summary>Prepares a search.</summary>
    /// <param name="predictor">Who predicts.</param>
    /// <param name="recipe">The recipe; one with errors gives its problems back.</param>
    /// <param name="steps">
    /// Steps that each range is cut into at first, <see cref="FewestSteps"/> to <see cref="MostSteps"/>; null for as many as are
    /// worth the wait.
    /// </param>
    /// <param name="stop">Ends the preparation.</param>
    public static BalanceReading Prepare(
        Predictor predictor,
        RecipeDocument recipe,
        int? steps = null,
        CancellationToken stop = default
    )
    {
        ArgumentNullException.ThrowIfNull(predictor);
        ArgumentNullException.ThrowIfNull(recipe);
        if (steps is < FewestSteps or > MostSteps)
        {
            throw new ArgumentOutOfRangeException(nameof(steps), steps, BalanceTexts.StepCount(steps.Value));
        }
        var asWritten = predictor.Check(recipe);
        if (asWritten.Piece is null)
        {
            return new(null, asWritten.Problems);
        }
        var (space, problems) = SearchSpace.Of(recipe, predictor.Check, steps, stop);
        return space is null
            ? new(null, problems)
            : new(new Balance(predictor, recipe, space), asWritten.Problems);
    }

    /// <summary>Searches.</summary>
    /// <param name="done">Told how many designs are tried and how many are meant to be by now, from any thread; may be null.</param>
    /// <param name="cores">How many cores to use; null for all.</param>
    /// <param name="draws">
    /// How often the recommended design is drawn, for its bands and to see how surely it meets the targets; the others of the front
    /// are drawn as the points of a sweep are. 0 for bands of the bounding runs, and no share.
    /// </param>
    /// <param name="stop">Ends the search: the answer is of what was tried by then.</param>
    public BalanceAnswer Run(
        Action<int, int>? done = null,
        int? cores = null,
        int draws = Forecaster.UsualDraws,
        CancellationToken stop = default
    )
    {
        int all = cores ?? Environment.ProcessorCount;
        int before = 0;
        var passes = new BalancePasses(
            space,
            (designs, isSettled, until) =>
            {
                int begun = before;
                before += designs.Count;
                return new DesignBench(predictor, space, goal, all, isSettled).Solve(
                    designs,
                    count => done?.Invoke(begun + count, begun + designs.Count),
                    until
                );
            }
        );
        passes.Run(stop);
        return AnswerOf(passes, draws, cores, stop);
    }

    /// <summary>The recipe with a design's choices, comments kept.</summary>
    public RecipeDocument RecipeOf(BalanceDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return With(design.Choices);
    }

    private BalanceAnswer AnswerOf(BalancePasses passes, int draws, int? cores, CancellationToken stop)
    {
        var search = passes.Settled;
        DesignResult[] even = [.. passes.Grid.CoarseDesigns.Select(search.Of).OfType<DesignResult>()];
        var front = Front.Thinned(Front.Of(search.Tried.Where(r => r.IsFeasible)), MostOfFront);
        var best = Front.Compromise(front);
        DrawTable? ofBest = null;
        var told = front
            .Select(result =>
            {
                var (design, table) = Foretold(
                    result,
                    result == best ? draws : Math.Min(draws, Sweep.UsualDraws),
                    cores,
                    stop
                );
                ofBest = result == best ? table : ofBest;
                return design;
            })
            .ToImmutableArray();
        var recommended = best is null ? null : told[front.IndexOf(best)];
        var relaxations = best is null ? RelaxationsOf(search) : [];
        var nearest = best is null
            ? search.Tried.OrderBy(search.Shortfall).ThenBy(r => r.Design).FirstOrDefault()
            : null;
        return new()
        {
            Choices =
            [
                .. space.WordKeys.Select(
                    (key, i) =>
                        new RecipeChoice
                        {
                            KeyPath = key,
                            AnyOf = [.. space.Variants.Select(v => v.Values[i]).Distinct()],
                        }
                ),
                .. space.Axes.Select(a => new RecipeChoice
                {
                    KeyPath = a.KeyPath,
                    From = a.Values[0],
                    To = a.Values[^1],
                }),
            ],
            Targets = recipe.Recipe!.Targets,
            WhiteCctK = goal.WhiteCctK,
            GlowAtMinutes = goal.GlowAtMinutes,
            TriedCount = passes.Spread.Tried.Concat(search.Tried).Select(r => r.Design).Distinct().Count(),
            SettledCount = search.TriedCount,
            GridCount = even.Length,
            GridFeasibleCount = even.Count(r => r.IsFeasible),
            Map = passes.IsComplete ? MapOfDesigns.Of(passes.Grid, search) : null,
            Front = told,
            Recommended = recommended,
            HeldBy = best is null ? [] : LimitsOf(best, new FrontScale(front).FromIdeal, search),
            WhitestHeldBy = best is null ? [] : LimitsOf(front[0], r => r.OffWhite, search),
            BrightestHeldBy = best is null ? [] : LimitsOf(front[^1], r => -r.GlowMcdPerM2, search),
            ShareOfDraws = ofBest is null ? null : ShareOf(recommended!, ofBest),
            DrawCount = ofBest?.Count ?? 0,
            Relaxations = relaxations,
            Nearest = nearest is null ? null : Foretold(nearest, draws, cores, stop).Design,
            IsComplete = passes.IsComplete,
        };
    }

    private (BalanceDesign Design, DrawTable? Table) Foretold(
        DesignResult result,
        int draws,
        int? cores,
        CancellationToken stop
    )
    {
        var choices = space.ChoicesOf(result.Design);
        var changed = With(choices);
        var (outcome, table) = Outcome();
        return (
            new(
                choices,
                double.IsFinite(result.OffWhite) ? result.OffWhite : null,
                result.GlowMcdPerM2,
                outcome.Prediction
                    ?? throw new InvalidOperationException("A design that was tried before is refused.")
            ),
            table
        );

        (PredictionOutcome Outcome, DrawTable? Table) Outcome()
        {
            var forecaster = new Forecaster(predictor);
            if (draws > 0 && !stop.IsCancellationRequested)
            {
                try
                {
                    return forecaster.DrawnWithTable(changed, null, null, draws, cores, null, stop);
                }
                catch (OperationCanceledException) when (stop.IsCancellationRequested)
                {
                    // What the search found is told all the same.
                }
            }
            return (forecaster.Bounded(changed), null);
        }
    }

    private ImmutableArray<BalanceLimit> LimitsOf(
        DesignResult best,
        Func<DesignResult, double> cost,
        BalanceSearch search
    ) => LimitsOfDesign.Of(best, cost, space, search, recipe.Recipe!.Targets);

    private double? ShareOf(BalanceDesign design, DrawTable table)
    {
        if (table.Count == 0 || goal.TargetCount == 0)
        {
            return null;
        }
        // What is not drawn, such as masses, is as it is likely to be.
        var undrawn = goal.TargetFigures.Where(f => !DrawTable.Holds(f)).ToArray();
        int met = table.Draws.Count(draw =>
        {
            var figures = FigureValues.Builder.From(draw.Figures);
            foreach (var figure in undrawn)
            {
                figures.Set(figure.Name, design.Prediction.Figures[figure]);
            }
            return goal.Judge(new Design(0, []), figures.Build(), draw.RaMeaningful).IsFeasible;
        });
        return met / (double)table.Count;
    }

    private ImmutableArray<BalanceRelaxation> RelaxationsOf(BalanceSearch search) =>
        [
            .. Enumerable
                .Range(0, goal.TargetCount)
                .Select(t => (Target: t, Best: search.MissingOnly(t).FirstOrDefault()))
                .Where(r => r.Best is not null)
                .OrderBy(r => search.InSpans(r.Target, r.Best!.Shortfalls[r.Target]))
                .ThenBy(r => r.Target)
                .Select(r => new BalanceRelaxation(
                    recipe.Recipe!.Targets[r.Target],
                    r.Best!.Values[r.Target]!.Value,
                    space.ChoicesOf(r.Best.Design)
                )),
        ];

    private RecipeDocument With(ImmutableArray<KeyValuePair<string, string>> choices) =>
        choices.Aggregate(recipe, (changed, choice) => changed.With(choice.Key, choice.Value));
}
