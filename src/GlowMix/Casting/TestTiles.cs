using System.Collections.Immutable;
using GlowMix.Pieces;
using GlowMix.Recipes;

namespace GlowMix.Casting;

/// <summary>
/// Three small pours of a piece, at half, once and one and a half times its loading, to be read before the piece itself is
/// poured. Immutable.
/// </summary>
public sealed record TestTiles
{
    /// <summary>Least side of a tile, where the piece is not narrower, mm: more than a meter's opening. Assumed.</summary>
    public const double LeastSideMm = 60;

    /// <summary>Sides per depth, where the piece is not narrower: walls are left out of the model, which asks for four.</summary>
    public const double SidesPerDepth = 8;

    private const double MostLoadingPercent = 80;

    // Half a step of the scale is then 5 % of a tile's pigment: well below what makes a tile differ from the next. Assumed.
    private const double LeastPigmentSteps = 10;

    private TestTiles(Piece piece)
    {
        Piece = piece;
        double sideMm = Math.Max(LeastSideMm, SidesPerDepth * piece.DepthMm);
        LengthMm = Math.Min(sideMm, piece.LengthMm ?? sideMm);
        WidthMm = Math.Min(sideMm, piece.WidthMm ?? sideMm);
        PackageCount = piece.HasSize
            ? (int)(piece.Count!.Value * LengthMm * WidthMm / (piece.LengthMm!.Value * piece.WidthMm!.Value))
            : 0;
        ScaleStepG = piece.Recipe.Mixing.ScaleStepG ?? BatchSheet.AssumedScaleStepG;
        Mixing = PieceCasting.MixingOf(piece);
        var plans = Factors.Select(PlanOf).ToImmutableArray();
        var mixes = piece.Layers.Select((_, i) => MixOf([.. plans.Select(plan => plan.Layers[i])]));
        Mixes = piece.Recipe.Pour.Face == Face.Down ? [.. mixes.Reverse()] : [.. mixes];
        Warnings = [.. TileWarnings.Of(this)];
    }

    /// <summary>Loadings of the tiles over the planned one.</summary>
    public static ImmutableArray<double> Factors { get; } = [0.5, 1, 1.5];

    /// <summary>Minutes after the last light at which they are read; a luminance meter goes on as long as it shows something.</summary>
    public static ImmutableArray<double> ReadAtMinutes { get; } = [1, 2, 5, 10, 20, 30, 60, 120];

    /// <summary>Time in the dark before the charge, h: so that the traps start nearly empty. A ship code's practice, from memory.</summary>
    public const double DarkBeforeH = 48;

    /// <summary>The piece they stand for.</summary>
    public Piece Piece { get; }

    /// <summary>Inside length of a tile, mm.</summary>
    public double LengthMm { get; }

    /// <summary>Inside width of a tile, mm.</summary>
    public double WidthMm { get; }

    /// <summary>Packages on the part of the board under a tile; 0 where the recipe does not tell.</summary>
    public int PackageCount { get; }

    /// <summary>The smallest step the scale shows, g.</summary>
    public double ScaleStepG { get; }

    /// <summary>Temperature, times and waste.</summary>
    public Mixing Mixing { get; }

    /// <summary>One a layer, in the order of pouring.</summary>
    public ImmutableArray<TileMix> Mixes { get; }

    /// <summary>What can spoil them, heaviest first.</summary>
    public ImmutableArray<BatchWarning> Warnings { get; }

    /// <summary>Plans the tiles of a piece.</summary>
    /// <exception cref="ArgumentException">The piece has no pigment to vary.</exception>
    public static TestTiles Of(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return piece.HasPigment
            ? new(piece)
            : throw new ArgumentException("Test tiles need a pigment to vary.", nameof(piece));
    }

    private CastingPlan PlanOf(double factor) =>
        CastingPlan.Of(
            PieceCasting.PourOf(Piece) with
            {
                LengthMm = LengthMm,
                WidthMm = WidthMm,
                PackageCount = PackageCount,
            },
            [
                .. Piece.Layers.Select(layer =>
                    PieceCasting.LayerOf(
                        layer with
                        {
                            LoadingPercent = Math.Min(MostLoadingPercent, factor * layer.LoadingPercent),
                        }
                    )
                ),
            ],
            PieceCasting.ResinOf(Piece),
            Mixing
        );

    private TileMix MixOf(ImmutableArray<LayerBatch> tiles)
    {
        double partAG = tiles.Sum(t => t.PartAG!.Value);
        double partBG = tiles.Sum(t => t.PartBG!.Value);
        double more = MoreThanNeeded(tiles, partAG, partBG);
        ImmutableArray<TileCup> cups = [.. tiles.Select(tile => CupOf(tile, more))];
        // A step over for each part, so that rounding leaves enough for the last cup.
        double ratio = partAG / partBG;
        double mixG = cups.Sum(c => c.ResinG) + (ScaleStepG * (1 + Math.Max(ratio, 1 / ratio)));
        var parts = new WeighedBatch(mixG * ratio / (1 + ratio), mixG / (1 + ratio), 0, ScaleStepG);
        double potLifeMin = PieceCasting.ResinOf(Piece).Flow.PotLifeMin(parts.MixG, Mixing.TemperatureC);
        return new()
        {
            Layer = tiles[1].Layer,
            Parts = parts,
            NeededG = partAG + partBG,
            Cups = cups,
            MixVolumeMl = more * tiles.Sum(t => t.MixVolumeMl!.Value),
            PotLifeMin = potLifeMin,
            DegasWindowMin = potLifeMin - (2 * Mixing.StirringMin) - Mixing.VacuumMin,
        };
    }

    // The pigment, of which there is less, in whole steps, and the resin after it: the loading is then off by little.
    private TileCup CupOf(LayerBatch tile, double more)
    {
        var scale = new ScaleStep(ScaleStepG);
        double pigmentG = scale.NearestG(more * tile.PigmentG!.Value);
        double perResin = tile.Layer.Loading.GPer100GResin / 100;
        return new(
            tile,
            scale.NearestG(perResin is > 0 and < 1 ? pigmentG / perResin : more * tile.ResinG!.Value),
            perResin >= 1 ? scale.NearestG(scale.NearestG(more * tile.ResinG!.Value) * perResin) : pigmentG
        );
    }

    // Tiles are small: where the scale's step is too coarse for them more is mixed than they take.
    private double MoreThanNeeded(ImmutableArray<LayerBatch> tiles, double partAG, double partBG)
    {
        double safeG = new WeighedBatch(partAG, partBG, 0, ScaleStepG).SmallestSafeMixG;
        double leastPigmentG = tiles.Min(t => t.PigmentG!.Value);
        double forPigment = leastPigmentG > 0 ? LeastPigmentSteps * ScaleStepG / leastPigmentG : 1;
        return Math.Max(1, Math.Max(safeG / (partAG + partBG), forPigment));
    }
}
