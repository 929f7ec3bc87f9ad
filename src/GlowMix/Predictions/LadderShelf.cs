using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using GlowMix.Afterglow;
using GlowMix.Materials;

namespace GlowMix.Predictions;

/// <summary>Trap ladders of pigments' sheets, each looked up or fitted once and kept. Safe to use from several threads.</summary>
internal sealed class LadderShelf(PigmentSheets sheets)
{
    private readonly ConditionalWeakTable<Pigment, SheetLadders> ladders = [];

    private readonly ConditionalWeakTable<Pigment, MeasuredLadder> measured = [];

    public LadderFitResult FitOf(SheetSample sample, Variation variation) =>
        sample.Pigment.Traps is { } traps
            ? new()
            {
                Ladder = MeasuredOf(sample)
                    .At(sample.Pigment.TrapCapacityPerG.Value, variation.LadderSmoothing),
                ReachesMinutes = traps.ReachesMinutes,
            }
            : ladders.GetValue(sample.Pigment, _ => new(sample, sheets)).FitOf(variation);

    /// <summary>The ladder of a pigment that a decay reading told.</summary>
    public MeasuredLadder MeasuredOf(SheetSample sample) =>
        measured.GetValue(
            sample.Pigment,
            pigment =>
            {
                var shelved = sample with { Pigment = pigment.AsOnTheShelf! };
                return new(pigment, smoothing => FitOf(shelved, new(1, smoothing)).Ladder);
            }
        );

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
