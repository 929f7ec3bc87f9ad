namespace GlowMix.Afterglow;

/// <summary>
/// The exact effect of some time of constant light and temperature on a filled fraction: f becomes Keep · f + Gain. The
/// default empties the trap.
/// </summary>
/// <param name="Keep">Share of what was filled that is still filled, exp(−<paramref name="Exponent"/>).</param>
/// <param name="Gain">Fraction filled anew and still filled.</param>
/// <param name="Exponent">−ln Keep, kept because 1 − Keep has lost its digits where little happens.</param>
internal readonly record struct FillStep(double Keep, double Gain, double Exponent)
{
    /// <summary>Nothing happens.</summary>
    internal static FillStep None { get; } = new(1, 0, 0);

    /// <param name="fillingPerS">Rate at which an empty trap is filled.</param>
    /// <param name="emptyingPerS">Rate at which a filled trap is emptied, by heat and light together.</param>
    /// <param name="seconds">How long; may be infinite.</param>
    internal static FillStep Of(double fillingPerS, double emptyingPerS, double seconds)
    {
        double turnoverPerS = fillingPerS + emptyingPerS;
        if (turnoverPerS == 0)
        {
            return None;
        }
        double exponent = turnoverPerS * seconds;
        double gone = ShareGone(exponent);
        return new(Math.Exp(-exponent), fillingPerS / turnoverPerS * gone, exponent);
    }

    /// <summary>1 − exp(−x) to the last digits for every x from 0 to infinity.</summary>
    internal static double ShareGone(double exponent) =>
        // 2 sinh(x/2) exp(−x/2), since the runtime's own ExpM1 subtracts the 1 afterwards.
        exponent < 1
            ? 2 * Math.Sinh(exponent / 2) * Math.Exp(-exponent / 2)
            : 1 - Math.Exp(-exponent);

    /// <summary>This step, then another.</summary>
    internal FillStep Then(FillStep next) =>
        new(Keep * next.Keep, (Gain * next.Keep) + next.Gain, Exponent + next.Exponent);

    internal double Apply(double filled) => (Keep * filled) + Gain;

    /// <summary>The fraction that comes back to itself after this step: where repeating it for ever leads.</summary>
    internal double FixedPoint() => Exponent == 0 ? 0 : Gain / ShareGone(Exponent);
}
