using GlowMix.Console.Plots;
using GlowMix.Console.Texts;
using GlowMix.Predictions;

namespace GlowMix.Console.Reports;

/// <summary>The glow over the minutes after the last light, both by factors, with its band, limits and criteria.</summary>
internal static class DecayChart
{
    private const double StandardLimit = 0.3;

    // Below a hundredth of the standard's limit nothing is to be seen.
    private const double LeastMcdPerM2 = 0.003;

    private const string Luminance = "afterglow.luminance_mcd_m2";

    /// <summary>Null where nothing ever glows.</summary>
    public static Illustration? Of(RecipeReport report)
    {
        var prediction = report.Prediction;
        if (prediction.Decay is not { } decay || decay.HighMcdPerM2.Max() <= LeastMcdPerM2)
        {
            return null;
        }
        double own = prediction.LimitMcdPerM2;
        double highest = Math.Max(decay.HighMcdPerM2.Max(), own);
        double lowest = Math.Max(
            LeastMcdPerM2,
            Math.Min(decay.LowMcdPerM2.Where(l => l > 0).DefaultIfEmpty(own).Min(), StandardLimit)
        );
        var chart = new Chart(
            Axis.Logarithmic("minutes after the last light", decay.Minutes[0], decay.Minutes[^1]),
            Axis.Logarithmic("mcd/m²", DecadeBelow(Math.Min(lowest, own)), DecadeAbove(highest)),
            height: 300
        )
            .Band(decay.Minutes, decay.LowMcdPerM2, decay.HighMcdPerM2, "glow")
            .Curve(decay.Minutes, decay.LikelyMcdPerM2, "glow")
            .Level(
                StandardLimit,
                $"{Digits.Plain(StandardLimit)}: 'visible' of the marking standards",
                "limit"
            );
        if (own != StandardLimit)
        {
            chart.Level(own, $"{Digits.Plain(own)}: the recipe's own limit", "limit");
        }
        bool hasCriteria = false;
        foreach (var compared in report.Markings.Criteria)
        {
            string name = compared.Criterion.Name;
            foreach (var limit in compared.Limits)
            {
                if (limit.LeastMcdPerM2 is double least)
                {
                    chart.Mark(limit.Minutes, least, "diamond", name, "limit");
                    name = "";
                    hasCriteria = true;
                }
            }
        }
        return new(
            chart.Drawn("Decay", InWords(prediction)),
            "Glow after the last light; the band goes from low to high, plan on the low end."
                + (
                    hasCriteria
                        ? " Diamonds are what criteria ask for, under a charge of their own and not this one: see the markings below. An estimate is no test."
                        : ""
                ),
            ["minutes", "low", "likely", "high"],
            [.. FigureCatalogue.Minutes.Select(minutes => Row(prediction, minutes))]
        );
    }

    private static string[] Row(Prediction prediction, double minutes)
    {
        var band = prediction.BandOf(FigureCatalogue.AtMinutes(Luminance, minutes));
        return [Digits.Plain(minutes), Digits.Two(band.Low), Digits.Two(band.Likely), Digits.Two(band.High)];
    }

    private static string InWords(Prediction prediction)
    {
        var tenth = prediction.BandOf(FigureCatalogue.AtMinutes(Luminance, 10));
        var hour = prediction.BandOf(FigureCatalogue.AtMinutes(Luminance, 60));
        return $"low {Digits.Two(tenth.Low)}, likely {Digits.Two(tenth.Likely)} mcd/m² after 10 minutes, "
            + $"low {Digits.Two(hour.Low)}, likely {Digits.Two(hour.Likely)} after an hour";
    }

    private static double DecadeBelow(double value) => Math.Pow(10, Math.Floor(Math.Log10(value)));

    private static double DecadeAbove(double value) => Math.Pow(10, Math.Ceiling(Math.Log10(value) + 1e-9));
}
