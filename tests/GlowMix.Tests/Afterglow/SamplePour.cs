using GlowMix.Afterglow;
using GlowMix.Recipes;

namespace GlowMix.Tests.Afterglow;

/// <summary>
/// A layer of pigmented resin without optics: absorption falls exponentially with depth, escape does not. Invented, of the
/// size that the design's example has (1.56e12 useful photons per s and mm² at 1000 lx of daylight).
/// </summary>
internal static class SamplePour
{
    internal const int Nodes = 24;
    internal const double DepthMm = 1;
    internal const double VolumeFraction = 0.117; // 30 % by mass
    internal const double CapacityPerMm3 = 4.7e17 * 3.56e-3; // traps per g times g per mm³

    /// <summary>Pigment that each node stands for, mm: midpoints of equal slices.</summary>
    internal static double[] PigmentMm { get; } =
    [.. Enumerable.Repeat(VolumeFraction * DepthMm / Nodes, Nodes)];

    // A photon of a 520 nm band is 3.8e-19 J, 415 lm/W; per mm² to per m² 1e6, over π, in mcd: 5.0e-8. Yield 0.75.
    internal static double[] McdM2PerPhotonPerSMm3 { get; } = [.. PigmentMm.Select(mm => 5.0e-8 * 0.75 * mm)];

    /// <summary>Photons absorbed per s and mm³ of pigment, node 0 at the bottom.</summary>
    internal static double[] AbsorbedPerSMm3(double illuminanceLx, double reachMm = 0.4)
    {
        double takenPerMm2 = 1.56e12 * illuminanceLx / 1000 * (1 - Math.Exp(-DepthMm / reachMm));
        double[] shape =
        [
            .. Enumerable
                .Range(0, Nodes)
                .Select(i => Math.Exp(-DepthMm * (Nodes - i - 0.5) / Nodes / reachMm)),
        ];
        double total = shape.Zip(PigmentMm, (s, mm) => s * mm).Sum();
        return [.. shape.Select(s => s * takenPerMm2 / total)];
    }

    /// <summary>Traps falling off as τ^−0.15.</summary>
    internal static TrapLadder Ladder(double trappingEfficiencyAt20C = 0.3, TrapConstants? constants = null)
    {
        double[] shape = [.. Enumerable.Range(0, TrapLadder.RungCount).Select(k => Math.Pow(10, -0.075 * k))];
        return new(
            [.. shape.Select(s => s / shape.Sum() * CapacityPerMm3)],
            trappingEfficiencyAt20C,
            constants ?? TrapConstants.Assumed
        );
    }

    /// <summary>One light, then darkness.</summary>
    internal static ChargedTraps Charged(
        double illuminanceLx,
        double minutes,
        double chargeC = 20,
        double darknessC = 20,
        ChargeStart start = ChargeStart.Empty,
        TrapLadder? ladder = null
    ) =>
        new ChargeProgramme(
            Nodes,
            [ChargeStep.Lit(AbsorbedPerSMm3(illuminanceLx), minutes, chargeC)],
            start,
            darknessC
        ).Charge(ladder ?? Ladder());

    internal static GlowCurve Glow(this ChargedTraps charged) => charged.Glow(McdM2PerPhotonPerSMm3);
}
