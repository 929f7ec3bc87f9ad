using GlowMix.Colour;
using GlowMix.Readings.Spectral;

namespace GlowMix.Console.Texts;

/// <summary>Prints what a spectral reading says: a sentence, the comparison, the figures, what to know before trusting them.</summary>
internal sealed class ReadingSheet(
    ReadingFigures figures,
    SpectrumComparison? comparison,
    SpectrumAgainstPrediction? predicted,
    Sheet sheet
)
{
    private const int MostPeaks = 4;

    private readonly ColourFigures colour = figures.Colour;

    /// <summary>Prints it.</summary>
    public void Print()
    {
        sheet.Heading(figures.Reading.File);
        if (!figures.Reading.IsColourTrustworthy)
        {
            sheet.Paragraph("RAW COUNTS: COLOUR NOT TRUSTWORTHY. Ratios of two readings are.");
        }
        sheet.Paragraph(Sentence());
        if (comparison is not null)
        {
            sheet.Paragraph(ComparisonWords.Sentence(comparison));
        }
        if (predicted is not null)
        {
            sheet.Paragraph(AgainstRecipeRows.Sentence(predicted));
        }
        sheet.Blank();
        if (comparison is not null)
        {
            Against(comparison);
        }
        if (predicted is not null)
        {
            AgainstRecipeRows.Print(predicted, sheet);
        }
        White();
        Rendering();
        Shape();
        sheet.Row("Found", FindingsWords.Of(figures.Reading.Findings));
        string label = "Warnings";
        foreach (var warning in figures.Warnings)
        {
            sheet.Row(label, warning.Text);
            label = "";
        }
    }

    private string Sentence()
    {
        if (colour.Chromaticity is not { } point)
        {
            return "No light to speak of: what there is, is lost in noise.";
        }
        if (colour.CctK is not { } cctK || figures.White is not { } white)
        {
            return $"{Capital(HueWord.Of(point.X, point.Y))}, too far from white for a colour temperature.";
        }
        string ra =
            colour.Ra is not { } index ? ""
            : colour.RaMeaningful ? $"; Ra {Digits.Fixed(index, 0)}"
            : $"; Ra {Digits.Fixed(index, 0)}, not meaningful at this tint";
        return $"{Digits.Cct(cctK)} K, {Tint.InWords(colour.Duv ?? 0)}, {(figures.IsInsideWhite ? "inside" : "outside")} the quadrangle of the nominal {Digits.Fixed(white.NominalCctK, 0)} K{ra}.";
    }

    private void White()
    {
        if (colour.Chromaticity is not { } point)
        {
            return;
        }
        sheet.Row(
            "White",
            colour.CctK is { } cctK
                ? $"CCT {Digits.Fixed(cctK, 0)} K, Duv {Digits.Signed(colour.Duv ?? 0, 4)}, {Tint.InWords(colour.Duv ?? 0)}"
                : "no CCT: too far from the colours of glowing bodies"
        );
        sheet.Row(
            "",
            $"x {Digits.Fixed(point.X, 4)}, y {Digits.Fixed(point.Y, 4)}; u′ {Digits.Fixed(point.UPrime, 4)}, v′ {Digits.Fixed(point.VPrime, 4)}"
        );
        if (figures.White is { } white)
        {
            sheet.Row(
                "",
                $"nearest nominal white {Digits.Fixed(white.NominalCctK, 0)} K, {(figures.IsInsideWhite ? "inside" : "outside")} its quadrangle (ANSI C78.377-2015)"
            );
        }
    }

    private void Rendering()
    {
        if (colour.Ra is { } ra)
        {
            sheet.Row(
                "Rendering",
                $"Ra {Digits.Fixed(ra, 1)}, R9 {Digits.Fixed(colour.R9 ?? 0, 0)}{(colour.RaMeaningful ? "" : ", not meaningful at this tint")}"
            );
        }
        if (colour.ScotopicPhotopicRatio is { } ratio)
        {
            string lux = figures.IlluminanceLx is { } lx ? $"{Digits.Significant(lx, 3)} lx; " : "";
            string efficacy = colour.LuminousEfficacyLmPerW is { } lmPerW
                ? $"; {Digits.Fixed(lmPerW, 0)} lm/W over {Digits.Fixed(figures.Visible.FirstNm, 0)} to {Digits.Fixed(figures.Visible.LastNm, 0)} nm"
                : "";
            sheet.Row("Eye", $"{lux}S/P {Digits.Fixed(ratio, 2)}{efficacy}");
        }
    }

    private void Shape()
    {
        if (!figures.Peaks.IsEmpty)
        {
            sheet.Row("Peaks", string.Join("; ", figures.Peaks.Take(MostPeaks).Select(Words)));
        }
        if (!figures.Bands.IsEmpty)
        {
            sheet.Row(
                "Bands",
                string.Join(", ", figures.Bands.Select(b => $"{b.Band.Name} {Percent(b.PowerPercent)}"))
                    + " of the power"
            );
        }
    }

    private void Against(SpectrumComparison compared)
    {
        string label = "Against";
        foreach (string text in ComparisonWords.Rows(compared))
        {
            sheet.Row(label, text);
            label = "";
        }
    }

    private static string Words(ReadingPeak peak)
    {
        string width = peak.FullWidthNm is { } nm ? $", {Digits.Fixed(nm, 0)} nm wide" : "";
        return $"{Digits.Fixed(peak.Nm, 0)} nm ({Percent(100 * peak.ShareOfHighest)}{width})";
    }

    // Negative noise can make a share a little less than none.
    private static string Percent(double percent) => $"{Digits.Fixed(percent, 0)} %";

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
