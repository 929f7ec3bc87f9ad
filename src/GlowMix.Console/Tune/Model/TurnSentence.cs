using GlowMix.Colour;
using GlowMix.Console.Texts;
using GlowMix.Predictions;

namespace GlowMix.Console.Tune.Model;

/// <summary>What a turn gave and what it took, in one plain sentence.</summary>
internal static class TurnSentence
{
    private const double UsualMinutes = 60;
    private const string Luminance = "afterglow.luminance_mcd_m2";

    // Less than this nobody sees: a hundredth of the light or of the glow; a just noticeable step is about 0.001 in u′v′.
    private const double LeastPercent = 0.5;
    private const double LeastUPrimeVPrime = 0.0003;

    /// <summary>'Loading 20 → 22 % gave 9 % more glow at 60 min; it took 1 % of the light …'.</summary>
    /// <param name="what">The turn in words.</param>
    /// <param name="before">Before it.</param>
    /// <param name="after">After it.</param>
    /// <param name="aimK">The white aimed at, K; null for that of the bare board.</param>
    /// <param name="atMinutes">When the glow counts, min; null for the usual hour.</param>
    public static string Of(string what, Prediction before, Prediction after, double? aimK, double? atMinutes)
    {
        var gave = new List<string>();
        var took = new List<string>();
        Glow(before, after, atMinutes ?? UsualMinutes, gave, took);
        Light(before, after, gave, took);
        White(before, after, aimK, gave, took);
        return $"{what} "
            + (gave, took) switch
            {
                ([], []) => "changed nothing that can be seen.",
                (_, []) => $"gave {Joined(gave)}, and took nothing.",
                ([], _) => $"gave nothing, and took {Joined(took)}.",
                _ => $"gave {Joined(gave)}; it took {Joined(took)}.",
            };
    }

    private static void Glow(
        Prediction before,
        Prediction after,
        double minutes,
        List<string> gave,
        List<string> took
    )
    {
        double was = before.Figures[Luminance, minutes] ?? 0;
        double now = after.Figures[Luminance, minutes] ?? 0;
        string when = $"glow at {Digits.Plain(minutes)} min";
        if (was <= 0 || now <= 0)
        {
            if (was != now)
            {
                (now > was ? gave : took).Add(now > was ? $"{when}" : $"all {when}");
            }
            return;
        }
        double percent = 100 * ((now / was) - 1);
        if (Math.Abs(percent) < LeastPercent)
        {
            return;
        }
        string amount =
            now / was >= 2
                ? $"{Digits.Two(now / was)} times the {when}"
                : $"{Digits.Two(percent)} % more {when}";
        if (percent > 0)
        {
            gave.Add(amount);
        }
        else
        {
            took.Add($"{Digits.Two(-percent)} % of the {when}");
        }
    }

    private static void Light(Prediction before, Prediction after, List<string> gave, List<string> took)
    {
        // Of the bare board's light: the same lamp whatever lies over it. A stronger drive shows in lumens only.
        double? was = before.Figures["lit.flux_lm"] ?? before.Figures["lit.flux_kept_percent"];
        double? now = after.Figures["lit.flux_lm"] ?? after.Figures["lit.flux_kept_percent"];
        if (was is not > 0 || now is not double light)
        {
            return;
        }
        double percent = 100 * ((light / was.Value) - 1);
        if (percent >= LeastPercent)
        {
            gave.Add($"{Digits.Two(percent)} % more light");
        }
        else if (percent <= -LeastPercent)
        {
            took.Add($"{Digits.Two(-percent)} % of the light");
        }
    }

    private static void White(
        Prediction before,
        Prediction after,
        double? aimK,
        List<string> gave,
        List<string> took
    )
    {
        if (PointOf(before, "lit") is not { } was || PointOf(after, "lit") is not { } now)
        {
            return;
        }
        if (ColourDifference.UPrimeVPrime(was, now) < LeastUPrimeVPrime)
        {
            return;
        }
        var aim = aimK is double k ? PlanckianLocus.AtK(k) : PointOf(after, "bare");
        if (aim is not { } white)
        {
            return;
        }
        double nearer = ColourDifference.UPrimeVPrime(was, white) - ColourDifference.UPrimeVPrime(now, white);
        string to = aimK is double kelvin ? $"{Digits.Cct(kelvin)} K" : "the bare board's";
        if (Math.Abs(nearer) < LeastUPrimeVPrime)
        {
            return;
        }
        (nearer > 0 ? gave : took).Add(
            nearer > 0
                ? $"a white nearer to {to}{Shift(before, after)}"
                : $"some of the white, now farther from {to}{Shift(before, after)}"
        );
    }

    // ' (40 K cooler (bluer))' would nest brackets.
    private static string Shift(Prediction before, Prediction after)
    {
        if (before.Figures["lit.cct_k"] is not double was || after.Figures["lit.cct_k"] is not double now)
        {
            return "";
        }
        double step = Digits.RoundedCct(now) - Digits.RoundedCct(was);
        return step == 0
            ? ""
            : $", {Digits.Fixed(Math.Abs(step), 0)} K {PredictionSentences.Direction(was, now)}";
    }

    private static Chromaticity? PointOf(Prediction prediction, string part) =>
        prediction.Figures[$"{part}.x"] is double x && prediction.Figures[$"{part}.y"] is double y
            ? Chromaticity.FromXy(x, y)
            : null;

    private static string Joined(List<string> parts) =>
        parts.Count < 2 ? parts[0] : $"{string.Join(", ", parts[..^1])} and {parts[^1]}";
}
