using GlowMix.Afterglow;
using GlowMix.Materials;

namespace GlowMix.Console.Texts;

/// <summary>Prints one material: every value with its doubt and its source.</summary>
internal sealed class MaterialSheet(Material material, Sheet sheet)
{
    private const int SourceIndent = 4;

    /// <summary>Prints it.</summary>
    /// <param name="ladder">The ladder of traps behind a pigment's sheet.</param>
    public void Print(LadderFitResult? ladder)
    {
        sheet.Heading($"{material.Name}: {material.Title}");
        if (material.Origin is { } origin)
        {
            sheet.Aside(origin.IsShipped ? $"{origin.Path}, travels with the program" : origin.Path);
        }
        sheet.Blank();
        var tables = new MaterialTables(material);
        bool hasAssumed = false;
        foreach (var fact in material.Facts)
        {
            bool isAssumed = fact.Note.Mark == SourceMark.Assumed;
            hasAssumed |= isAssumed;
            string value = tables.Of(fact) ?? fact.Value;
            sheet.Paragraph(
                $"{(isAssumed ? "?" : " ")} {fact.Key}  {value}{DoubtOf(fact.Doubt)}",
                hanging: SourceIndent
            );
            sheet.Aside(fact.Note.Text, SourceIndent);
        }
        if (hasAssumed)
        {
            sheet.Blank();
            sheet.Paragraph("? is assumed, without a source: calibrate it first.");
        }
        if (material is Pigment pigment)
        {
            PrintLadder(pigment, ladder);
        }
        foreach (string caution in material.Cautions)
        {
            sheet.Row("Caution", caution);
        }
    }

    private void PrintLadder(Pigment pigment, LadderFitResult? ladder)
    {
        var points = pigment.Sheet.Points.Value;
        if (ladder is { Ladder: not null } fit && fit.ResidualsPercent.Length == points.Length)
        {
            string residuals = "";
            for (int i = 0; i < points.Length; i++)
            {
                residuals +=
                    $"{(i > 0 ? ", " : "")}{Digits.Plain(points[i].Minutes)} min {Digits.Signed(fit.ResidualsPercent[i], 1)} %";
            }
            sheet.Paragraph($"The traps fitted to the decay sheet give, against it: {residuals}.");
        }
        else if (ladder?.Refusal is { } refusal)
        {
            sheet.Paragraph($"The decay sheet cannot be met: {refusal}");
        }
        sheet.Paragraph(
            $"The sheet reaches {Digits.Plain(pigment.Sheet.ReachMinutes)} min; what a prediction says beyond is extrapolated."
        );
    }

    private static string DoubtOf(Doubt doubt) =>
        doubt switch
        {
            { Factor: double factor } => $", doubt a factor of {Digits.Plain(factor)}",
            { Low: double low, High: double high } =>
                $", between {Digits.Plain(low)} and {Digits.Plain(high)}",
            { TolerancePercent: double percent } => $", ± {Digits.Plain(percent)} %",
            _ => "",
        };
}
