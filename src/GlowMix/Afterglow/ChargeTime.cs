namespace GlowMix.Afterglow;

/// <summary>How long a light must shine.</summary>
public static class ChargeTime
{
    private const double WantedShare = 0.9;
    private const double GlowMinutes = 10;

    /// <summary>
    /// Minutes under the light of the last lit step alone, from the programme's start, until the luminance 10 minutes after it
    /// is 90 % of what it becomes without end; 0 if it is so from the start, null if there is nothing to charge with.
    /// </summary>
    /// <param name="pigments">The traps of each pigment of a piece, with its weights as for <see cref="ChargedTraps.Glow"/>.</param>
    public static double? MinutesTo90Percent(
        (ChargedTraps Traps, double[] McdM2PerPhotonPerSMm3)[] pigments
    ) => MinutesTo(pigments, endless => WantedShare * endless);

    /// <summary>
    /// Minutes under the light of the last lit step alone, from the programme's start, until the luminance 10 minutes after it
    /// has come to a wanted one; 0 if it is so from the start, null if it never does.
    /// </summary>
    /// <param name="pigments">As for <see cref="MinutesTo90Percent"/>.</param>
    /// <param name="wantedMcdM2">Luminance 10 minutes after the light, mcd/m².</param>
    public static double? MinutesToLuminance(
        (ChargedTraps Traps, double[] McdM2PerPhotonPerSMm3)[] pigments,
        double wantedMcdM2
    )
    {
        Demand.NotNegative(wantedMcdM2, nameof(wantedMcdM2), "mcd/m²");
        return MinutesTo(pigments, _ => wantedMcdM2);
    }

    private static double? MinutesTo(
        (ChargedTraps Traps, double[] McdM2PerPhotonPerSMm3)[] pigments,
        Func<double, double> wantedOfEndless
    )
    {
        ArgumentNullException.ThrowIfNull(pigments);
        double endless = 0;
        var missing = new ChargePart[pigments.Length][];
        for (int i = 0; i < missing.Length; i++)
        {
            (double settled, missing[i]) = pigments[i]
                .Traps.Approach(pigments[i].McdM2PerPhotonPerSMm3, GlowMinutes);
            endless += settled;
        }
        double shareLeft = 1 - (wantedOfEndless(endless) / endless);
        if (!(endless > 0 && shareLeft > 0))
        {
            return null;
        }
        double Short(double seconds)
        {
            double sum = 0;
            foreach (var ofPigment in missing)
            {
                foreach (var part in ofPigment)
                {
                    sum += part.MissingMcdM2 * Math.Exp(-part.TurnoverPerS * seconds);
                }
            }
            return (sum / endless) - shareLeft;
        }
        if (Short(0) <= 0)
        {
            return 0;
        }

        // Steps of a factor 2 find the first crossing; only a start from another light's day could cross more than once.
        double upS = 1;
        while (Short(upS) > 0)
        {
            upS *= 2;
        }
        double seconds =
            upS == 1
                ? BracketedRoot.Find(Short, 0, 1, tolerance: 1e-12)
                : Math.Exp(
                    BracketedRoot.Find(
                        x => Short(Math.Exp(x)),
                        Math.Log(upS / 2),
                        Math.Log(upS),
                        tolerance: 1e-12
                    )
                );
        return seconds / DarkSchedule.SecondsPerMinute;
    }
}
