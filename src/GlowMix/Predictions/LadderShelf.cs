using System.Collections.Concurrent;
using GlowMix.Afterglow;
using GlowMix.Materials;

namespace GlowMix.Predictions;

/// <summary>Trap ladders fitted to pigments' sheets, each worked out once and kept. Safe to use from several threads.</summary>
internal sealed class LadderShelf(PigmentSheets sheets)
{
    private readonly ConcurrentDictionary<(SheetSample Sample, double Factor), Lazy<SolvedSheet>> solved =
        new();
    private readonly ConcurrentDictionary<
        (SheetSample Sample, Variation Variation),
        Lazy<LadderFitResult>
    > fits = new();

    public LadderFitResult FitOf(SheetSample sample, Variation variation) =>
        fits.GetOrAdd((sample, variation), key => new(() => Fit(key.Sample, key.Variation))).Value;

    private LadderFitResult Fit(SheetSample sample, Variation variation)
    {
        var sheet = solved
            .GetOrAdd(
                (sample, variation.PigmentAbsorptionFactor),
                key => new(() => sheets.Solve(key.Sample, key.Factor))
            )
            .Value;
        return LadderFit.To(
            sheet,
            ConstantsOf(sample.Pigment),
            variation.LadderSmoothing,
            sample.Pigment.TrapWeightExponent.Value
        );
    }

    private static TrapConstants ConstantsOf(Pigment pigment) =>
        new()
        {
            FrequencyFactorPerS = pigment.TrapFrequencyFactorPerS.Value,
            TrappingActivationEv = pigment.TrapCaptureActivationEv.Value,
            BleachingRatio = pigment.TrapEmptyingByLight.Value,
        };
}
