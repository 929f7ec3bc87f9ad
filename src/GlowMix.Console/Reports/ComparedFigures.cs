using System.Xml.Linq;
using GlowMix.Console.Texts;
using GlowMix.Predictions;

namespace GlowMix.Console.Reports;

/// <summary>The figures one decides by, several recipes side by side.</summary>
internal static class ComparedFigures
{
    private static readonly (string Head, Func<RecipeReport, string> Cell)[] rows =
    [
        ("white, K", r => Digits.Cct(r.Prediction.Figures["lit.cct_k"])),
        ("Duv", r => Digits.Duv(r.Prediction.Figures["lit.duv"])),
        ("light kept", r => Digits.Percent(r.Prediction.Figures["lit.flux_kept_percent"])),
        (
            "light, lm",
            r => r.Prediction.Figures["lit.flux_lm"] is double lm ? Digits.Significant(lm, 3) : Digits.None
        ),
        ("glow at 10 min, mcd/m²", r => BandWords(r, "afterglow.luminance_mcd_m2[10]", Digits.Two)),
        ("glow at 60 min, mcd/m²", r => BandWords(r, "afterglow.luminance_mcd_m2[60]", Digits.Two)),
        ("above 0.3 mcd/m²", r => BandWords(r, "afterglow.minutes_to_0_3_mcd_m2", Duration.Of)),
        ("depth, mm", r => Digits.Plain(r.Prediction.DepthOverBoardMm)),
        ("loading", r => Loading(r.Prediction)),
        ("pigment, g", r => Digits.Grams(r.Prediction.Figures["casting.pigment_g"])),
        (
            "cost",
            r => r.Prediction.Figures["casting.cost"] is double cost ? Digits.Fixed(cost, 2) : Digits.None
        ),
    ];

    /// <summary>A column a recipe.</summary>
    public static XElement Of(IReadOnlyList<RecipeReport> reports) =>
        Markup.Of(
            "section",
            Markup.Of("h2", "Side by side"),
            PageTable.Of(
                [new PageBlock.Column("", false), .. reports.Select(r => new PageBlock.Column(r.Name, true))],
                rows.Select(row => (string?[])[row.Head, .. reports.Select(row.Cell)])
            ),
            Markup.Of(
                "p",
                "Each was charged as its own recipe says. Where there are two numbers the first is the low end: plan on it."
            )
        );

    private static string BandWords(RecipeReport report, string figure, Func<double?, string> write)
    {
        var band = report.Prediction.BandOf(figure);
        return write(band.Low) == write(band.High)
            ? write(band.Likely)
            : $"{write(band.Low)} to {write(band.High)}";
    }

    private static string Loading(Prediction prediction) =>
        prediction.Loadings.Count == 0
            ? Digits.None
            : string.Join(
                " + ",
                prediction.Loadings.Select(l => $"{Digits.Significant(l.MassPercent, 3)} %")
            );
}
