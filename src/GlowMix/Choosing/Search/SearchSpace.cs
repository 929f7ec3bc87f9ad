using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Pieces;
using GlowMix.Recipes;

namespace GlowMix.Choosing.Search;

/// <summary>All designs that a recipe's choices offer: every combination of words, times the ranges of numbers.</summary>
/// <param name="WordKeys">Keys with listed values, by their full paths.</param>
/// <param name="Variants">Every combination of these values; one if there are no such keys.</param>
/// <param name="Axes">Keys with a range.</param>
internal sealed record SearchSpace(
    ImmutableArray<string> WordKeys,
    ImmutableArray<SearchVariant> Variants,
    ImmutableArray<SearchAxis> Axes
)
{
    private const int UsualSteps = 20;
    private const int FewestUsualSteps = 4;

    // What a search takes on without being asked to: some five seconds.
    private const double UsualDesigns = 2500;

    /// <summary>Designs of the coarse grid, variant by variant.</summary>
    public IEnumerable<Design> CoarseDesigns =>
        Enumerable
            .Range(0, Variants.Length)
            .SelectMany(v =>
                Combinations([.. Axes.Select(a => a.CoarseIndices)]).Select(s => new Design(v, s))
            );

    /// <summary>Fine steps between two values of the coarse grid.</summary>
    public int Stride { get; private init; } = SearchAxis.Stride;

    /// <summary>The same designs with a coarse grid of no more than so many, if leaving out values of ranges can do that.</summary>
    public SearchSpace Thinned(int mostDesigns)
    {
        int longest = Axes.Select(a => a.CoarseIndices.Length).DefaultIfEmpty(1).Max();
        for (int every = 1; ; every++)
        {
            var thin = this with
            {
                Axes = [.. Axes.Select(a => a.WithEvery(every))],
                Stride = every * Stride,
            };
            if (thin.CoarseCount <= mostDesigns || every >= longest)
            {
                return thin;
            }
        }
    }

    private double CoarseCount =>
        Axes.Aggregate((double)Variants.Length, (product, axis) => product * axis.CoarseIndices.Length);

    /// <summary>The piece of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="isSettled">False takes its grains as evenly spread: what a search of many thousands can afford.</param>
    public Piece PieceOf(Design design, bool isSettled)
    {
        var piece = Variants[design.Variant].Piece with { IsSettled = isSettled };
        for (int a = 0; a < Axes.Length; a++)
        {
            piece = piece.With(Axes[a].KeyPath, Axes[a].Values[design.Steps[a]]);
        }
        return piece;
    }

    /// <summary>The keys and values of a design, as a recipe writes them: words first.</summary>
    public ImmutableArray<KeyValuePair<string, string>> ChoicesOf(Design design) =>
        [
            .. WordKeys.Select((key, i) => KeyValuePair.Create(key, Variants[design.Variant].Values[i])),
            .. Axes.Select(
                (axis, a) => KeyValuePair.Create(axis.KeyPath, NumberText.Write(axis.Values[design.Steps[a]]))
            ),
        ];

    /// <summary>What a checked recipe offers, each value tried on the recipe.</summary>
    /// <param name="recipe">The recipe, free of errors.</param>
    /// <param name="check">Whether a changed recipe can be poured.</param>
    /// <param name="steps">Coarse steps of each range; null for as many as are worth the wait.</param>
    /// <param name="stop">Ends the trying.</param>
    /// <returns>The space, or the reasons why there is none.</returns>
    public static (SearchSpace? Space, ImmutableArray<Problem> Problems) Of(
        RecipeDocument recipe,
        Func<RecipeDocument, PieceReading> check,
        int? steps,
        CancellationToken stop
    )
    {
        var choices = ChoicesOf(recipe, out string? nothing);
        if (nothing is not null)
        {
            return (null, [new Problem(recipe.Name, recipe.Recipe!.PlaceOf("balance"), nothing)]);
        }
        var words = choices.Where(c => !c.AnyOf.IsEmpty).ToImmutableArray();
        var ranges = choices.Where(c => c.AnyOf.IsEmpty).ToImmutableArray();
        double variants = words.Aggregate(1.0, (product, choice) => product * choice.AnyOf.Length);
        int taken = steps ?? UsualSteps;
        var axes = AxesOf(taken);
        while (steps is null && taken > FewestUsualSteps && DesignCount() > UsualDesigns)
        {
            axes = AxesOf(--taken);
        }
        if (DesignCount() > Balance.MostDesigns)
        {
            var place = recipe.Recipe!.PlaceOf("balance");
            return (
                null,
                [new Problem(recipe.Name, place, BalanceTexts.TooManyDesigns(DesignCount(), taken))]
            );
        }
        return Tried(recipe, check, words, ranges, axes, stop);

        ImmutableArray<SearchAxis> AxesOf(int coarse) =>
            [.. ranges.Select(r => SearchAxis.Between(r.KeyPath, r.From!.Value, r.To!.Value, coarse))];

        double DesignCount() =>
            axes.Aggregate(variants, (product, axis) => product * axis.CoarseIndices.Length);
    }

    private static (SearchSpace?, ImmutableArray<Problem>) Tried(
        RecipeDocument recipe,
        Func<RecipeDocument, PieceReading> check,
        ImmutableArray<RecipeChoice> words,
        ImmutableArray<RecipeChoice> ranges,
        ImmutableArray<SearchAxis> axes,
        CancellationToken stop
    )
    {
        var variants = ImmutableArray.CreateBuilder<SearchVariant>();
        var problems = ImmutableArray.CreateBuilder<Problem>();
        foreach (var values in Combinations([.. words.Select(w => w.AnyOf)]))
        {
            stop.ThrowIfCancellationRequested();
            var changed = recipe;
            string where = "";
            for (int i = 0; i < values.Length; i++)
            {
                changed = changed.With(words[i].KeyPath, values[i]);
                where += (i > 0 ? ", " : "") + BalanceTexts.At(words[i].KeyPath, values[i]);
            }
            if (Take(changed, where) is not { } piece)
            {
                continue;
            }
            variants.Add(new(values, piece));
            // What a recipe refuses of one number it refuses beyond some value: the ends tell.
            foreach (var range in ranges)
            {
                foreach (double end in new[] { range.From!.Value, range.To!.Value })
                {
                    string at = BalanceTexts.At(range.KeyPath, NumberText.Write(end));
                    Take(changed.With(range.KeyPath, end), where.Length > 0 ? $"{where}, {at}" : at);
                }
            }
        }
        return problems.Count > 0
            ? (null, problems.ToImmutable())
            : (new([.. words.Select(w => w.KeyPath)], variants.ToImmutable(), axes), []);

        Piece? Take(RecipeDocument changed, string where)
        {
            var reading = check(changed);
            if (
                reading.Piece is null
                && reading.Problems.FirstOrDefault(p => p.Severity == Severity.Error) is { } error
            )
            {
                problems.Add(error with { Text = BalanceTexts.Refused(where, error.Text) });
            }
            return reading.Piece;
        }
    }

    // Without choices: loading and depth of each pigmented layer, from half to double.
    private static ImmutableArray<RecipeChoice> ChoicesOf(RecipeDocument recipe, out string? nothing)
    {
        nothing = null;
        var told = recipe.Recipe!.Balance.Choices;
        if (!told.IsEmpty)
        {
            return told;
        }
        var pigmented = recipe.Recipe.Layers.Where(l => l.PigmentName is not null).ToArray();
        if (pigmented.All(l => l.LoadingPercent is not > 0))
        {
            nothing = pigmented.Length == 0 ? BalanceTexts.NothingToTurn : BalanceTexts.NothingLoaded;
            return [];
        }
        return
        [
            .. pigmented
                .Where(l => l.LoadingPercent > 0)
                .SelectMany(l =>
                    new[]
                    {
                        HalfToDouble(recipe, LoadingKey(recipe, l.Name)),
                        HalfToDouble(recipe, $"layers.{l.Name}.depth_mm"),
                    }
                ),
        ];
    }

    private static string LoadingKey(RecipeDocument recipe, string layer)
    {
        string byResin = $"layers.{layer}.loading_g_per_100g_resin";
        return recipe.Get(byResin) is null ? $"layers.{layer}.loading_percent" : byResin;
    }

    private static RecipeChoice HalfToDouble(RecipeDocument recipe, string keyPath)
    {
        _ = NumberText.TryRead(recipe.Get(keyPath)!, out double value);
        var range = recipe.KeyOf(keyPath).Range;
        return new()
        {
            KeyPath = keyPath,
            From = Math.Max(range.Least, value / 2),
            To = Math.Min(range.Most, value * 2),
        };
    }

    private static IEnumerable<ImmutableArray<T>> Combinations<T>(ImmutableArray<ImmutableArray<T>> lists)
    {
        IEnumerable<ImmutableArray<T>> all =
        [
            [],
        ];
        foreach (var list in lists)
        {
            all = all.SelectMany(begun => list.Select(begun.Add));
        }
        return all;
    }
}
