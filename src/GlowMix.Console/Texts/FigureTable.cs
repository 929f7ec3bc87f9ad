using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>Every figure with its band, by the names that files and options use.</summary>
internal sealed class FigureTable(Prediction prediction, Sheet sheet)
{
    private const int NameColumns = 44;
    private const int CellColumns = 10;
    private const int TableColumns = NameColumns + (3 * CellColumns);
    private const int DigitsShown = 4;

    /// <summary>Prints a row a figure; on a narrow terminal two.</summary>
    public void Print()
    {
        PrintRow("Figure", "low", "likely", "high");
        foreach (var figure in FigureCatalogue.All)
        {
            var band = prediction.BandOf(figure);
            bool isBand = band.Low != band.Likely || band.High != band.Likely;
            PrintRow(
                figure.Name,
                isBand ? Number(band.Low) : "",
                Number(band.Likely),
                isBand ? Number(band.High) : ""
            );
        }
    }

    private void PrintRow(string name, string low, string likely, string high)
    {
        string cells = low.PadLeft(CellColumns) + likely.PadLeft(CellColumns) + high.PadLeft(CellColumns);
        if (sheet.Style.Columns >= TableColumns)
        {
            sheet.Line(name.PadRight(NameColumns) + cells);
            return;
        }
        sheet.Line(name);
        sheet.Line("  " + cells);
    }

    private static string Number(double? value) =>
        value is double v ? Digits.Significant(v, DigitsShown) : Digits.None;
}
