namespace GlowMix.Afterglow;

/// <summary>
/// The traps of a pigment, sorted by how fast they empty: 13 rungs, from 1 /s down to 1e-6 /s at 20 °C in half decades,
/// each with its number of traps per mm³ of pigment. Immutable.
/// </summary>
/// <remarks>
/// First-order kinetics without retrapping; rate r = s exp(−E / kT), so that with s = 1e10 /s the rungs lie 0.058 eV apart
/// from 0.582 to 0.931 eV. How many rungs and where they stand is assumed.
/// </remarks>
public sealed class TrapLadder
{
    /// <summary>Number of rungs.</summary>
    public const int RungCount = 13;

    private readonly double[] trapsPerMm3;

    /// <param name="trapsPerMm3">Traps on each rung per mm³ of pigment, fastest rung first; 13 numbers, none negative, not all 0.</param>
    /// <param name="trappingEfficiencyAt20C">Traps filled per photon absorbed while all are empty, at 20 °C; above 0, at most 1.</param>
    /// <param name="constants">What all ladders share.</param>
    public TrapLadder(
        ReadOnlySpan<double> trapsPerMm3,
        double trappingEfficiencyAt20C,
        TrapConstants constants
    )
    {
        Demand.Length(trapsPerMm3.Length, RungCount, nameof(trapsPerMm3));
        Demand.NoneNegative(trapsPerMm3, nameof(trapsPerMm3), "per mm³");
        Demand.Positive(trappingEfficiencyAt20C, nameof(trappingEfficiencyAt20C), "");
        Demand.Within(trappingEfficiencyAt20C, 0, 1, nameof(trappingEfficiencyAt20C), "");
        ArgumentNullException.ThrowIfNull(constants);
        this.trapsPerMm3 = trapsPerMm3.ToArray();
        double all = 0;
        foreach (double traps in trapsPerMm3)
        {
            all += traps;
        }
        CapacityPerMm3 = Demand.Positive(all, nameof(trapsPerMm3), "per mm³ in sum");
        TrappingEfficiencyAt20C = trappingEfficiencyAt20C;
        Constants = constants;
    }

    /// <summary>Traps on each rung per mm³ of pigment, fastest rung first.</summary>
    public ReadOnlySpan<double> TrapsPerMm3 => trapsPerMm3;

    /// <summary>All traps per mm³ of pigment.</summary>
    public double CapacityPerMm3 { get; }

    /// <summary>Traps filled per photon absorbed while all are empty, at 20 °C.</summary>
    public double TrappingEfficiencyAt20C { get; }

    /// <summary>What all ladders share.</summary>
    public TrapConstants Constants { get; }

    /// <summary>Factor on a rung of a ladder that leans.</summary>
    /// <param name="rung">0 (fastest) to 12.</param>
    /// <param name="decades">By which the slowest rung is fuller than one half the ladder before it.</param>
    /// <param name="middleMinutes">Time constant of the rung that stays as it is, min.</param>
    internal static double Leaning(int rung, double decades, double middleMinutes)
    {
        const double rungsPerDecade = 2;
        const double halfLadder = (RungCount - 1) / 2.0;
        double middle = rungsPerDecade * Math.Log10(60 * middleMinutes);
        return Math.Pow(10, decades * (rung - middle) / halfLadder);
    }

    /// <summary>Rate at which a rung empties at 20 °C, 1/s: 10^(−rung/2).</summary>
    /// <param name="rung">0 (fastest) to 12.</param>
    public static double RateAt20CPerS(int rung)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(rung);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(rung, RungCount);
        return Math.Pow(10, -0.5 * rung);
    }

    /// <summary>Depth of a rung's traps, eV: k T₂₀ ln(s / r).</summary>
    /// <param name="rung">0 (fastest) to 12.</param>
    public double DepthEv(int rung) => TrapRates.DepthEv(rung, Constants);

    /// <summary>Traps filled per photon absorbed while all are empty, at a temperature; at most 1.</summary>
    public double TrappingEfficiency(double temperatureC) =>
        TrapRates.TrappingEfficiency(temperatureC, TrappingEfficiencyAt20C, Constants);

    /// <summary>Rate at which a rung empties, 1/s.</summary>
    public double RatePerS(int rung, double temperatureC) => RatesAt(temperatureC).EmptyingPerS(rung);

    /// <summary>Photons that filled traps first emit in the dark, per second and mm³ of pigment, before any yield: Σ N r f.</summary>
    /// <param name="filled">Filled fraction of each rung, 13 numbers of 0 to 1.</param>
    /// <param name="temperatureC">Temperature, °C.</param>
    public double EmittedPerSMm3(ReadOnlySpan<double> filled, double temperatureC)
    {
        Demand.Length(filled.Length, RungCount, nameof(filled));
        TrapRates rates = RatesAt(temperatureC);
        double emitted = 0;
        for (int k = 0; k < RungCount; k++)
        {
            emitted += trapsPerMm3[k] * rates.EmptyingPerS(k) * filled[k];
        }
        return emitted;
    }

    /// <summary>Photons that filled traps emit over some time of darkness, per mm³ of pigment, before any yield, in closed form.</summary>
    /// <param name="filled">Filled fraction of each rung at its start.</param>
    /// <param name="seconds">How long; <see cref="double.PositiveInfinity"/> for ever.</param>
    /// <param name="temperatureC">Temperature, °C.</param>
    public double EmittedInDarkPerMm3(ReadOnlySpan<double> filled, double seconds, double temperatureC)
    {
        Demand.Length(filled.Length, RungCount, nameof(filled));
        if (!(seconds >= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(seconds), seconds, "seconds must be 0 or more.");
        }
        TrapRates rates = RatesAt(temperatureC);
        double emitted = 0;
        for (int k = 0; k < RungCount; k++)
        {
            emitted += trapsPerMm3[k] * filled[k] * FillStep.ShareGone(rates.EmptyingPerS(k) * seconds);
        }
        return emitted;
    }

    internal TrapRates RatesAt(double temperatureC) =>
        TrapRates.At(temperatureC, TrappingEfficiencyAt20C, CapacityPerMm3, Constants);
}
