using GlowMix.Documents;

namespace GlowMix.Readings.Files;

/// <summary>Reads the rows of the chosen columns, and tells every one that cannot be read.</summary>
internal sealed class RowReader(CellTable table, ColumnChoice choice, ReadingOptions options, string file)
{
    private const int MostProblems = 20;
    private const int FewInRows = 10;

    // Not needed for any figure: a calibration often ends in NaN there.
    private const double VisibleFromNm = 380;
    private const double VisibleToNm = 780;

    /// <summary>Rows that were left out, with what is wrong with the first.</summary>
    public int LeftOut { get; private set; }

    /// <summary>Line of the first row that was left out.</summary>
    public int FirstLeftOutLine { get; private set; }

    /// <summary>Remarks between the rows.</summary>
    public int Remarks { get; private set; }

    /// <summary>Errors in line order.</summary>
    public List<Problem> Problems { get; } = [];

    /// <summary>The rows in the order of the file.</summary>
    public List<ReadRow> Read()
    {
        var rows = new List<ReadRow>(table.NumberRows.Count);
        if (table.NumberRows.Count == 0)
        {
            return rows;
        }
        var (alongAt, lightAt) = (choice.Along.Index, choice.Light.Index);
        int[] used = choice.Dark is { } darkColumn
            ? [alongAt, lightAt, darkColumn.Index]
            : [alongAt, lightAt];
        int needed = Math.Max(Math.Max(alongAt, lightAt), used[^1]) + 1;
        int start = StartOf(table.NumberRows[0]);
        int last = EndOf(table.NumberRows[^1], needed);
        // A number too many, in a few rows alone: two lines in one, or a delimiter too many.
        int[] wide = [.. Enumerable.Range(start, last - start + 1).Where(HasNumberBeyond)];
        if (wide.Length * FewInRows > table.NumberRows.Count)
        {
            wide = [];
        }
        for (int row = start; row <= last && Problems.Count < MostProblems; row++)
        {
            if (table.CellsOf(row) == 0)
            {
                continue;
            }
            if (wide.Contains(row))
            {
                Refuse(row, double.NaN, used, table.CellsOf(row) + 1);
                continue;
            }
            double along = table.NumberAt(row, choice.Along.Index);
            double light = table.NumberAt(row, choice.Light.Index);
            double dark = choice.Dark is { } d ? table.NumberAt(row, d.Index) : 0;
            if (!double.IsNaN(along) && !double.IsNaN(light) && !double.IsNaN(dark))
            {
                rows.Add(new(row, along, light, dark));
            }
            else if (IsRemark(row))
            {
                Remarks++;
            }
            else
            {
                Refuse(row, along, used, needed);
            }
        }
        return rows;
    }

    // A calibration often begins and ends in NaN; and a first number with a slip is no header.
    private int StartOf(int first)
    {
        while (
            first > 0
            && options.Lines is null
            && (IsPartOfTable(first - 1) || Continues(first - 1, first, first + 1))
        )
        {
            first--;
        }
        return first;
    }

    private bool IsPartOfTable(int row)
    {
        if (table.CellsOf(row) != table.Width)
        {
            return false;
        }
        string along = table.TextAt(row, choice.Along.Index);
        return (IsPlace(row) && IsMissing(table.TextAt(row, choice.Light.Index)))
            || (
                table.Format.Delimiter != ' '
                && table.SortOf(row, choice.Light.Index) == CellSort.Number
                && table.SortOf(row, choice.Along.Index) == CellSort.Text
                && char.IsAsciiDigit(along[0])
            );
    }

    private bool IsPlace(int row) =>
        table.SortOf(row, choice.Along.Index) is CellSort.Number or CellSort.Clock or CellSort.Duration;

    // A row with more cells or fewer, or with a light that is no number: '60; <3'. Its place goes on from the two nearest.
    private bool Continues(int row, int near, int far)
    {
        if (
            !IsPlace(row)
            || table.CellsOf(row) <= choice.Light.Index
            || near >= table.RowCount
            || far >= table.RowCount
            || far < 0
        )
        {
            return false;
        }
        double step = table.NumberAt(near, choice.Along.Index) - table.NumberAt(far, choice.Along.Index);
        double own = table.NumberAt(row, choice.Along.Index) - table.NumberAt(near, choice.Along.Index);
        const double MostSteps = 4;
        bool isNumber = table.SortOf(row, choice.Light.Index) == CellSort.Number;
        bool goesOn = Enumerable
            .Range(table.Width, Math.Max(0, table.CellsOf(row) - table.Width))
            .All(column => table.SortOf(row, column) is CellSort.Text or CellSort.Empty);
        return goesOn
            && step * own > 0
            && (choice.Kind == ReadingKind.Decay && !isNumber || own / step < MostSteps);
    }

