using GlowMix.Colour;
using GlowMix.Console.Texts;
using GlowMix.Predictions;

namespace GlowMix.Console.Tune.Model;

/// <summary>The lit piece in a few lines.</summary>
internal static class LitAnswers
{
    /// <summary>The white in words and figure: '3830 K, more green than white'.</summary>
    public static string Headline(Prediction prediction)
    {
        var figures = prediction.Figures;
        return figures["lit.cct_k"] is double k
                ? $"{Digits.Cct(k)} K, {Tint.InWords(figures["lit.duv"] ?? 0)}"
            : figures["lit.x"] is double x && figures["lit.y"] is double y
                ? $"{HueWord.Of(x, y)}, too far from white for a CCT"
            : "no light comes out";
    }

    /// <summary>Its lines.</summary>
    /// <param name="now">As it is.</param>
    /// <param name="start">As it was; null if not known.</param>
    public static IEnumerable<Answer> Of(Prediction now, Prediction? start)
    {
        yield return new(
            "white",
            now.Figures["lit.cct_k"] is double k
                ? $"{Digits.Cct(k)} K (bare {Digits.Cct(now.Figures["bare.cct_k"])})"
                : "none",
            Change(now, start, "lit.cct_k", Digits.RoundedCct, 0, " K")
        );
        yield return new(
            "Duv",
            Digits.Duv(now.Figures["lit.duv"]),
            Change(now, start, "lit.duv", d => d, 3, "")
        );
        yield return new(
            "light kept",
            Digits.Percent(now.Figures["lit.flux_kept_percent"])
                + (now.Figures["lit.flux_lm"] is double lm ? $", {Digits.Significant(lm, 3)} lm" : ""),
            Change(now, start, "lit.flux_kept_percent", d => d, 0, " %")
        );
        yield return Percent("blue to pigment", now, start, "lit.blue_absorbed_by_pigment_percent");
        yield return Percent("pigment's light", now, start, "lit.green_share_percent");
        yield return new(
            "Ra",
            now.Figures["lit.ra"] is not double ra ? "none at this tint"
                : now.RaMeaningful ? Digits.Fixed(ra, 0)
                : $"{Digits.Fixed(ra, 0)}, not meaningful here",
            Change(now, start, "lit.ra", d => d, 0, "")
        );
    }

    /// <summary>The difference of what is printed, with its sign; empty where there is none.</summary>
    internal static string Change(
        Prediction now,
        Prediction? start,
        string figure,
        Func<double, double> rounded,
        int decimals,
        string unit
    )
    {
        if (now.Figures[figure] is not double n || start?.Figures[figure] is not double s)
        {
            return "";
        }
        double difference = Math.Round(
            Math.Round(rounded(n), decimals) - Math.Round(rounded(s), decimals),
            decimals
        );
        return difference == 0 ? "" : Digits.Signed(difference, decimals) + unit;
    }

    private static Answer Percent(string label, Prediction now, Prediction? start, string figure) =>
        new(label, Digits.Percent(now.Figures[figure]), Change(now, start, figure, d => d, 0, " %"));
}
