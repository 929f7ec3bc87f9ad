namespace GlowMix.Afterglow;

/// <summary>The traps of a piece when the light has just gone off, and the darkness before them. Immutable.</summary>
public sealed class ChargedTraps
{
    private readonly TrapLadder ladder;
    private readonly ChargeStep? lastLit;
    private readonly DarkSchedule darkness;

    internal ChargedTraps(
        TrapLadder ladder,
        TrapProfile start,
        TrapProfile lightsOut,
        ChargeStep? lastLit,
        DarkSchedule darkness
    )
    {
        this.ladder = ladder;
        this.lastLit = lastLit;
        this.darkness = darkness;
        Start = start;
        LightsOut = lightsOut;
    }

    /// <summary>The traps before the first step.</summary>
    public TrapProfile Start { get; }

    /// <summary>The traps at the end of the last lit step, time 0 of the glow; those of <see cref="Start"/> if none is lit.</summary>
    public TrapProfile LightsOut { get; }

    /// <summary>Traps filled of all traps over the whole depth when the light goes off, %.</summary>
    /// <param name="pigmentMm">Pigment that each depth stands for, mm; any common factor.</param>
    public double CapacityFilledPercent(ReadOnlySpan<double> pigmentMm) =>
        LightsOut.FilledPercent(ladder, pigmentMm);

    /// <summary>Traps filled of all traps at one depth when the light goes off, %.</summary>
    public double CapacityFilledPercentAt(int node) => LightsOut.FilledPercentAt(node, ladder);

    /// <summary>The luminance in the dark, from now on.</summary>
    /// <param name="mcdM2PerPhotonPerSMm3">
    /// What one photon emitted per second and mm³ of pigment at each depth adds to the luminance, mcd/m²: quadrature weight,
    /// volume fraction, yield, escape and eye together. Photopic or scotopic.
    /// </param>
    public GlowCurve Glow(ReadOnlySpan<double> mcdM2PerPhotonPerSMm3) =>
        new(darkness, TrappedByRung(LightsOut, mcdM2PerPhotonPerSMm3));

    /// <summary>Photons that traps first emit at each depth, per second and mm³ of pigment, before any yield.</summary>
    /// <param name="minutes">Time since the last light went off, min.</param>
    public double[] EmittedPerSMm3(double minutes)
    {
        double[] share = darkness.EmittedSharePerS(
            Demand.NotNegative(minutes, nameof(minutes), "min") * DarkSchedule.SecondsPerMinute
        );
        var emitted = new double[LightsOut.NodeCount];
        for (int node = 0; node < emitted.Length; node++)
        {
            ReadOnlySpan<double> filled = LightsOut.At(node);
            for (int k = 0; k < share.Length; k++)
            {
                emitted[node] += ladder.TrapsPerMm3[k] * filled[k] * share[k];
            }
        }
        return emitted;
    }

    /// <summary>
    /// The luminance some minutes after the light of the last lit step has shone alone from <see cref="Start"/>, as a sum over
    /// rungs and depths of settled − missing × exp(−turnover × time).
    /// </summary>
    /// <param name="mcdM2PerPhotonPerSMm3">As for <see cref="Glow"/>.</param>
    /// <param name="glowMinutes">Minutes after that light.</param>
    /// <returns>The settled sum, and the parts still missing; nothing if no step is lit.</returns>
    internal (double SettledMcdM2, ChargePart[] Missing) Approach(
        ReadOnlySpan<double> mcdM2PerPhotonPerSMm3,
        double glowMinutes
    )
    {
        CheckWeights(mcdM2PerPhotonPerSMm3);
        if (lastLit is null)
        {
            return (0, []);
        }
        double[] share = darkness.EmittedSharePerS(glowMinutes * DarkSchedule.SecondsPerMinute);
        TrapRates rates = ladder.RatesAt(lastLit.TemperatureC);
        var missing = new ChargePart[LightsOut.NodeCount * TrapLadder.RungCount];
        double settled = 0;
        for (int i = 0; i < missing.Length; i++)
        {
            (int node, int rung) = Math.DivRem(i, TrapLadder.RungCount);
            double luminance = mcdM2PerPhotonPerSMm3[node] * ladder.TrapsPerMm3[rung] * share[rung];
            FillStep second = rates.Step(rung, lastLit.AbsorbedPerSMm3[node], seconds: 1);
            missing[i] = new(luminance * (second.FixedPoint() - Start.At(node)[rung]), second.Exponent);
            settled += luminance * second.FixedPoint();
        }
        return (settled, missing);
    }

    // Filled traps of each rung over all depths, in mcd/m² times s.
    private double[] TrappedByRung(TrapProfile profile, ReadOnlySpan<double> weights)
    {
        CheckWeights(weights);
        var trapped = new double[TrapLadder.RungCount];
        for (int node = 0; node < profile.NodeCount; node++)
        {
            ReadOnlySpan<double> filled = profile.At(node);
            for (int k = 0; k < trapped.Length; k++)
            {
                trapped[k] += weights[node] * filled[k];
            }
        }
        for (int k = 0; k < trapped.Length; k++)
        {
            trapped[k] *= ladder.TrapsPerMm3[k];
        }
        return trapped;
    }

    private void CheckWeights(ReadOnlySpan<double> weights)
    {
        Demand.Length(weights.Length, LightsOut.NodeCount, nameof(weights));
        Demand.NoneNegative(weights, nameof(weights), "mcd/m²");
    }
}
