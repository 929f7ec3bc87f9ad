using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using GlowMix.Afterglow;
using GlowMix.Materials;

namespace GlowMix.Predictions;

/// <summary>Trap ladders of pigments' sheets, each looked up or fitted once and kept. Safe to use from several threads.</summary>
internal sealed class LadderShelf(PigmentSheets sheets)
{
    private readonly ConditionalWeakTable<Pigment, SheetLadders> ladders = [];

    public LadderFitResult FitOf(SheetSample sample, Variation variation) =>
        sample.Pigment is { Traps: { } traps, AsOnTheShelf: { } onTheShelf }
            ? Measured(sample, traps, onTheShelf, variation.LadderSmoothing)
            : ladders.GetValue(sample.Pigment, _ => new(sample, sheets)).FitOf(variation);

    /// <summary>
    /// The ladder of a decay reading. Rungs slower than the reading told lean on the sheet: they follow the sheet's smoothing.
    /// </summary>
    private LadderFitResult Measured(
        SheetSample sample,
        MeasuredTraps traps,
        Pigment onTheShelf,
        double smoothing
    )
    {
        double perMm3 = sample.Pigment.DensityGPerCm3.Value / 1000;
        // A draw may take the whole ladder for larger or smaller.
        double level = sample.Pigment.TrapCapacityPerG.Value / traps.PerG.Sum();
        double[] rungs = [.. traps.PerG.Select(n => n * perMm3 * level)];
        if (smoothing != Variation.Likely.LadderSmoothing)
        {
            var shelved = sample with { Pigment = onTheShelf };
            var stands = FitOf(shelved, Variation.Likely).Ladder;
            var other = FitOf(shelved, new(1, smoothing)).Ladder;
            for (int k = 0; stands is not null && other is not null && k < rungs.Length; k++)
            {
                bool isTold = TrapLadder.RateAt20CPerS(k) * 60 * traps.ReachesMinutes >= 1;
                if (!isTold && stands.TrapsPerMm3[k] > 0)
                {
                    rungs[k] *= other.TrapsPerMm3[k] / stands.TrapsPerMm3[k];
                }
            }
        }
        return new()
        {
            Ladder = new(rungs, traps.TrappingEfficiencyAt20C, ConstantsOf(sample.Pigment)),
            ReachesMinutes = traps.ReachesMinutes,
        };
    }

    /// <summary>The fit itself.</summary>
    internal static LadderFitResult FitTo(SolvedSheet sheet, Pigment pigment, Variation variation) =>
        LadderFit.To(
            sheet,
            ConstantsOf(pigment),
            variation.LadderSmoothing,
            pigment.TrapWeightExponent.Value
        );

    internal static TrapConstants ConstantsOf(Pigment pigment) =>
        new()
        {
            FrequencyFactorPerS = pigment.TrapFrequencyFactorPerS.Value,
            TrappingActivationEv = pigment.TrapCaptureActivationEv.Value,
            BleachingRatio = pigment.TrapEmptyingByLight.Value,
        };

    /// <summary>All ladders of one pigment's sheet.</summary>
    private sealed class SheetLadders
    {
        private readonly SheetSample sample;
        private readonly PigmentSheets sheets;
        private readonly ConcurrentDictionary<double, Lazy<SolvedSheet>> solved = new();
        private readonly ConcurrentDictionary<Variation, Lazy<LadderFitResult>> fits = new();

        public SheetLadders(SheetSample sample, PigmentSheets sheets)
        {
            (this.sample, this.sheets) = (sample, sheets);
            foreach (var (variation, fit) in DerivedLadders.Find(sample, ConstantsOf(sample.Pigment)))
            {
                fits[variation] = new(fit);
            }
        }

        public LadderFitResult FitOf(Variation variation) =>
            fits.GetOrAdd(variation, v => new(() => Fit(v))).Value;

        private LadderFitResult Fit(Variation variation)
        {
            var sheet = solved
                .GetOrAdd(
                    variation.PigmentAbsorptionFactor,
                    factor => new(() => sheets.Solve(sample, factor))
                )
                .Value;
            return FitTo(sheet, sample.Pigment, variation);
        }
    }
}
