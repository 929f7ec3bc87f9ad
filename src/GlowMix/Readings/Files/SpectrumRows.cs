using GlowMix.Documents;
using GlowMix.Predictions;

namespace GlowMix.Readings.Files;

/// <summary>Brings the rows of a spectrum into the order of their wavelengths, each once.</summary>
internal sealed partial class SpectrumRows
{
    private const double SamePlaceNm = 1e-6;
    private const double SameValue = 1e-9;
    private const double ShortestNm = 100;
    private const double LongestNm = 5000;
    private const int RowsPerReset = 8;

    private readonly CellTable table;
    private readonly ReadingOptions options;
    private readonly string file;
    private readonly List<(double Nm, double Value, int Row)> rows;

    private SpectrumRows(
        CellTable table,
        ReadingOptions options,
        string file,
        List<(double Nm, double Value, int Row)> rows
    ) => (this.table, this.options, this.file, this.rows) = (table, options, file, rows);

    /// <summary>Wavelength in nm, value, and the row of the table they stand in; strictly rising.</summary>
    public IReadOnlyList<(double Nm, double Value, int Row)> Rows => rows;

    /// <summary>Rows that say what another says.</summary>
    public int Merged { get; private set; }

    /// <summary>Rows that are none of the spectrum's.</summary>
    public int Strays { get; private set; }

    /// <summary>The file goes from long to short wavelengths.</summary>
    public bool IsDescending { get; private set; }

    /// <summary>What was done that a reader should know.</summary>
    public List<Warning> Warnings { get; } = [];

    /// <summary>Why there is no spectrum; null if there is one.</summary>
    public Problem? Problem { get; private set; }

    /// <summary>Sorts rows.</summary>
    /// <param name="rows">Wavelength in nm, value, row of the table; in the order of the file.</param>
    /// <param name="table">The table, for places.</param>
    /// <param name="options">What the user says.</param>
    /// <param name="file">The file's name, for problems.</param>
    public static SpectrumRows Of(
        List<(double Nm, double Value, int Row)> rows,
        CellTable table,
        ReadingOptions options,
        string file
    )
    {
        var sorted = new SpectrumRows(table, options, file, rows);
        sorted.DropStrays();
        sorted.Sort();
        return sorted;
    }

    private void Sort()
    {
        if (rows.Count < 2)
        {
            Problem = new(file, null, ReadingTexts.TooFewRows(rows.Count));
            return;
        }
        int up = 0;
        int down = 0;
        for (int i = 1; i < rows.Count; i++)
        {
            up += rows[i].Nm > rows[i - 1].Nm + SamePlaceNm ? 1 : 0;
            down += rows[i].Nm < rows[i - 1].Nm - SamePlaceNm ? 1 : 0;
        }
        IsDescending = down > up;
        int turns = Math.Min(up, down);
        if (turns is 1 && Outlier(IsDescending ? -1 : 1) is { } slip)
        {
            Problem = new(
                file,
                table.PlaceOf(rows[slip].Row, 0),
                ReadingTexts.OutOfOrder(rows[slip].Nm, rows[slip - 1].Nm, rows[slip + 1].Nm)
            );
            return;
        }
        int? reset =
            turns > 0 && turns * RowsPerReset <= rows.Count + RowsPerReset
                ? FirstReset(IsDescending ? -1 : 1)
                : null;
        var inFile = rows.ToArray();
        // Of equal wavelengths the first of the file comes first.
        rows.Sort((a, b) => a.Nm != b.Nm ? a.Nm.CompareTo(b.Nm) : a.Row.CompareTo(b.Row));
        if (turns > 0)
        {
            if (reset is { } at && Overlap(inFile, at) && !AllAgree())
            {
                Problem = new(
                    file,
                    table.PlaceOf(inFile[at].Row, 0),
                    ReadingTexts.SecondTable(table.LineOf(inFile[0].Row), table.LineOf(inFile[at - 1].Row))
                );
                return;
            }
            Warnings.Add(
                new("rows_sorted", null, "rows are not in the order of their wavelengths; they were sorted")
            );
        }
        Merge();
    }

