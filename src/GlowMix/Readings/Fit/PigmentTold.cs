using System.Collections.Immutable;
using GlowMix.Afterglow;
using GlowMix.Materials.Calibrations;
using GlowMix.Predictions;

namespace GlowMix.Readings.Fit;

/// <summary>What becomes of pigments at the end of a fit.</summary>
/// <param name="predictor">Who predicts the pieces that were read.</param>
/// <param name="glows">All decays that were read.</param>
/// <param name="numberOf">The end of a number by its key; without an error where it was held, null where there is none.</param>
internal sealed class PigmentTold(
    Predictor predictor,
    ImmutableArray<GlowReading> glows,
    Func<string, CalibratedNumber?> numberOf
)
{
    private const double MostLevel = 100;

    /// <summary>A pigment as it is kept; null where nothing was told of it.</summary>
    public CalibratedPigment? Of(FitPigment told)
    {
        var strength = Told(CalibratedKeys.Absorption(told.Name));
        var yield = Told(CalibratedKeys.Yield(told.Name));
        CalibratedNumber?[] traps =
        [
            numberOf(CalibratedKeys.TrapLevel(told.Name)),
            numberOf(CalibratedKeys.TrapTilt(told.Name)),
            numberOf(CalibratedKeys.TrappingFactor(told.Name)),
        ];
        bool hasTraps = traps.Any(t => t?.StandardError is not null);
        if (strength is null && yield is null && !hasTraps)
        {
            return null;
        }
        var pigment = told.Pigment;
        var copy = new CalibratedPigment
        {
            Material = pigment.Name,
            MaterialSha256 = Sha256.Of(pigment),
            AbsorptionFactor = strength,
            PhotoluminescenceYield = yield,
        };
        if (!hasTraps)
        {
            return copy;
        }
        double[] minutes = [.. glows.SelectMany(g => g.Points).Select(p => p.Minutes)];
        double middleMinutes = Math.Sqrt(minutes.Min() * minutes.Max());
        bool isLevelOfSheet = glows.Where(g => g.IsOf(pigment)).All(g => g.IsRelative);
        if (isLevelOfSheet)
        {
            traps[0] = new(SheetLevel(told, middleMinutes), null);
        }
        var ladder = told.At(traps[0]!.Value.Value).LadderOf(predictor.SheetLadderOf(pigment), middleMinutes);
        double perG = 1000 / pigment.DensityGPerCm3.Value;
        return copy with
        {
            Traps = new(
                [.. ladder.TrapsPerMm3.ToArray().Select(n => n * perG)],
                ladder.TrappingEfficiencyAt20C,
                minutes.Max()
            )
            {
                MiddleMinutes = middleMinutes,
            },
            TrapLevel = traps[0],
            TrapTilt = traps[1],
            TrappingFactor = traps[2],
        };

        CalibratedNumber? Told(string key) =>
            numberOf(key) is { StandardError: not null } number ? number : null;
    }

    // Where no reading says how bright the glow is, the sheet still does: grains that absorb more need fewer traps for it.
    private double SheetLevel(FitPigment told, double middleMinutes)
    {
        var shelved = told.Pigment.AsOnTheShelf ?? told.Pigment;
        var sheet = predictor.SheetOf(shelved, told.Strength, told.Yield);
        var ladder = predictor.SheetLadderOf(shelved);
        double Excess(double logLevel) =>
            LadderFit.MeanLogExcess(sheet, told.At(Math.Exp(logLevel)).LadderOf(ladder, middleMinutes));
        double end = Math.Log(MostLevel);
        return Excess(-end) >= 0 ? 1 / MostLevel
            : Excess(end) <= 0 ? MostLevel
            : Math.Exp(BracketedRoot.Find(Excess, -end, end, tolerance: 1e-9));
    }
}
