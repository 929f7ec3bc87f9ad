using System.Collections.Immutable;

namespace GlowMix.Afterglow;

/// <summary>Luminance against time of darkness: a sum of 13 exponentials a pigment, exact at every minute. Immutable.</summary>
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
            var ratesPerS = new double[trapped.Length];
            var left = new double[trapped.Length];
            for (int k = 0; k < trapped.Length; k++)
            {
                ratesPerS[k] = stretch.Rates.EmptyingPerS(k);
                left[k] = trapped[k] * Math.Exp(-ratesPerS[k] * (stretch.EndS - stretch.StartS));
            }
            built.Add(new(stretch.StartS, stretch.EndS, ratesPerS, trapped));
            trapped = left;
        }
        stretches = built.DrainToImmutable();
    }

    private GlowCurve(ImmutableArray<Stretch> stretches) => this.stretches = stretches;

    /// <summary>The luminance of several pigments in one piece.</summary>
    /// <param name="curves">At least one, all after the same programme.</param>
    /// <exception cref="ArgumentException">None, or curves of different darkness.</exception>
    public static GlowCurve Together(IReadOnlyList<GlowCurve> curves)
    {
        ArgumentNullException.ThrowIfNull(curves);
        if (curves.Count == 0 || curves.Any(c => !c.SameStretches(curves[0])))
        {
            throw new ArgumentException("Curves of one piece share their darkness.", nameof(curves));
        }
        return curves.Count == 1
            ? curves[0]
            : new([
                .. curves[0]
                    .stretches.Select(
                        (stretch, i) =>
                            stretch with
                            {
                                RatesPerS = [.. curves.SelectMany(c => c.stretches[i].RatesPerS)],
                                TrappedMcdSM2 = [.. curves.SelectMany(c => c.stretches[i].TrappedMcdSM2)],
                            }
                    ),
            ]);
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

    private bool SameStretches(GlowCurve other) =>
        stretches.Length == other.stretches.Length
        && stretches
            .Zip(other.stretches)
            .All(p => p.First.StartS == p.Second.StartS && p.First.EndS == p.Second.EndS);

    private sealed record Stretch(double StartS, double EndS, double[] RatesPerS, double[] TrappedMcdSM2)
    {
        internal double LuminanceMcdM2(double seconds)
        {
            double sum = 0;
            for (int k = 0; k < TrappedMcdSM2.Length; k++)
            {
                double rate = RatesPerS[k];
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
