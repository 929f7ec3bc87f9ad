using GlowMix.Predictions;
using GlowMix.Readings.Decay;
using GlowMix.Readings.Spectral;

namespace GlowMix.Console.Texts;

/// <summary>A reading beside the prediction of a recipe.</summary>
internal static class AgainstRecipeRows
{
    private const int MostCauses = 3;

    /// <summary>Prints a spectrum's.</summary>
    public static void Print(SpectrumAgainstPrediction compared, Sheet sheet)
    {
        sheet.Row("Of recipe", compared.Prediction.Recipe);
        string label = "Figures";
        foreach (var figure in compared.Figures)
        {
            if (figure.Read is null && figure.Band.Likely is null)
            {
                continue;
            }
            sheet.Row(
                label,
                $"{Name(figure.Figure)}: read {Text(figure, figure.Read)}, predicted {Predicted(figure)}"
            );
            label = "";
        }
        sheet.Row(
            "Cause",
            $"{Digits.Percent(100 * compared.Difference)} of the light stands at other wavelengths than predicted{(compared.IsAsPredicted ? ", which a spectrometer hardly tells" : "")}"
        );
        foreach (var cause in compared.Causes.Take(MostCauses))
        {
            sheet.Row("", Words(cause));
        }
        if (compared.Causes.IsEmpty)
        {
            sheet.Row("", "no single number of the recipe or its materials would explain it");
        }
    }

    /// <summary>One sentence on a spectrum.</summary>
    public static string Sentence(SpectrumAgainstPrediction compared)
    {
        int judged = compared.Figures.Count(f => f.IsInside is not null);
        int inside = compared.Figures.Count(f => f.IsInside == true);
        string bands =
            judged == 0
                ? "the prediction has no bands to judge by"
                : $"{Digits.Plain(inside)} of {Digits.Plain(judged)} figures lie in their bands";
        string cause =
            compared.IsAsPredicted ? "; the spectrum is as predicted"
            : compared.Causes is [var best, ..]
                ? $"; {(best.LeftShare > 0.5 ? "no single cause explains half of the difference, the most " : "best explained by ")}{best.Words} × {Digits.Significant(best.Factor, 2)}"
            : "";
        return $"Against {compared.Prediction.Recipe}: {bands}{cause}.";
    }

    /// <summary>Prints a decay's.</summary>
    public static void Print(DecayAgainstPrediction compared, Sheet sheet)
    {
        sheet.Row("Of recipe", $"{compared.Prediction.Recipe}, charged {compared.Prediction.ChargedBy}");
        if (compared.IsRelative)
        {
            sheet.Row(
                "",
                "readings without luminance: made equal to the prediction, only the course is compared"
            );
        }
        string label = "mcd/m²";
        foreach (var point in compared.Points)
        {
            sheet.Row(
                label,
                $"{Digits.Significant(point.Minutes, 3)} min: read {Digits.Two(point.ReadMcdPerM2)}, predicted {Digits.Two(point.Band.Likely)} ({Digits.Two(point.Band.Low)} to {Digits.Two(point.Band.High)}), × {Digits.Significant(point.Factor, 2)}, {(point.IsInside ? "inside" : "outside")}"
            );
            label = "";
        }
        if (compared.Points.IsEmpty)
        {
            sheet.Row(label, "no usable reading within the predicted times");
        }
        if (compared.Cause is { } cause)
        {
            sheet.Row("Cause", cause);
        }
    }

    /// <summary>One sentence on a decay.</summary>
    public static string Sentence(DecayAgainstPrediction compared)
    {
        int inside = compared.Points.Count(p => p.IsInside);
        return $"Against {compared.Prediction.Recipe}: {Digits.Plain(inside)} of {Digits.Plain(compared.Points.Length)} readings lie in the predicted band.";
    }

    private static string Words(CauseFound cause) =>
        $"{cause.Words} × {Digits.Significant(cause.Factor, 2)} would leave {Digits.Percent(100 * cause.LeftShare)} of that difference";

    private static string Name(Figure figure) =>
        figure.Name["lit.".Length..] switch
        {
            "cct_k" => "CCT, K",
            "duv" => "Duv",
            "u_prime" => "u′",
            "v_prime" => "v′",
            "ra" => "Ra",
            "r9" => "R9",
            "luminous_efficacy_lm_w" => "lm/W",
            "scotopic_photopic_ratio" => "S/P",
            var name => name,
        };

    private static string Predicted(FigureAgainst figure)
    {
        string band =
            figure.Band is { Low: { } low, High: { } high } && Text(figure, low) != Text(figure, high)
                ? $" ({Text(figure, low)} to {Text(figure, high)})"
                : "";
        string verdict = figure.IsInside switch
        {
            true => ", inside",
            false => ", outside",
            null => figure.Read is null ? "" : ", no band",
        };
        return $"{Text(figure, figure.Band.Likely)}{band}{verdict}";
    }

    private static string Text(FigureAgainst figure, double? value) =>
        value is not { } v
            ? Digits.None
            : figure.Figure.Name switch
            {
                "lit.cct_k" => Digits.Cct(v),
                "lit.duv" => Digits.Duv(v),
                "lit.ra" or "lit.r9" or "lit.luminous_efficacy_lm_w" => Digits.Fixed(v, 0),
                _ => Digits.Fixed(v, 3),
            };
}
