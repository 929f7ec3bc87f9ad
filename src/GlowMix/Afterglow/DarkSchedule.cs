using System.Collections.Immutable;

namespace GlowMix.Afterglow;

/// <summary>The darkness after the light goes off: stretches of one temperature each, the last without end.</summary>
internal sealed class DarkSchedule
{
    internal const double SecondsPerMinute = 60;

    internal DarkSchedule(TrapLadder ladder, ImmutableArray<ChargeStep> darkSteps, double endlessTemperatureC)
    {
        var stretches = ImmutableArray.CreateBuilder<Stretch>(darkSteps.Length + 1);
        double startS = 0;
        foreach (ChargeStep step in darkSteps)
        {
            double endS = startS + (step.Minutes * SecondsPerMinute);
            if (endS > startS)
            {
                stretches.Add(new(startS, endS, ladder.RatesAt(step.TemperatureC)));
            }
            startS = endS;
        }
        stretches.Add(new(startS, double.PositiveInfinity, ladder.RatesAt(endlessTemperatureC)));
        Stretches = stretches.DrainToImmutable();
    }

    internal ImmutableArray<Stretch> Stretches { get; }

    /// <summary>Share of the traps filled at lights out that empties in each second, after some time of darkness, by rung, 1/s.</summary>
    internal double[] EmittedSharePerS(double seconds)
    {
        var kept = new double[TrapLadder.RungCount];
        Array.Fill(kept, 1);
        foreach (Stretch stretch in Stretches)
        {
            double here = Math.Min(seconds, stretch.EndS) - stretch.StartS;
            bool last = seconds <= stretch.EndS;
            for (int k = 0; k < kept.Length; k++)
            {
                double rate = stretch.Rates.EmptyingPerS(k);
                kept[k] *= Math.Exp(-rate * here) * (last ? rate : 1);
            }
            if (last)
            {
                break;
            }
        }
        return kept;
    }

    internal readonly record struct Stretch(double StartS, double EndS, TrapRates Rates);
}
