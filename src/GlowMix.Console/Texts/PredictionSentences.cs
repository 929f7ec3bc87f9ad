using GlowMix.Colour;
using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>A prediction in three sentences, in lay words: lit, dark, and what holds the glow back.</summary>
internal static class PredictionSentences
{
    /// <summary>The limit of the marking standards, mcd/m².</summary>
    public const string StandardLimit = "0.3 mcd/m²";

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

    /// <summary>'25 min above 0.3 mcd/m²; likely 50; at best 100'.</summary>
    public static string MinutesAbove(Band minutes, string limit)
    {
        if (minutes.High is not > 0)
        {
            return $"never above {limit}";
        }
        var unit = Duration.For(minutes.Likely is > 0 ? minutes.Likely : minutes.High);
        string best = unit.Number(minutes.High);
        return minutes.Low is > 0
            ? $"{unit.Text(minutes.Low)} above {limit}; likely {Part(minutes.Likely)}; at best {best}"
            : $"no glow above {limit}; likely {Part(minutes.Likely)}; at best {best} {unit.Unit}";

        string Part(double? part) => part is > 0 ? unit.Number(part) : "none";
    }

    private static string Lit(Prediction prediction)
    {
        var figures = prediction.Figures;
        double? kept = figures["lit.flux_kept_percent"];
        string light = kept switch
        {
            null => "",
            > 100.5 => $"; {Digits.Percent(kept)} of the bare board's light, pigment turning blue into green",
            _ => $"; {Digits.Percent(kept)} of the light kept",
        };
        if (prediction.DepthOverPackagesMm <= 0)
        {
            string white = figures["bare.cct_k"] is double k ? $", {Digits.Cct(k)} K" : "";
            return $"Lit: as the bare board{white}, for the LED packages stay in air{light}.";
        }
        return $"Lit: {White(figures)}{light}.";
    }

    private static string White(FigureValues figures)
    {
        double? bareK = figures["bare.cct_k"];
        if (figures["lit.cct_k"] is not double litK)
        {
            string hue =
                figures["lit.x"] is double x && figures["lit.y"] is double y ? HueWord.Of(x, y) : "dark";
            string from = bareK is double k ? $"from {Digits.Cct(k)} K to " : "";
            return hue == "dark"
                ? "no light comes out"
                : $"{from}{hue}, too far from any white for a colour temperature";
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

    private static string Dark(Prediction prediction)
    {
        if (prediction.Decay is null)
        {
            return "No pigment: it does not glow in the dark.";
        }
        var minutes = prediction.BandOf("afterglow.minutes_to_0_3_mcd_m2");
        string text = MinutesAbove(minutes, StandardLimit);
        return minutes.High is > 0 ? $"Dark: plan on {text}." : $"Dark: {text}.";
    }
}
