using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>A pour that runs out of level: what it is like at its ends, and whether the step of colour can be seen.</summary>
internal static class AlongRows
{
    /// <summary>
    /// CIE TN 001:2014 gives circles of 0.0011 a step in u′, v′; within three steps two whites side by side pass as one in the trade.
    /// </summary>
    internal const double SeenFromUPrimeVPrime = 0.0033;

    /// <summary>Where the limit is from.</summary>
    public const string Source = "limit: three steps of CIE TN 001:2014";

    /// <summary>The sentence about the step alone, if it can be seen.</summary>
    public static IEnumerable<string> SeenOf(Prediction prediction) =>
        prediction.Figures["along_largest_step_u_prime_v_prime"] > SeenFromUPrimeVPrime
            ? Of(prediction).TakeLast(1)
            : [];

    /// <summary>A sentence a place, and one about the step; none where the pour is level.</summary>
    public static IEnumerable<string> Of(Prediction prediction)
    {
        foreach (var place in prediction.Along)
        {
            string white = place.CctK is double k
                ? $"{Digits.Cct(k)} K, Duv {Digits.Duv(place.Duv)}"
                : "no CCT";
            string flux = place.FluxLm is double lm ? $", {Digits.Significant(lm, 3)} lm" : "";
            string glow = place.LuminanceAt10MinMcdPerM2 is double l
                ? $", {Digits.Two(l)} mcd/m² at 10 min"
                : "";
            yield return $"{place.Place}, {Digits.Plain(Math.Round(place.DepthMm, 3))} mm: {white}{flux}{glow}";
        }
        if (prediction.Figures["along_largest_step_u_prime_v_prime"] is double step)
        {
            string seen = step > SeenFromUPrimeVPrime ? "can be seen" : "hardly seen";
            yield return $"step Δu′v′ {Digits.Fixed(step, 4)}, {seen} (limit {Digits.Fixed(SeenFromUPrimeVPrime, 4)})";
        }
    }
}