    // One wavelength far from both its neighbours, which follow on each other: a slip, and not two lines that changed places.
    private int? Outlier(int sign)
    {
        const int FarSteps = 3;
        double far = FarSteps * MedianStepNm();
        for (int i = 1; i + 1 < rows.Count; i++)
        {
            double ahead = sign * (rows[i].Nm - rows[i - 1].Nm);
            double back = sign * (rows[i].Nm - rows[i + 1].Nm);
            bool goesOn = sign * (rows[i + 1].Nm - rows[i - 1].Nm) is > 0 and var step && step <= far;
            if (goesOn && (back > far || ahead < -far))
            {
                return i;
            }
        }
        return null;
    }

    private int? FirstReset(int sign)
    {
        for (int i = 1; i < rows.Count; i++)
        {
            if (sign * (rows[i].Nm - rows[i - 1].Nm) < -SamePlaceNm)
            {
                return i;
            }
        }
        return null;
    }

    // The second part runs over wavelengths that the first one has.
    private static bool Overlap((double Nm, double Value, int Row)[] inFile, int at)
    {
        double least = inFile.Take(at).Min(r => r.Nm);
        double most = inFile.Take(at).Max(r => r.Nm);
        int inside = inFile.Skip(at).Count(r => r.Nm >= least && r.Nm <= most);
        return at >= 2 && inFile.Length - at >= 2 && inside >= 2;
    }

    private bool AllAgree()
    {
        for (int i = 1; i < rows.Count; i++)
        {
            if (IsSamePlace(i) && !IsSameValue(i))
            {
                return false;
            }
        }
        // Two tables of different wavelengths agree in nothing.
        return rows.Zip(rows.Skip(1), (a, b) => b.Nm - a.Nm <= SamePlaceNm).Any(same => same);
    }

    private bool IsSamePlace(int i) => rows[i].Nm - rows[i - 1].Nm <= SamePlaceNm;

    private bool IsSameValue(int i)
    {
        double scale = Math.Max(Math.Abs(rows[i].Value), Math.Abs(rows[i - 1].Value));
        return Math.Abs(rows[i].Value - rows[i - 1].Value) <= SameValue * scale;
    }

    private void Merge()
    {
        int disagreeing = 0;
        for (int i = 1; i < rows.Count; i++)
        {
            if (!IsSamePlace(i) || IsSameValue(i))
            {
                continue;
            }
            if (!options.IsLenient)
            {
                var (nm, value, row) = rows[i];
                Problem = new(
                    file,
                    table.PlaceOf(row, 0),
                    ReadingTexts.Disagree(nm, value, table.LineOf(rows[i - 1].Row), rows[i - 1].Value)
                );
                return;
            }
            disagreeing++;
        }
        var merged = new List<(double Nm, double Value, int Row)>(rows.Count);
        int start = 0;
        while (start < rows.Count)
        {
            int end = start + 1;
            double sum = rows[start].Value;
            while (end < rows.Count && IsSamePlace(end))
            {
                sum += rows[end].Value;
                end++;
            }
            int count = end - start;
            merged.Add(
                (
                    rows[start].Nm,
                    count == 1 ? rows[start].Value
                    : disagreeing == 0 ? rows[start].Value
                    : sum / count,
                    rows[start].Row
                )
            );
            start = end;
        }
        Merged = rows.Count - merged.Count;
        rows.Clear();
        rows.AddRange(merged);
        if (disagreeing > 0)
        {
            Warnings.Add(
                new(
                    "rows_averaged",
                    null,
                    ReadingTexts.Invariant(
                        $"{disagreeing} wavelengths have more than one value; they were averaged"
                    )
                )
            );
        }
        if (rows.Count < 2)
        {
            Problem = new(file, null, ReadingTexts.TooFewRows(rows.Count));
        }
    }
}
