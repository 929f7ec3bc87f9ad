using System.Collections.Immutable;

namespace GlowMix.Afterglow;

/// <summary>Luminance against time of darkness: a sum of 13 exponentials, exact at every minute. Immutable.</summary>
public sealed class GlowCurve
{
    /// <summary>The latest time that <see cref="MinutesUntil"/> looks at, min: 19 years.</summary>
    public const double LongestMinutes = 1e7;

    private readonly ImmutableArray<Stretch> stretches;

    internal GlowCurve(DarkSchedule darkness, double[] trappedMcdSM2)
    {
        var built = ImmutableArray.CreateBuilder<Stretch>(darkness.Stretches.Length);
        double[] trapped = trappedMcdSM2;
        foreach (DarkSchedule.Stretch stretch in darkness.Stretches)
        {
            built.Add(new(stretch.StartS, stretch.EndS, stretch.Rates, trapped));
            double seconds = stretch.EndS - stretch.StartS;
            trapped =
            [
                .. trapped.Select((amount, k) => amount * Math.Exp(-stretch.Rates.EmptyingPerS(k) * seconds)),
            ];
        }
        stretches = built.DrainToImmutable();
    }

    /// <summary>Luminance at the normal, mcd/m².</summary>
    /// <param name="minutes">Time since the last light went off, min. Where the temperature changes, still the earlier one.</param>
    public double LuminanceMcdM2(double minutes)
    {
        double seconds = Demand.NotNegative(minutes, nameof(minutes), "min") * DarkSchedule.SecondsPerMinute;
        return stretches.First(stretch => seconds <= stretch.EndS).LuminanceMcdM2(seconds);
    }

    /// <summary>
    /// Minutes until the luminance has fallen to a limit for the first time: 0 if it is not above at the start,
    /// <see cref="LongestMinutes"/> if it is still above then.
    /// </summary>
    /// <param name="limitMcdM2">The limit, mcd/m², above 0.</param>
    public double MinutesUntil(double limitMcdM2)
    {
        Demand.Positive(limitMcdM2, nameof(limitMcdM2), "mcd/m²");
        const double longestS = LongestMinutes * DarkSchedule.SecondsPerMinute;
        foreach (Stretch stretch in stretches.TakeWhile(stretch => stretch.StartS < longestS))
        {
            if (stretch.LuminanceMcdM2(stretch.StartS) <= limitMcdM2)
            {
                return stretch.StartS / DarkSchedule.SecondsPerMinute;
            }
            double endS = Math.Min(stretch.EndS, longestS);
            if (stretch.LuminanceMcdM2(endS) <= limitMcdM2)
            {
                return stretch.SecondsAt(limitMcdM2, endS) / DarkSchedule.SecondsPerMinute;
            }
        }
        return LongestMinutes;
    }

    private sealed record Stretch(double StartS, double EndS, TrapRates Rates, double[] TrappedMcdSM2)
    {
        internal double LuminanceMcdM2(double seconds)
        {
            double sum = 0;
            for (int k = 0; k < TrappedMcdSM2.Length; k++)
            {
                double rate = Rates.EmptyingPerS(k);
                sum += TrappedMcdSM2[k] * rate * Math.Exp(-rate * (seconds - StartS));
            }
            return sum;
        }

        // Within one stretch the luminance only falls, and in logarithms the curve is almost straight.
        internal double SecondsAt(double limitMcdM2, double endS)
        {
            double log = BracketedRoot.Find(
                x => Math.Log(LuminanceMcdM2(StartS + Math.Exp(x) - 1) / limitMcdM2),
                0,
                Math.Log(1 + endS - StartS),
                tolerance: 1e-12
            );
            return StartS + Math.Exp(log) - 1;
        }
    }
}
