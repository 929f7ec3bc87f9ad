using GlowMix.Colour;
using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>A prediction in three sentences, in lay words: lit, dark, and what holds the glow back.</summary>
internal static class PredictionSentences
{
    private const string StandardLimit = "0.3 mcd/m²";

    /// <summary>Two or three sentences.</summary>
    public static IEnumerable<string> Of(Prediction prediction)
    {
        yield return Lit(prediction);
        yield return Dark(prediction);
        if (prediction.LimitedBy is { } limitedBy)
        {
            yield return $"Limited by: {limitedBy}{(limitedBy.EndsWith('.') ? "" : ".")}";
        }
    }

    /// <summary>How one colour temperature stands to another: 'cooler (bluer)', 'warmer (yellower)'; null where they print the same.</summary>
    public static string? Direction(double fromK, double toK) =>
        (Digits.RoundedCct(toK) - Digits.RoundedCct(fromK)) switch
        {
            > 0 => "cooler (bluer)",
            < 0 => "warmer (yellower)",
            _ => null,
        };

    private static string Lit(Prediction prediction)
    {
        var figures = prediction.Figures;
        if (prediction.DepthOverPackagesMm <= 0)
        {
            string white = figures["bare.cct_k"] is double k ? $", {Digits.Cct(k)} K" : "";
            return $"Lit: as the bare board{white}, for the LED packages stay in air.";
        }
        if (figures["lit.x"] is not double x || figures["lit.y"] is not double y)
        {
            return "Lit: no light comes out.";
        }
        return $"Lit: {White(figures, x, y)}; {Light(figures["lit.flux_kept_percent"] ?? 0)}.";
    }

    // More than all is no mistake: pigment turns blue, which the eye hardly sees, into green, which it sees best.
    private static string Light(double keptPercent) =>
        Math.Round(keptPercent) switch
        {
            > 100 and double more => $"{Digits.Percent(more - 100)} brighter than the bare board",
            100 => "as bright as the bare board",
            _ => $"{Digits.Percent(keptPercent)} of the light kept",
        };

    private static string White(FigureValues figures, double x, double y)
    {
        double? bareK = figures["bare.cct_k"];
        if (figures["lit.cct_k"] is not double litK)
        {
            string from = bareK is double k ? $"from {Digits.Cct(k)} K to " : "";
            return $"{from}{HueWord.Of(x, y)}, too far from white for a colour temperature";
        }
        string tint = Tint.InWords(figures["lit.duv"] ?? 0);
        if (bareK is not double startK)
        {
            return $"{Digits.Cct(litK)} K, {tint}";
        }
        return Direction(startK, litK) is { } direction
            ? $"{Digits.Cct(startK)} → {Digits.Cct(litK)} K, {direction}, {tint}"
            : $"stays at {Digits.Cct(litK)} K, {tint}";
    }

    private static string Dark(Prediction prediction) =>
        prediction.Decay is null
            ? "Dark: no glow, for there is no pigment in it."
            : $"Dark: {MinutesAbove(prediction.BandOf("afterglow.minutes_to_0_3_mcd_m2"))}.";

    // 'plan on 25 min above 0.3 mcd/m²; likely 50; at best 100'.
    private static string MinutesAbove(Band minutes)
    {
        if (minutes.High is not > 0)
        {
            return $"never above {StandardLimit}";
        }
        var low = Duration.Parts(minutes.Low);
        var likely = Duration.Parts(minutes.Likely);
        var high = Duration.Parts(minutes.High);
        string plan = minutes.Low is > 0
            ? $"plan on {low.Number} {low.Unit} above {StandardLimit}"
            : $"plan on no glow above {StandardLimit}";
        if (low == likely && likely == high)
        {
            return $"{plan}; at best hardly more";
        }
        // One unit is said once.
        bool shared = minutes.Low is > 0 && low.Unit == likely.Unit && likely.Unit == high.Unit;
        return $"{plan}; likely {Part(minutes.Likely, likely)}; at best {Part(minutes.High, high)}";

        string Part(double? part, (string Number, string Unit) words) =>
            part is not > 0 ? "none"
            : shared ? words.Number
            : $"{words.Number} {words.Unit}";
    }
}
