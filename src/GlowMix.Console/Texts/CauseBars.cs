using System.Globalization;
using GlowMix.Choosing.Draws;
using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>What to measure first: a bar for each heavy cause of a figure's doubt, and the reading that would settle the heaviest.</summary>
internal sealed class CauseBars(Sheet sheet)
{
    private const int BarColumns = 20;
    private const int NameColumns = 34;
    private const int MostBars = 5;
    private const double LeastShown = 0.02;

    /// <summary>Prints a study.</summary>
    /// <param name="title">The recipe.</param>
    /// <param name="study">Its causes.</param>
    public void Print(string title, CauseStudy study)
    {
        sheet.Heading(title);
        sheet.Paragraph(
            "What to measure first: each cause's share in the doubt of a figure, all that it does together with others included; in "
                + "brackets what it does by itself."
        );
        foreach (var figure in study.Figures)
        {
            sheet.Blank();
            sheet.Line(NameOf(figure.Figure));
            Bars(figure);
        }
        sheet.Blank();
        sheet.Aside(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{study.RunCount} runs; after each share its standard error. {Refused(study)}Shares need not add up to 1."
            )
        );
    }

    private void Bars(FigureCauses figure)
    {
        var shown = figure.Causes.Where(c => c.Indices.TotalOrder >= LeastShown).Take(MostBars).ToArray();
        if (shown.Length == 0)
        {
            sheet.Line("  nothing in doubt moves it");
            return;
        }
        foreach (var (cause, indices) in shown)
        {
            sheet.Line(
                $"  {Fitted(cause.What)} {Bar(indices.TotalOrder)} {Share(indices.TotalOrder, indices.TotalOrderError)} "
                    + $"({Digits.Fixed(Math.Clamp(indices.FirstOrder, 0, 1), 2)})"
            );
        }
        sheet.Paragraph($"first {shown[0].Cause.Reading}", indent: 2, hanging: 2);
    }

    private string Bar(double share)
    {
        int full = (int)Math.Round(Math.Clamp(share, 0, 1) * BarColumns);
        return new string(sheet.Style.Ascii ? '#' : '■', full).PadRight(BarColumns);
    }

    private static string Share(double share, double error) =>
        $"{Digits.Fixed(share, 2)} ± {Digits.Fixed(error, 2)}";

    private static string Fitted(string name) =>
        (name.Length <= NameColumns ? name : name[..(NameColumns - 1)] + ".").PadRight(NameColumns);

    private static string NameOf(Figure figure) =>
        figure.AtMinutes is double minutes ? $"{figure.Family} at {Digits.Plain(minutes)} min" : figure.Name;

    private static string Refused(CauseStudy study) =>
        study.RefusedCount == 0
            ? ""
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{study.RefusedCount} of them contradict a pigment's own sheet and are left out. "
            );
}
