using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Choosing;

/// <summary>
/// A recipe predicted again and again with one or two of its numbers changed. Every value is tried on the recipe before the
/// first prediction runs, so that a sweep never ends at a value that cannot be poured.
/// </summary>
public sealed class Sweep
{
    /// <summary>The most predictions of one sweep.</summary>
    public const int MostPoints = 10_000;

    /// <summary>Draws of each point unless told otherwise: its 10 and 90 % ends lie within some 5 % of the figure of those of 512.</summary>
    public const int UsualDraws = 64;

    private const int MostRefusalsTold = 3;

    // Read, but only to judge or to search by.
    private static readonly string[] sectionsWithoutFigures = ["format", "targets", "balance", "criteria"];

    private readonly Predictor predictor;
    private readonly Forecaster forecaster;
    private readonly RecipeDocument recipe;

    private Sweep(Predictor predictor, RecipeDocument recipe, ImmutableArray<SweepAxis> axes) =>
        (this.predictor, forecaster, this.recipe, Axes) = (predictor, new(predictor), recipe, axes);

    /// <summary>What is varied, with full key paths.</summary>
    public ImmutableArray<SweepAxis> Axes { get; }

    /// <summary>How many predictions it takes.</summary>
    public int PointCount => Axes.Aggregate(1, (count, axis) => count * axis.Values.Length);

    /// <summary>The figures of a sweep that names none: white, light kept, glow.</summary>
    public static ImmutableArray<Figure> UsualFigures { get; } =
    [
        .. new[]
        {
            "lit.cct_k",
            "lit.duv",
            "lit.flux_kept_percent",
            "afterglow.luminance_mcd_m2[10]",
            "afterglow.luminance_mcd_m2[60]",
            "afterglow.minutes_to_limit",
        }.Select(name => FigureCatalogue.Find(name)!),
    ];

    /// <summary>Prepares a sweep and tries each of its values on the recipe.</summary>
    /// <param name="predictor">Who predicts.</param>
    /// <param name="recipe">The recipe; one with errors gives its problems back.</param>
    /// <param name="axes">One or two keys; the last changes fastest.</param>
    /// <param name="stop">Ends the trying.</param>
    public static SweepReading Prepare(
        Predictor predictor,
        RecipeDocument recipe,
        IReadOnlyList<SweepAxis> axes,
        CancellationToken stop = default
    )
    {
        ArgumentNullException.ThrowIfNull(predictor);
        ArgumentNullException.ThrowIfNull(recipe);
        ArgumentNullException.ThrowIfNull(axes);
        var asWritten = predictor.Check(recipe);
        if (asWritten.Piece is null)
        {
            return new(null, asWritten.Problems);
        }
        var (full, problem) = Understood(recipe, axes);
        if (problem is not null)
        {
            return new(null, [new Problem(recipe.Name, null, problem)]);
        }
        var sweep = new Sweep(predictor, recipe, full);
        var refusals = sweep.Refusals(stop);
        return refusals.IsEmpty ? new(sweep, asWritten.Problems) : new(null, refusals);
    }

    /// <summary>A figure by the name a user gave it, or why there is none.</summary>
    public static (Figure? Figure, string? Problem) FigureOf(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        if (FigureCatalogue.Find(name) is { } figure)
        {
            return (figure, null);
        }
        string? hint =
            FigureCatalogue.All.FirstOrDefault(f => f.AtMinutes is 60 && f.Family == name)?.Name
            ?? NearestWord.Of(name, FigureCatalogue.All.Select(f => f.Name))
            ?? FigureCatalogue
                .All.FirstOrDefault(f => f.Name.EndsWith("." + name, StringComparison.Ordinal))
                ?.Name;
        return (null, SweepTexts.NoSuchFigure(name, hint));
    }

    /// <summary>Predicts every point, one after the other: a prediction itself runs on all cores.</summary>
    /// <param name="figures">Which figures to keep.</param>
    /// <param name="draws">Draws behind the bands of each point; 0 for those of the few bounding runs.</param>
    /// <param name="done">Told how many points are done; may be null.</param>
    /// <param name="stop">Ends it: what is done by then is in the table.</param>
    public SweepTable Run(
        IReadOnlyList<Figure> figures,
        int draws = UsualDraws,
        Action<int>? done = null,
        CancellationToken stop = default
    )
    {
        ArgumentNullException.ThrowIfNull(figures);
        ArgumentOutOfRangeException.ThrowIfNegative(draws);
        int total = PointCount;
        var points = ImmutableArray.CreateBuilder<SweepPoint>(total);
        try
        {
            while (points.Count < total)
            {
                stop.ThrowIfCancellationRequested();
                points.Add(PointAt(points.Count, figures, draws, stop));
                done?.Invoke(points.Count);
            }
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            // What is done is worth keeping.
        }
        return new(Axes, [.. figures], points.ToImmutable(), draws, points.Count == total);
    }

