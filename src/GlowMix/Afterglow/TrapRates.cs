namespace GlowMix.Afterglow;

/// <summary>The coefficients of df/dt = B G (1 − f) − (r + O G) f at one temperature.</summary>
internal sealed class TrapRates
{
    private readonly double[] emptyingPerS;

    private TrapRates(double[] emptyingPerS, double filledMm3PerPhoton, double bleachedMm3PerPhoton)
    {
        this.emptyingPerS = emptyingPerS;
        FilledMm3PerPhoton = filledMm3PerPhoton;
        BleachedMm3PerPhoton = bleachedMm3PerPhoton;
    }

    /// <summary>B: share of the empty traps that one photon absorbed per mm³ fills.</summary>
    internal double FilledMm3PerPhoton { get; }

    /// <summary>O: share of the filled traps that one photon absorbed per mm³ empties.</summary>
    internal double BleachedMm3PerPhoton { get; }

    internal static TrapRates At(
        double temperatureC,
        double trappingEfficiencyAt20C,
        double capacityPerMm3,
        TrapConstants constants
    )
    {
        Demand.TemperatureC(temperatureC, nameof(temperatureC));
        double exponentPerEv = 1 / (TrapConstants.BoltzmannEvPerK * Kelvin(temperatureC));
        var emptying = new double[TrapLadder.RungCount];
        for (int k = 0; k < emptying.Length; k++)
        {
            emptying[k] = constants.FrequencyFactorPerS * Math.Exp(-DepthEv(k, constants) * exponentPerEv);
        }
        double filled = TrappingEfficiency(temperatureC, trappingEfficiencyAt20C, constants) / capacityPerMm3;
        return new(emptying, filled, constants.BleachingRatio * filled);
    }

    internal static double DepthEv(int rung, TrapConstants constants) =>
        TrapConstants.BoltzmannEvPerK
        * Kelvin(TrapConstants.ReferenceTemperatureC)
        * Math.Log(constants.FrequencyFactorPerS / TrapLadder.RateAt20CPerS(rung));

    internal static double TrappingEfficiency(double temperatureC, double at20C, TrapConstants constants)
    {
        Demand.TemperatureC(temperatureC, nameof(temperatureC));
        double inverseK = (1 / Kelvin(temperatureC)) - (1 / Kelvin(TrapConstants.ReferenceTemperatureC));
        double activation = constants.TrappingActivationEv / TrapConstants.BoltzmannEvPerK;
        return Math.Min(1, at20C * Math.Exp(-activation * inverseK));
    }

    internal double EmptyingPerS(int rung) => emptyingPerS[rung];

    /// <summary>What light of constant strength does to a rung, in closed form.</summary>
    /// <param name="rung">0 to 12.</param>
    /// <param name="absorbedPerSMm3">G, photons absorbed per second and mm³ of pigment; 0 in the dark.</param>
    /// <param name="seconds">How long; may be infinite.</param>
    internal FillStep Step(int rung, double absorbedPerSMm3, double seconds) =>
        FillStep.Of(
            FilledMm3PerPhoton * absorbedPerSMm3,
            emptyingPerS[rung] + (BleachedMm3PerPhoton * absorbedPerSMm3),
            seconds
        );

    private static double Kelvin(double celsius) => celsius + TrapConstants.ZeroCelsiusK;
}