    private static bool IsMissing(string cell) =>
        cell.Trim('+', '-', '(', ')', '#', '.').ToLowerInvariant()
            is ""
                or "nan"
                or "na"
                or "n/a"
                or "inf"
                or "infinity"
                or "null"
                or "none"
                or "1.#qnan"
                or "1.#inf"
                or "1.#ind";

    // A last line that breaks off is part of the table, not of what stands below it.
    private int EndOf(int last, int needed)
    {
        while (
            last + 1 < table.RowCount
            && options.Lines is null
            && (IsPartOfTable(last + 1) || Continues(last + 1, last, last - 1))
        )
        {
            last++;
        }
        last = UnreadableEnd(last) ?? last;
        int next = last + 1;
        while (next < table.RowCount && table.CellsOf(next) == 0)
        {
            next++;
        }
        if (next >= table.RowCount || table.CellsOf(next) >= needed || options.Lines is not null)
        {
            return last;
        }
        for (int column = 0; column < table.CellsOf(next); column++)
        {
            if (table.SortOf(next, column) is not (CellSort.Number or CellSort.Duration or CellSort.Empty))
            {
                return last;
            }
        }
        return table.SortOf(next, choice.Along.Index) is CellSort.Number or CellSort.Duration ? next : last;
    }

    // Lines that begin with numbers and are no rows: a few are remarks, many are the rest of the table.
    private int? UnreadableEnd(int last)
    {
        const int MostRemarks = 4;
        if (options.Lines is not null || table.IsTransposed)
        {
            return null;
        }
        int[] rest =
        [
            .. Enumerable
                .Range(last + 1, table.RowCount - last - 1)
                .Where(row =>
                    table.CellsOf(row) > 0 && table.CellsOf(row) <= choice.Light.Index && !IsRemark(row)
                ),
        ];
        return rest.Length > MostRemarks ? rest[0] : null;
    }

    private bool HasNumberBeyond(int row) =>
        IsPlace(row)
        && !IsRemark(row)
        && Enumerable
            .Range(table.Width, Math.Max(0, table.CellsOf(row) - table.Width))
            .Any(column => table.SortOf(row, column) == CellSort.Number);

    private bool IsRemark(int row)
    {
        if (table.IsTransposed)
        {
            return false;
        }
        var line = table.LineText(row).TrimStart(" \t\u00A0\",;|");
        if (line is ['+' or '-' or '\u2212', .. var unsigned])
        {
            line = unsigned;
        }
        if (line is ['.', .. var decimals])
        {
            line = decimals;
        }
        return line is not [>= '0' and <= '9', ..];
    }

    private void Refuse(int row, double along, int[] used, int needed)
    {
        if (options.IsLenient || IsBeyondVisible(along))
        {
            FirstLeftOutLine = LeftOut == 0 ? table.LineOf(row) : FirstLeftOutLine;
            LeftOut++;
            return;
        }
        int bad = Array.FindIndex(used, c => double.IsNaN(table.NumberAt(row, c)));
        Problems.Add(
            table.CellsOf(row) < needed
                ? new(file, table.PlaceOf(row, 0), ReadingTexts.ShortRow(table.CellsOf(row), table.Width))
                : new(
                    file,
                    table.PlaceOf(row, used[bad]),
                    ReadingTexts.NotANumber(
                        (
                            bad == 0 ? choice.Along
                            : bad == 1 ? choice.Light
                            : choice.Dark!
                        ).Told,
                        table.TextAt(row, used[bad])
                    )
                )
        );
    }

    private bool IsBeyondVisible(double along) =>
        choice.Kind == ReadingKind.Spectrum
        && along * WavelengthHints.NmIn(choice.WavelengthUnit) is < VisibleFromNm or > VisibleToNm;
}
