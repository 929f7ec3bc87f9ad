using GlowMix.Spectra;

namespace GlowMix.Readings.Files;

// Rows that look like those of the spectrum, and are a header's.
internal sealed partial class SpectrumRows
{
    // Two numbers of a header just above the rows look like one: far off, or out of the rows' step.
    private void DropStrays()
    {
        int before = rows.Count;
        int firstRow = rows.FindIndex(r => r.Nm is < ShortestNm or > LongestNm);
        int line = firstRow >= 0 ? table.LineOf(rows[firstRow].Row) : 0;
        rows.RemoveAll(r => r.Nm is < ShortestNm or > LongestNm);
        line = DropRangeLine() ?? line;
        if (rows.Count > 8)
        {
            double step = MedianStepNm();
            for (int i = 2; i >= 0; i--)
            {
                double gap = Math.Abs(rows[i + 1].Nm - rows[i].Nm);
                bool turns =
                    Math.Sign(rows[i + 1].Nm - rows[i].Nm) != Math.Sign(rows[i + 2].Nm - rows[i + 1].Nm);
                if (gap > 20 * step && (turns || table.Width > 1 && gap > 100 * step))
                {
                    line = table.LineOf(rows[0].Row);
                    rows.RemoveRange(0, i + 1);
                    break;
                }
            }
        }
        Strays = before - rows.Count;
        if (Strays > 0)
        {
            Warnings.Add(
                new(
                    "rows_left_out",
                    null,
                    ReadingTexts.Invariant(
                        $"{Strays} {(Strays == 1 ? "row" : "rows")} of numbers left out as part of a header; the first is line {line}, and its wavelength does not belong to the others"
                    )
                )
            );
        }
    }

    // '380 780' above the rows: where the wavelengths begin and end, and so the first wavelength twice.
    private int? DropRangeLine()
    {
        const int MostLinesUp = 5;
        for (int i = Math.Min(MostLinesUp, rows.Count - 3); i >= 0; i--)
        {
            bool isRange =
                Math.Abs(rows[i].Nm - rows[i + 1].Nm) <= SamePlaceNm
                && Math.Abs(table.NumberAt(rows[i].Row, 1) - table.NumberAt(rows[^1].Row, 0)) <= SamePlaceNm;
            if (isRange)
            {
                int line = table.LineOf(rows[0].Row);
                rows.RemoveRange(0, i + 1);
                return line;
            }
        }
        return null;
    }

    private double MedianStepNm()
    {
        var steps = new List<double>(rows.Count);
        for (int i = 1; i < rows.Count; i++)
        {
            double step = Math.Abs(rows[i].Nm - rows[i - 1].Nm);
            if (step > SamePlaceNm)
            {
                steps.Add(step);
            }
        }
        steps.Sort(Ascending.Order);
        return steps.Count == 0 ? 0 : steps[steps.Count / 2];
    }
}
