using GlowMix.Materials.Calibrations;
using GlowMix.Pieces;
using GlowMix.Predictions;

namespace GlowMix.Choosing.Draws;

/// <summary>What is in doubt of a pour: packages, board and resin, its layers and their size, how its grains settle.</summary>
/// <remarks>
/// A layer's depth is drawn as one for the whole length. A pour that runs out of level is looked at in one place, drawn anywhere
/// along it, the same place for every figure of a draw.
/// </remarks>
internal static class PourDoubts
{
    private const double LeastIndex = 1;
    private const double MostIndex = 2;
    private const double MostLoadingPercent = 80;
    private const double LeastDepthMm = 0.01;
    private const double LeastGrainUm = 0.1;
    private const double MostGrainUm = 300;

    /// <summary>What the light meets besides pigment.</summary>
    public static void AddSurroundings(DoubtList list, Piece piece)
    {
        if (piece.DepthOverPackagesMm > 0 || piece.HasPigment)
        {
            AddPackages(list, piece);
            AddBoard(list, piece);
            AddResin(list, piece);
        }
    }

    /// <summary>The layers as poured.</summary>
    public static void AddLayers(DoubtList list, Piece piece)
    {
        var recipe = piece.Recipe;
        for (int i = 0; i < piece.Layers.Length; i++)
        {
            int layer = i;
            var own = piece.Layers[i];
            var told = recipe.Layers[i];
            list.AddWithin(
                CauseTexts.Depths,
                own.DepthMm,
                told.DepthToleranceMm,
                LeastDepthMm,
                (draft, v) => draft.DepthsMm[layer] = v
            );
            if (!own.HasPigment)
            {
                continue;
            }
            list.AddWithin(
                CauseTexts.Loadings,
                own.LoadingPercent,
                told.LoadingTolerancePoints,
                0,
                (draft, v) => draft.LoadingsPercent[layer] = v,
                MostLoadingPercent
            );
            if (told.GrainToleranceFactor is > 1 and double factor)
            {
                list.Add(
                    CauseTexts.Grains,
                    Spread.ByFactor(
                        1,
                        factor,
                        LeastGrainUm / own.GrainMedianUm,
                        MostGrainUm / own.GrainMedianUm
                    ),
                    (draft, v) => draft.GrainFactors[layer] = v
                );
            }
        }
        if (recipe.Pour.RunsOutMm is > 0 and double runsOut)
        {
            list.Add(
                CauseTexts.Depths,
                Spread.Evenly(-runsOut / 2, runsOut / 2),
                (draft, v) => draft.PlaceMm = v
            );
        }
        if (piece.HasPigment)
        {
            list.Add(
                CauseTexts.Loadings,
                Spread.Of(piece.Resin.DensityMixGPerCm3.Doubt, piece.Resin.DensityMixGPerCm3.Value, 0.1),
                (draft, v) => draft.ResinDensityGPerCm3 = v
            );
        }
    }

    private static void AddPackages(DoubtList list, Piece piece)
    {
        if (piece.DepthOverPackagesMm <= 0)
        {
            return;
        }
        double greatest = ReturnScale.Greatest(PieceLight.BandsOf(piece), piece.Resin.RefractiveIndex.Value);
        list.Add(
            CauseTexts.PackageReturn(piece.Led.Name),
            Spread.Of(piece.Led.ReturnMatrix.Doubt, 1, 0, Math.Max(1, greatest)),
            (draft, v) => draft.ReturnFactor = v,
            CalibratedKeys.Conversion
        );
    }

    private static void AddBoard(DoubtList list, Piece piece)
    {
        double brightest = 0;
        foreach (double share in piece.Board.Reflectance.Value.Samples)
        {
            brightest = Math.Max(brightest, share);
        }
        list.Add(
            CauseTexts.Board(piece.Board.Name),
            Spread.Of(piece.Board.Reflectance.Doubt, 1, 0, brightest > 0 ? 1 / brightest : 1),
            (draft, v) => draft.BoardFactor = v
        );
    }

    private static void AddResin(DoubtList list, Piece piece)
    {
        var resin = piece.Resin;
        list.Add(
            CauseTexts.ResinAbsorption(resin.Name),
            Spread.Of(resin.AbsorptionPerMm.Doubt, 1, 0),
            (draft, v) => draft.ResinAbsorptionFactor = v,
            CalibratedKeys.ResinAbsorption
        );
        double lineD = IndexDoubt.AtLineD(resin.RefractiveIndex.Value);
        list.Add(
            CauseTexts.ResinIndex(resin.Name),
            Spread.Of(resin.RefractiveIndex.Doubt, lineD, LeastIndex, MostIndex),
            (draft, v) => draft.ResinIndexShift = v - lineD
        );
    }
}
