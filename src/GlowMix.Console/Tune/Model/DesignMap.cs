using System.Collections.Immutable;
using GlowMix.Console.Plots;
using GlowMix.Documents;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>Loading across, depth up, for one layer: the points, and what is known of each by now.</summary>
internal sealed class DesignMap
{
    private const int MostAcross = 24;
    private const int MostUp = 13;
    private const double UsualMinutes = 60;
    private const double LeastSpan = 0.01;
    private const int Decimals = 6;

    private readonly RecipeDocument document;
    private readonly MapCell?[] cells;

    private DesignMap(RecipeDocument document, string across, string up)
    {
        (this.document, AcrossKey, UpKey) = (document, across, up);
        Across = Values(across, MostAcross);
        Up = Values(up, MostUp);
        cells = new MapCell?[Across.Length * Up.Length];
        Identity = IdentityOf(document, across, up);
    }

    /// <summary>Key of the loading.</summary>
    public string AcrossKey { get; }

    /// <summary>Key of the depth.</summary>
    public string UpKey { get; }

    /// <summary>Loadings, rising.</summary>
    public ImmutableArray<double> Across { get; }

    /// <summary>Depths, rising.</summary>
    public ImmutableArray<double> Up { get; }

    /// <summary>Points that are known.</summary>
    public int KnownCount => cells.Count(c => c is not null);

    /// <summary>All points.</summary>
    public int Count => cells.Length;

    /// <summary>All that a recipe holds but loading and depth: a map of it serves while these alone are turned.</summary>
    public string Identity { get; }

    /// <summary>What is known of a point; null if nothing yet.</summary>
    public MapCell? this[int across, int up] => cells[(up * Across.Length) + across];

    /// <summary>The map of a layer; null where it has no pigment.</summary>
    /// <param name="document">A recipe without errors.</param>
    /// <param name="layer">The layer's name.</param>
    public static DesignMap? Of(RecipeDocument document, string layer)
    {
        var (across, up) = KeysOf(document, layer);
        return document.Get(across) is null ? null : new(document, across, up);
    }

    /// <summary>Whether this is the map of a recipe, wherever its loading and depth stand.</summary>
    public bool Serves(RecipeDocument other, string layer) =>
        KeysOf(other, layer) == (AcrossKey, UpKey) && IdentityOf(other, AcrossKey, UpKey) == Identity;

    /// <summary>The recipe of a point.</summary>
    public RecipeDocument At(int across, int up) =>
        document.With(AcrossKey, Across[across]).With(UpKey, Up[up]);

    /// <summary>Points in the order to work them out: a coarse picture of all of it first.</summary>
    public IEnumerable<(int Across, int Up)> Order()
    {
        var ordered = new List<(int, int)>(Count);
        foreach (int step in (ReadOnlySpan<int>)[4, 2, 1])
        {
            for (int up = 0; up < Up.Length; up += step)
            {
                for (int across = 0; across < Across.Length; across += step)
                {
                    bool isCoarser = step < 4 && up % (2 * step) == 0 && across % (2 * step) == 0;
                    if (!isCoarser)
                    {
                        ordered.Add((across, up));
                    }
                }
            }
        }
        return ordered;
    }

    /// <summary>Keeps what was found out about a point.</summary>
    public void Keep(int across, int up, MapCell cell) => cells[(up * Across.Length) + across] = cell;

    /// <summary>The point nearest to where a recipe stands.</summary>
    public (int Across, int Up) Nearest(RecipeDocument other) =>
        (Nearest(Across, Number(other, AcrossKey)), Nearest(Up, Number(other, UpKey)));

    /// <summary>What a prediction makes of a point.</summary>
    public static MapCell CellOf(Prediction? prediction, double? glowAtMinutes)
    {
        if (prediction is null)
        {
            return new(null, null, null, null, "cannot be poured or predicted");
        }
        var missed = prediction
            .Targets.Where(t => t.State is not (TargetState.Met or TargetState.NotJudged))
            .ToArray();
        return new(
            missed.Length,
            prediction.Figures["lit.cct_k"],
            prediction.Figures["lit.flux_kept_percent"],
            prediction.Figures["afterglow.luminance_mcd_m2", glowAtMinutes ?? UsualMinutes],
            missed.Length == 0
                ? "every target met"
                : "misses "
                    + string.Join(
                        ", ",
                        TargetLines
                            .Of(prediction with { Targets = missed })
                            .Select(t => $"{t.Name} {t.Bounds}")
                    )
        );
    }

    private static (string Across, string Up) KeysOf(RecipeDocument document, string layer)
    {
        string path = $"layers.{layer}.";
        string grams = path + "loading_g_per_100g_resin";
        string across =
            document.TryResolve(grams, out _, out _) && document.Get(grams) is not null
                ? grams
                : path + "loading_percent";
        return (across, path + "depth_mm");
    }

    private static string IdentityOf(RecipeDocument document, string across, string up) =>
        document.With(across, 1).With(up, 1).Text;

    // Of the recipe's own choices if it has some for this key; else from half to double.
    private ImmutableArray<double> Values(string key, int most)
    {
        double at = Number(document, key);
        var choice = document.Recipe?.Balance.Choices.FirstOrDefault(c =>
            c.KeyPath == key && c.From is not null
        );
        var range = document.KeyOf(key).Range;
        double from = choice?.From ?? Math.Max(range.Least, at / 2);
        double to = choice?.To ?? Math.Min(range.Most, at > 0 ? at * 2 : 40);
        // Round numbers between the ends, as a scale shows them.
        var inner = Axis.Linear("", from, Math.Max(to, from + LeastSpan)).Ticks(most - 2);
        return [from, .. inner.Where(v => v > from && v < to).Select(v => Math.Round(v, Decimals)), to];
    }

    private static double Number(RecipeDocument document, string key) =>
        document.Get(key) is { } text && NumberText.TryRead(text, out double number) ? number : 0;

    private static int Nearest(ImmutableArray<double> values, double value) =>
        Enumerable.Range(0, values.Length).MinBy(i => Math.Abs(values[i] - value));
}
