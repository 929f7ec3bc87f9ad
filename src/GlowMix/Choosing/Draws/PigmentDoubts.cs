using GlowMix.Afterglow;
using GlowMix.Materials.Calibrations;
using GlowMix.Pieces;

namespace GlowMix.Choosing.Draws;

/// <summary>What is in doubt of a pigment.</summary>
internal static class PigmentDoubts
{
    private const double LeastIndex = 1;
    private const double MostPigmentIndex = 3;
    private const double MostExponent = 2;
    private const double LeastExponent = -1;
    private const double LeastSmoothing = 1e-3;
    private const double MostSmoothing = 1;

    /// <param name="list">Where its numbers go.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="index">Which of its pigments.</param>
    public static void Add(DoubtList list, Piece piece, int index)
    {
        var pigment = new PieceDraft(piece).Pigments[index].Pigment;
        var layers = piece.Layers.Where(l => l.HasPigment && ReferenceEquals(l.Pigment, pigment)).ToArray();
        if (layers.Length == 0)
        {
            return;
        }
        PigmentDraft Draft(PieceDraft draft) => draft.Pigments[index];
        list.Add(
            CauseTexts.PigmentAbsorption(pigment.Name),
            Spread.Of(pigment.AbsorptionPerMm.Doubt, 1, 0),
            (draft, v) => Draft(draft).AbsorptionFactor = v,
            CalibratedKeys.Absorption(pigment.Name)
        );
        var traps = CauseTexts.Traps(pigment.Name);
        list.Add(
            traps,
            Spread.Of(pigment.TrapCapacityPerG.Doubt, pigment.TrapCapacityPerG.Value, 0),
            (draft, v) => Draft(draft).CapacityPerG = v,
            CalibratedKeys.TrapLevel(pigment.Name)
        );
        list.Add(
            traps,
            Spread.BetweenInLog(
                LadderFit.LikelySmoothing,
                LadderFit.LooseSmoothing,
                LadderFit.StiffSmoothing,
                LeastSmoothing,
                MostSmoothing
            ),
            (draft, v) => Draft(draft).LadderSmoothing = v
        );
        list.Add(
            traps,
            Spread.Of(
                pigment.TrapWeightExponent.Doubt,
                pigment.TrapWeightExponent.Value,
                LeastExponent,
                MostExponent
            ),
            (draft, v) => Draft(draft).WeightExponent = v
        );
        double lineD = IndexDoubt.AtLineD(pigment.RefractiveIndex.Value);
        list.Add(
            CauseTexts.PigmentIndex(pigment.Name),
            Spread.Of(pigment.RefractiveIndex.Doubt, lineD, LeastIndex, MostPigmentIndex),
            (draft, v) => Draft(draft).IndexShift = v - lineD
        );
        list.Add(
            CauseTexts.PigmentYield(pigment.Name),
            Spread.Of(pigment.PhotoluminescenceYield.Doubt, pigment.PhotoluminescenceYield.Value, 0, 1),
            (draft, v) => Draft(draft).Yield = v,
            CalibratedKeys.Yield(pigment.Name)
        );
        list.AddWithin(
            traps,
            0,
            Spread.DeviationsOfATolerance * pigment.Traps?.LeanError,
            double.NegativeInfinity,
            (draft, v) => Draft(draft).Lean = v,
            key: CalibratedKeys.TrapTilt(pigment.Name)
        );
        if (pigment.Traps?.TrappingLogError is > 0 and double error)
        {
            list.Add(
                traps,
                Spread.ByFactor(1, Math.Exp(Spread.DeviationsOfATolerance * error)),
                (draft, v) => Draft(draft).TrappingFactor = v,
                CalibratedKeys.TrappingFactor(pigment.Name)
            );
        }
    }
}
