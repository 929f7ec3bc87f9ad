namespace GlowMix.Afterglow;

/// <summary>Filled fraction of every rung at every depth node. Immutable.</summary>
public sealed class TrapProfile
{
    private readonly double[] filled; // node after node, 13 rungs each

    private TrapProfile(double[] filled) => this.filled = filled;

    /// <summary>Number of depths.</summary>
    public int NodeCount => filled.Length / TrapLadder.RungCount;

    /// <summary>All traps empty.</summary>
    /// <param name="nodeCount">Number of depths, 1 or more.</param>
    public static TrapProfile Empty(int nodeCount)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(nodeCount, 1);
        return new(new double[nodeCount * TrapLadder.RungCount]);
    }

    /// <summary>A copy of fractions given node after node, 13 rungs each.</summary>
    public static TrapProfile Of(ReadOnlySpan<double> filled)
    {
        if (filled.IsEmpty || filled.Length % TrapLadder.RungCount != 0)
        {
            throw new ArgumentException(
                $"{filled.Length} fractions are not a whole number of ladders.",
                nameof(filled)
            );
        }
        foreach (double fraction in filled)
        {
            Demand.Within(fraction, 0, 1, nameof(filled), "");
        }
        return new(filled.ToArray());
    }

    /// <summary>Filled fractions of the 13 rungs at one depth.</summary>
    public ReadOnlySpan<double> At(int node) =>
        filled.AsSpan(node * TrapLadder.RungCount, TrapLadder.RungCount);

    /// <summary>The profile after some time of constant light and temperature, exactly.</summary>
    /// <param name="ladder">The pigment's traps.</param>
    /// <param name="absorbedPerSMm3">Photons absorbed per second and mm³ of pigment at each depth; nothing means dark.</param>
    /// <param name="seconds">How long; may be infinite.</param>
    /// <param name="temperatureC">Temperature, °C.</param>
    public TrapProfile After(
        TrapLadder ladder,
        ReadOnlySpan<double> absorbedPerSMm3,
        double seconds,
        double temperatureC
    )
    {
        ArgumentNullException.ThrowIfNull(ladder);
        Demand.NoneNegative(absorbedPerSMm3, nameof(absorbedPerSMm3), "photons/(s mm³)");
        if (!absorbedPerSMm3.IsEmpty)
        {
            Demand.Length(absorbedPerSMm3.Length, NodeCount, nameof(absorbedPerSMm3));
        }
        if (!(seconds >= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(seconds), seconds, "seconds must be 0 or more.");
        }
        TrapRates rates = ladder.RatesAt(temperatureC);
        var after = new double[filled.Length];
        for (int i = 0; i < after.Length; i++)
        {
            (int node, int rung) = Math.DivRem(i, TrapLadder.RungCount);
            double absorbed = absorbedPerSMm3.IsEmpty ? 0 : absorbedPerSMm3[node];
            after[i] = rates.Step(rung, absorbed, seconds).Apply(filled[i]);
        }
        return new(after);
    }

    /// <summary>Traps filled of all traps at one depth, %.</summary>
    public double FilledPercentAt(int node, TrapLadder ladder)
    {
        ArgumentNullException.ThrowIfNull(ladder);
        ReadOnlySpan<double> fractions = At(node);
        double sum = 0;
        for (int k = 0; k < TrapLadder.RungCount; k++)
        {
            sum += ladder.TrapsPerMm3[k] * fractions[k];
        }
        return 100 * sum / ladder.CapacityPerMm3;
    }

    /// <summary>Traps filled of all traps over the whole depth, %.</summary>
    /// <param name="ladder">The pigment's traps.</param>
    /// <param name="pigmentMm">Pigment that each depth stands for (quadrature weight times volume fraction), mm; any common factor.</param>
    public double FilledPercent(TrapLadder ladder, ReadOnlySpan<double> pigmentMm)
    {
        Demand.Length(pigmentMm.Length, NodeCount, nameof(pigmentMm));
        Demand.NoneNegative(pigmentMm, nameof(pigmentMm), "mm");
        double weighted = 0;
        double weights = 0;
        for (int node = 0; node < NodeCount; node++)
        {
            weighted += pigmentMm[node] * FilledPercentAt(node, ladder);
            weights += pigmentMm[node];
        }
        return weighted / Demand.Positive(weights, nameof(pigmentMm), "mm in sum");
    }

    internal static TrapProfile Trusted(double[] filled) => new(filled);
}
