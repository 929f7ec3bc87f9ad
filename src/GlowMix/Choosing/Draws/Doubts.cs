using System.Collections.Immutable;
using GlowMix.Pieces;

namespace GlowMix.Choosing.Draws;

/// <summary>All numbers of a piece that may turn out otherwise: by the recipe's tolerances, and by what its materials say of themselves.</summary>
/// <remarks>A sheet's own sample and lamp are not drawn.</remarks>
internal static class Doubts
{
    /// <summary>The numbers in doubt, in an order that only the recipe and its materials decide.</summary>
    public static ImmutableArray<DoubtfulNumber> Of(Piece piece)
    {
        var list = new DoubtList();
        // The heaviest first: the first dimensions of a Sobol sequence are the most evenly spread.
        for (int i = 0; i < new PieceDraft(piece).Pigments.Count; i++)
        {
            PigmentDoubts.Add(list, piece, i);
        }
        PourDoubts.AddSurroundings(list, piece);
        PourDoubts.AddLayers(list, piece);
        LightDoubts.AddLeds(list, piece);
        SettlingDoubts.Add(list, piece);
        LightDoubts.AddCharge(list, piece);
        return list.ToImmutable();
    }
}
