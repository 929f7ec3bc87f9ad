using GlowMix.Console.Texts;
using GlowMix.Predictions;

namespace GlowMix.Console.Tune.Model;

/// <summary>The dark piece in a few lines, the low end first.</summary>
internal static class DarkAnswers
{
    private const string Luminance = "afterglow.luminance_mcd_m2";
    private const double UsualMinutes = 60;
    private const double EarlyMinutes = 10;
    private const double StandardLimitMcdPerM2 = 0.3;

    /// <summary>What to plan on, in words.</summary>
    public static string Headline(Prediction prediction, bool hasBands)
    {
        if (prediction.Decay is null)
        {
            return "no glow, for there is no pigment";
        }
        var band = prediction.BandOf("afterglow.minutes_to_limit");
        string limit = $"above {Digits.Plain(prediction.LimitMcdPerM2)} mcd/m²";
        return !hasBands ? $"likely {Duration.Of(band.Likely)} {limit}"
            : band.Low is > 0 ? $"plan on {Duration.Of(band.Low)} {limit}"
            : $"plan on no glow {limit}";
    }

    /// <summary>Its lines: low, likely, high in the text, the change of the likely figure behind.</summary>
    /// <param name="now">As it is.</param>
    /// <param name="start">As it was; null if not known.</param>
    /// <param name="hasBands">Whether low and high are known.</param>
    /// <param name="atMinutes">When the glow counts, min; null for the usual hour.</param>
    /// <param name="isRough">Whether they will still change; they are marked so.</param>
    public static IEnumerable<Answer> Of(
        Prediction now,
        Prediction? start,
        bool hasBands,
        double? atMinutes,
        bool isRough = false
    )
    {
        if (now.Decay is null)
        {
            yield break;
        }
        double counts = atMinutes ?? UsualMinutes;
        string unsure = isRough ? " ?" : "";
        yield return new("mcd/m²", Three("low" + unsure, "likely", "high" + unsure), "");
        if (counts != EarlyMinutes)
        {
            yield return At(EarlyMinutes);
        }
        yield return At(counts);
        yield return Lasting("above 0.3", "afterglow.minutes_to_0_3_mcd_m2");
        if (now.LimitMcdPerM2 != StandardLimitMcdPerM2)
        {
            yield return Lasting($"above {Digits.Plain(now.LimitMcdPerM2)}", "afterglow.minutes_to_limit");
        }
        yield return new(
            "traps full",
            Digits.Percent(now.Figures["afterglow.capacity_filled_percent"]),
            LitAnswers.Change(now, start, "afterglow.capacity_filled_percent", d => d, 0, " %")
        );

        Answer At(double minutes)
        {
            string name = FigureCatalogue.AtMinutes(Luminance, minutes);
            return new($"{Digits.Plain(minutes)} min", Banded(name, v => Digits.Two(v)), Ratio(name));
        }

        Answer Lasting(string label, string name) => new(label, Banded(name, Short), Ratio(name));

        string Banded(string name, Func<double?, string> write)
        {
            var band = now.BandOf(name);
            return Three(
                hasBands ? write(band.Low) : "…",
                write(band.Likely),
                hasBands ? write(band.High) : "…"
            );
        }

        string Ratio(string name)
        {
            if (now.Figures[name] is not > 0 || start?.Figures[name] is not > 0)
            {
                return "";
            }
            double ratio = now.Figures[name]!.Value / start.Figures[name]!.Value;
            double percent = 100 * (ratio - 1);
            return Math.Abs(percent) < 0.5 ? ""
                : ratio >= 2 ? $"× {Digits.Two(ratio)}"
                : Digits.Signed(percent, 0) + " %";
        }
    }

    private static string Three(string low, string likely, string high) => $"{low, 7} {likely, 7} {high, 7}";

    // Three of them stand in a line.
    private static string Short(double? minutes)
    {
        var (number, unit) = Duration.Parts(minutes);
        string sign =
            number.StartsWith("under ", StringComparison.Ordinal) ? "<"
            : number.StartsWith("over ", StringComparison.Ordinal) ? ">"
            : "";
        string last = number[(number.LastIndexOf(' ') + 1)..];
        return unit switch
        {
            "" => last,
            "days" => $"{sign}{last} d",
            "years" => $"{sign}{last} y",
            _ => $"{sign}{last} {unit}",
        };
    }
}
