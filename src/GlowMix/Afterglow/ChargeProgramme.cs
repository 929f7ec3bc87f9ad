using System.Collections.Immutable;
using System.Globalization;
using GlowMix.Recipes;
using GlowMix.Spectra;

namespace GlowMix.Afterglow;

/// <summary>Light and darkness in order, and the darkness that follows. Immutable.</summary>
/// <remarks>
/// Time 0 of the glow is the end of the last lit step; dark steps after it are the first part of the darkness, each at its
/// own temperature.
/// </remarks>
public sealed class ChargeProgramme
{
    private const double MinutesPerDay = 1440;

    /// <param name="nodeCount">Number of depths at which absorption is told.</param>
    /// <param name="steps">What happens, in order; every lit step tells the absorption at each depth.</param>
    /// <param name="start">How full the traps are before the first step.</param>
    /// <param name="darknessTemperatureC">Temperature of the darkness after the last step, and of the rest of a repeated day, °C.</param>
    /// <exception cref="ArgumentException">A lit step with another number of depths, or a repeated day of more than 24 h.</exception>
    public ChargeProgramme(
        int nodeCount,
        ImmutableArray<ChargeStep> steps,
        ChargeStart start,
        double darknessTemperatureC
    )
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(nodeCount, 1);
        if (steps.IsDefault)
        {
            throw new ArgumentException("A programme has steps, or an empty list of them.", nameof(steps));
        }
        foreach (ChargeStep step in steps.Where(step => step.IsLit))
        {
            Demand.Length(step.AbsorbedPerSMm3.Length, nodeCount, nameof(steps));
        }
        double minutes = Total.Of(steps.AsSpan(), step => step.Minutes);
        if (start == ChargeStart.SettledDaily && minutes > MinutesPerDay)
        {
            throw new ArgumentException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The charge steps take {minutes / 60:0.##} h; a day that repeats has at most 24 h."
                ),
                nameof(steps)
            );
        }
        NodeCount = nodeCount;
        Steps = steps;
        Start = start;
        DarknessTemperatureC = Demand.TemperatureC(darknessTemperatureC, nameof(darknessTemperatureC));
    }

    /// <summary>Number of depths at which absorption is told.</summary>
    public int NodeCount { get; }

    /// <summary>What happens, in order.</summary>
    public ImmutableArray<ChargeStep> Steps { get; }

    /// <summary>How full the traps are before the first step.</summary>
    public ChargeStart Start { get; }

    /// <summary>Temperature of the darkness after the last step, °C.</summary>
    public double DarknessTemperatureC { get; }

    /// <summary>What the programme leaves in a pigment's traps.</summary>
    public ChargedTraps Charge(TrapLadder ladder)
    {
        ArgumentNullException.ThrowIfNull(ladder);
        int litCount = LitCount();
        TrapProfile start = StartProfile(ladder);
        TrapProfile lightsOut = start;
        foreach (ChargeStep step in Steps.Take(litCount))
        {
            lightsOut = lightsOut.After(
                ladder,
                step.AbsorbedPerSMm3.AsSpan(),
                step.Minutes * DarkSchedule.SecondsPerMinute,
                step.TemperatureC
            );
        }
        ImmutableArray<ChargeStep> darkSteps = [.. Steps.Skip(litCount)];
        return new(
            ladder,
            start,
            lightsOut,
            litCount == 0 ? null : Steps[litCount - 1],
            new DarkSchedule(ladder, darkSteps, DarknessTemperatureC)
        );
    }

    // Steps up to and with the last lit one; without any, all of the programme is darkness.
    private int LitCount()
    {
        int count = Steps.Length;
        while (count > 0 && !Steps[count - 1].IsLit)
        {
            count--;
        }
        return count;
    }

    // A day takes each rung at each depth from f to Keep · f + Gain, so the day that repeats starts at the fixed point.
    private TrapProfile StartProfile(TrapLadder ladder)
    {
        if (Start == ChargeStart.Empty)
        {
            return TrapProfile.Empty(NodeCount);
        }
        double restMinutes = MinutesPerDay - Total.Of(Steps.AsSpan(), step => step.Minutes);
        ChargeStep[] day = [.. Steps, ChargeStep.Dark(Math.Max(0, restMinutes), DarknessTemperatureC)];
        TrapRates[] rates = [.. day.Select(step => ladder.RatesAt(step.TemperatureC))];
        var filled = new double[NodeCount * TrapLadder.RungCount];
        for (int i = 0; i < filled.Length; i++)
        {
            (int node, int rung) = Math.DivRem(i, TrapLadder.RungCount);
            FillStep whole = FillStep.None;
            for (int s = 0; s < day.Length; s++)
            {
                double absorbedPerSMm3 = day[s].IsLit ? day[s].AbsorbedPerSMm3[node] : 0;
                double seconds = day[s].Minutes * DarkSchedule.SecondsPerMinute;
                whole = whole.Then(rates[s].Step(rung, absorbedPerSMm3, seconds));
            }
            filled[i] = whole.FixedPoint();
        }
        return TrapProfile.Trusted(filled);
    }
}
