using GlowMix.Casting;
using GlowMix.Optics.Pour;
using GlowMix.Pieces;

namespace GlowMix.Predictions;

/// <summary>The layers of a piece as light meets them once the resin has gelled: where grains have settled, in even slices.</summary>
internal static class GelledLayers
{
    /// <summary>From the board upwards.</summary>
    /// <param name="piece">What is poured.</param>
    /// <param name="optics">Its materials.</param>
    public static IEnumerable<PourLayer> Of(Piece piece, IOptics optics)
    {
        var batches = piece.IsSettled && piece.HasPigment ? PieceCasting.PlanOf(piece).Layers : [];
        for (int i = 0; i < piece.Layers.Length; i++)
        {
            var layer = piece.Layers[i];
            if (!layer.HasPigment)
            {
                yield return PourLayer.Clear(layer.DepthMm);
                continue;
            }
            foreach (var slice in SlicesOf(layer, batches.IsEmpty ? null : batches[i], piece, optics))
            {
                yield return slice;
            }
        }
    }

    private static IEnumerable<PourLayer> SlicesOf(
        PieceLayer layer,
        LayerBatch? batch,
        Piece piece,
        IOptics optics
    )
    {
        var pigment = layer.Pigment!;
        var grains = optics.GrainsOf(pigment, piece.Resin, layer.GrainMedianUm, layer.GrainGsd);
        // One yield for all slices: what a pigment's file says of fine grains is of pigments by their median, not of the fine
        // share within one.
        var poured = new PourLayer(
            layer.DepthMm,
            layer.VolumeFraction,
            grains.Whole,
            pigment.EmissionPerNm,
            pigment.YieldAt(layer.GrainMedianUm)
        );
        return batch?.Settles is not true
            ? [poured]
            : batch
                .Settled()!
                .Coarsened()
                .FromTheBoardUp(piece.IsFaceUp)
                .Select(slice =>
                    slice.VolumeFraction == 0
                        ? PourLayer.Clear(slice.ThicknessMm)
                        : poured with
                        {
                            DepthMm = slice.ThicknessMm,
                            VolumeFraction = slice.VolumeFraction,
                            Grains = grains.Mixed(slice.ClassShares),
                        }
                );
    }
}
