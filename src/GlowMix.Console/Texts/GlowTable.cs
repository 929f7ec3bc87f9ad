using System.Globalization;
using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>The glow at a few minutes and how long it stays above a limit: low, likely, high.</summary>
internal sealed class GlowTable(Prediction prediction, Sheet sheet)
{
    private const double StandardLimit = 0.3;
    private const string Luminance = "afterglow.luminance_mcd_m2";

    /// <summary>Of the luminances.</summary>
    public const string Unit = "mcd/m²";
    private const int MinutesColumns = 9;
    private const int LimitColumns = 14;
    private const int NarrowLabelColumns = Sheet.LabelColumns;
    private const int NarrowColumns = 9;

    private static readonly double[] shownMinutes = [2, 10, 30, 60];

    /// <summary>Prints a column a time, or a row a time where the terminal is narrow.</summary>
    public void Print()
    {
        var columns = ColumnsOf(prediction);
        if (Sheet.LabelColumns + columns.Sum(c => c.Width) <= sheet.Style.Columns)
        {
            PrintRow(Unit, columns, c => c.Head);
            PrintRow("low", columns, c => c.Low);
            PrintRow("likely", columns, c => c.Likely);
            PrintRow("high", columns, c => c.High);
            return;
        }
        PrintNarrowRow(Unit, "low", "likely", "high");
        foreach (var column in columns)
        {
            PrintNarrowRow(column.Head, column.Low, column.Likely, column.High);
        }
    }

    /// <summary>A column a time, and one a limit.</summary>
    public static IReadOnlyList<Column> ColumnsOf(Prediction prediction)
    {
        var columns = new List<Column>();
        foreach (double minutes in shownMinutes)
        {
            var band = prediction.BandOf(FigureCatalogue.AtMinutes(Luminance, minutes));
            columns.Add(
                Column.Of($"{FigureCatalogue.MinutesKey(minutes)} min", band, Digits.Two, MinutesColumns)
            );
        }
        AddAbove(prediction, columns, StandardLimit, "afterglow.minutes_to_0_3_mcd_m2");
        if (prediction.LimitMcdPerM2 != StandardLimit)
        {
            AddAbove(prediction, columns, prediction.LimitMcdPerM2, "afterglow.minutes_to_limit");
        }
        return columns;
    }

    private static void AddAbove(Prediction prediction, List<Column> columns, double limit, string figure) =>
        columns.Add(
            Column.Of(
                $"above {limit.ToString("0.####", CultureInfo.InvariantCulture)}",
                prediction.BandOf(figure),
                minutes => minutes == 0 ? "never" : Duration.Of(minutes),
                LimitColumns
            )
        );

    private void PrintRow(string label, IReadOnlyList<Column> columns, Func<Column, string> cell) =>
        sheet.Line(
            label.PadRight(Sheet.LabelColumns) + string.Concat(columns.Select(c => cell(c).PadLeft(c.Width)))
        );

    private void PrintNarrowRow(string label, string low, string likely, string high) =>
        sheet.Line(
            label.PadRight(NarrowLabelColumns)
                + low.PadLeft(NarrowColumns)
                + " "
                + likely.PadLeft(NarrowColumns)
                + " "
                + high.PadLeft(NarrowColumns)
        );

    /// <summary>What stands in a column, from its head down.</summary>
    internal sealed record Column(string Head, string Low, string Likely, string High, int Width)
    {
        public static Column Of(string head, Band band, Func<double?, string> words, int width) =>
            new(head, words(band.Low), words(band.Likely), words(band.High), width);
    }
}
