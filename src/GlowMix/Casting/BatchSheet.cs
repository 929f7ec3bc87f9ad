using System.Collections.Immutable;
using GlowMix.Pieces;
using GlowMix.Recipes;

namespace GlowMix.Casting;

/// <summary>What to weigh, mix and pour for one piece or several of a kind. Immutable.</summary>
public sealed record BatchSheet
{
    /// <summary>The most pieces that one sheet is made for.</summary>
    public const int MostPieces = 10_000;

    /// <summary>A kitchen scale's step, where the recipe does not tell one, g. Assumed.</summary>
    public const double AssumedScaleStepG = 0.1;

    private BatchSheet(Piece piece, int pieces)
    {
        (Piece, Pieces) = (piece, pieces);
        Plan = PieceCasting.PlanOf(piece, pieces);
        Mixing = PieceCasting.MixingOf(piece);
        ScaleStepG = piece.Recipe.Mixing.ScaleStepG ?? AssumedScaleStepG;
        var resin = PieceCasting.ResinOf(piece);
        var mixes = Plan.Layers.Select(batch => new LayerMix(
            batch,
            batch.Weighed(ScaleStepG),
            resin,
            piece.VacuumMin
        ));
        Mixes = piece.Recipe.Pour.Face == Face.Down ? [.. mixes.Reverse()] : [.. mixes];
        Warnings = [.. BatchWarnings.Of(this, resin.Flow.HeaviestOnSheetG)];
    }

    /// <summary>What is poured.</summary>
    public Piece Piece { get; }

    /// <summary>How many of them from one mix of each layer.</summary>
    public int Pieces { get; }

    /// <summary>Sums over all layers.</summary>
    public CastingPlan Plan { get; }

    /// <summary>Temperature, times, waste and prices.</summary>
    public Mixing Mixing { get; }

    /// <summary>The smallest step the scale shows, g.</summary>
    public double ScaleStepG { get; }

    /// <summary>The recipe does not tell the step of the scale.</summary>
    public bool ScaleStepIsAssumed => Piece.Recipe.Mixing.ScaleStepG is null;

    /// <summary>One a layer, in the order of pouring: the board's first, or for a piece poured on its face that of the face.</summary>
    public ImmutableArray<LayerMix> Mixes { get; }

    /// <summary>What can spoil it, heaviest first.</summary>
    public ImmutableArray<BatchWarning> Warnings { get; }

    /// <summary>Number and size are known, so that there are masses.</summary>
    public bool HasMasses => Piece.HasSize;

    /// <summary>Plans a batch.</summary>
    /// <param name="piece">What is poured.</param>
    /// <param name="pieces">How many of them, 1 to <see cref="MostPieces"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Too few or too many pieces.</exception>
    public static BatchSheet Of(Piece piece, int pieces = 1)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return pieces is >= 1 and <= MostPieces
            ? new(piece, pieces)
            : throw new ArgumentOutOfRangeException(
                nameof(pieces),
                pieces,
                $"A batch has 1 to {MostPieces} pieces."
            );
    }
}
