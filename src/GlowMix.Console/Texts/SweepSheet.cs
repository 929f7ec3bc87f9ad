using GlowMix.Choosing;

namespace GlowMix.Console.Texts;

/// <summary>Prints a sweep: what was varied, and a row a prediction.</summary>
internal sealed class SweepSheet(SweepTable table, string recipe, Sheet sheet)
{
    private const int KeyDigits = 6;

    /// <summary>Prints it.</summary>
    /// <param name="width">Columns a table may take.</param>
    public void Print(int width)
    {
        sheet.Heading(recipe);
        foreach (var axis in table.Axes)
        {
            sheet.Paragraph(
                $"{axis.KeyPath} from {Digits.Plain(axis.Values[0])} to {Digits.Plain(axis.Values[^1])}, "
                    + $"{axis.Values.Length} values; all else as in the recipe"
            );
        }
        sheet.Blank();
        var columns = new ColumnTable(table.Axes.Length);
        for (int a = 0; a < table.Axes.Length; a++)
        {
            string key = table.Axes[a].KeyPath;
            columns.Add(
                FigureDigits.Head(key[(key.LastIndexOf('.') + 1)..]),
                ("", [.. table.Points.Select(p => Digits.Significant(p.At[a], KeyDigits))])
            );
        }
        for (int f = 0; f < table.Figures.Length; f++)
        {
            var figure = table.Figures[f];
            string[] likely = [.. table.Points.Select(p => FigureDigits.Text(figure, p.Figures[f].Likely))];
            if (!FigureDigits.HasLowEnd(figure))
            {
                columns.Add(FigureDigits.Head(figure.Name), ("", likely));
                continue;
            }
            string[] low = [.. table.Points.Select(p => FigureDigits.Text(figure, p.Figures[f].Low))];
            columns.Add(FigureDigits.Head(figure.Name), ("low", low), ("likely", likely));
        }
        columns.Print(sheet, width);
        if (table.Figures.Any(FigureDigits.HasLowEnd))
        {
            sheet.Blank();
            sheet.Paragraph($"Plan on the low ends of the glow: {BandWords.Of(table.DrawCount)}.");
        }
    }
}
