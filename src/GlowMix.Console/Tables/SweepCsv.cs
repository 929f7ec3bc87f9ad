using GlowMix.Choosing;

namespace GlowMix.Console.Tables;

/// <summary>A sweep as a table: a row a prediction; a figure with a band takes three columns.</summary>
internal static class SweepCsv
{
    /// <summary>The table.</summary>
    public static string Of(SweepTable table)
    {
        var csv = new CsvText();
        bool[] banded =
        [
            .. table.Figures.Select((_, f) => table.Points.Any(p => p.Figures[f].Low != p.Figures[f].High)),
        ];
        foreach (var axis in table.Axes)
        {
            csv.Cell(axis.KeyPath);
        }
        for (int f = 0; f < banded.Length; f++)
        {
            string name = table.Figures[f].Name;
            csv.Cell(name);
            if (banded[f])
            {
                csv.Cell($"{name} low").Cell($"{name} high");
            }
        }
        csv.EndRow();
        foreach (var point in table.Points)
        {
            foreach (double value in point.At)
            {
                csv.Cell(value);
            }
            for (int f = 0; f < banded.Length; f++)
            {
                csv.Cell(point.Figures[f].Likely);
                if (banded[f])
                {
                    csv.Cell(point.Figures[f].Low).Cell(point.Figures[f].High);
                }
            }
            csv.EndRow();
        }
        return csv.ToString();
    }
}