    private SweepPoint PointAt(int index, IReadOnlyList<Figure> figures, int draws, CancellationToken stop)
    {
        var (at, changed) = Changed(index);
        var prediction =
            (
                draws == 0 ? forecaster.Bounded(changed) : forecaster.Drawn(changed, draws: draws, stop: stop)
            ).Prediction
            ?? throw new InvalidOperationException("A value that was tried before is refused.");
        var bands = prediction.Bands.ToDictionary(b => b.Key.Index, b => b.Value);
        return new(
            at,
            [
                .. figures.Select(f =>
                    bands.TryGetValue(f.Index, out var band)
                        ? band
                        : new Band(prediction.Figures[f], prediction.Figures[f], prediction.Figures[f])
                ),
            ]
        );
    }

    private (ImmutableArray<double> At, RecipeDocument Recipe) Changed(int index)
    {
        var at = new double[Axes.Length];
        for (int a = Axes.Length - 1; a >= 0; a--)
        {
            (index, int step) = Math.DivRem(index, Axes[a].Values.Length);
            at[a] = Axes[a].Values[step];
        }
        var changed = recipe;
        for (int a = 0; a < at.Length; a++)
        {
            changed = changed.With(Axes[a].KeyPath, at[a]);
        }
        return ([.. at], changed);
    }

    private static (ImmutableArray<SweepAxis> Axes, string? Problem) Understood(
        RecipeDocument recipe,
        IReadOnlyList<SweepAxis> axes
    )
    {
        if (axes.Count is not (1 or 2))
        {
            return ([], SweepTexts.AxisCount(axes.Count));
        }
        var full = ImmutableArray.CreateBuilder<SweepAxis>(axes.Count);
        foreach (var axis in axes)
        {
            if (!recipe.TryResolve(axis.KeyPath, out string path, out string problem))
            {
                return ([], problem);
            }
            if (!recipe.KeyOf(path).IsNumber)
            {
                return ([], SweepTexts.NotANumberKey(path));
            }
            if (sectionsWithoutFigures.Contains(path.Split('.')[0]))
            {
                return ([], SweepTexts.NoFigureDepends(path));
            }
            if (full.Any(a => a.KeyPath == path))
            {
                return ([], SweepTexts.SameKeyTwice(path));
            }
            full.Add(axis with { KeyPath = path });
        }
        long count = full.Aggregate(1L, (product, axis) => product * axis.Values.Length);
        return count > MostPoints ? ([], SweepTexts.PointCount(count)) : (full.ToImmutable(), null);
    }

    // Each value by itself first: a key's own range is the usual reason, and is told once and not for each of the other key's.
    private ImmutableArray<Problem> Refusals(CancellationToken stop)
    {
        foreach (var axis in Axes)
        {
            var refused = Refused(
                axis.Values.Select(v => (SweepTexts.At(axis.KeyPath, v), recipe.With(axis.KeyPath, v))),
                stop
            );
            if (!refused.IsEmpty)
            {
                return refused;
            }
        }
        return Axes.Length == 1
            ? []
            : Refused(
                Enumerable
                    .Range(0, PointCount)
                    .Select(i =>
                    {
                        var (at, changed) = Changed(i);
                        string where = string.Join(
                            ", ",
                            Axes.Select((axis, a) => SweepTexts.At(axis.KeyPath, at[a]))
                        );
                        return (where, changed);
                    }),
                stop
            );
    }

    private ImmutableArray<Problem> Refused(
        IEnumerable<(string Where, RecipeDocument Recipe)> tries,
        CancellationToken stop
    )
    {
        var refused = new List<Problem>();
        foreach (var (where, changed) in tries)
        {
            stop.ThrowIfCancellationRequested();
            if (
                predictor.Check(changed) is { Piece: null } check
                && check.Problems.FirstOrDefault(p => p.Severity == Severity.Error) is { } error
            )
            {
                refused.Add(error with { Text = SweepTexts.Refused(where, error.Text) });
            }
        }
        return refused.Count <= MostRefusalsTold + 1
            ? [.. refused]
            :
            [
                .. refused.Take(MostRefusalsTold),
                new Problem(recipe.Name, null, SweepTexts.AndMore(refused.Count - MostRefusalsTold)),
            ];
    }
}
