using GlowMix.Documents;

namespace GlowMix.Readings.Files;

/// <summary>A text cut into rows of cells, each cell read as a number or a time where it is one.</summary>
internal sealed partial class CellTable
{
    private readonly string text;
    private readonly List<(int Start, int Length)> lines;
    private readonly List<(int Start, int Length)> cells = [];
    private readonly List<CellSort> sorts = [];
    private readonly List<double> numbers = [];
    private readonly List<byte> units = [];
    private readonly List<bool> isGroupAlone = [];
    private readonly List<(int Line, int FirstCell, int Count)> rows = [];

    // Headers are shorter; what is longer is cut.
    private const int LongestLine = 2000;

    private (int First, int Last)? among;

    private CellTable(string text, List<(int Start, int Length)> lines, TableFormat format) =>
        (this.text, this.lines, Format) = (text, lines, format);

    /// <summary>How it is written.</summary>
    public TableFormat Format { get; }

    /// <summary>Number of rows; one a line, the empty ones too.</summary>
    public int RowCount => rows.Count;

    /// <summary>Cells of the commonest row of numbers.</summary>
    public int Width { get; private set; }

    /// <summary>Rows of that width, of numbers for the most part.</summary>
    public List<int> NumberRows { get; } = [];

    /// <summary>Wavelengths stood in a row and not in a column.</summary>
    public bool IsTransposed { get; private init; }

    /// <summary>Several pairs of wavelength and value stood on each line.</summary>
    public bool IsUnfolded { get; private init; }

    /// <summary>A number has a decimal mark.</summary>
    public bool HasFractions { get; private set; }

    /// <summary>A number has its thousands set apart.</summary>
    public bool HasGroups { get; private set; }

    /// <summary>The lines above the first row of numbers, as they stand; no more than a header's worth of them.</summary>
    public IReadOnlyList<string> HeaderLines { get; private set; } = [];

    /// <summary>Cuts a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="lines">Its lines.</param>
    /// <param name="format">How it is written.</param>
    /// <param name="names">Names that stood in the rows themselves; they become a header's last line.</param>
    /// <param name="among">First and last line whose numbers count, from 1; null for all.</param>
    public static CellTable Of(
        string text,
        List<(int Start, int Length)> lines,
        TableFormat format,
        string[] names,
        (int First, int Last)? among = null
    )
    {
        var table = new CellTable(text, lines, format) { among = among };
        for (int i = 0; i < lines.Count; i++)
        {
            int first = table.cells.Count;
            int count = lines[i].Length == 0 ? 0 : CellSplitter.Split(text, lines[i], format, table.cells);
            table.rows.Add((i, first, count));
            table.ReadCells(first);
        }
        table.FindNumberRows();
        table.HeaderLines = table.LinesAboveNumbers();
        if (names.Length > 0)
        {
            table.HeaderLines =
            [
                .. table.HeaderLines,
                string.Join(format.Delimiter == ' ' ? '\t' : format.Delimiter, names),
            ];
        }
        const int FewRows = 12;
        return table.NumberRows.Count is >= 2 and <= FewRows && table.Width > 3 * table.NumberRows.Count
                ? table.Transposed()
            : table.PairsOnLines() is { } pairs ? table.Unfolded(pairs)
            : table;
    }

    /// <summary>How many rows of two numbers or more stand above or below the table.</summary>
    /// <param name="first">The table's first row.</param>
    /// <param name="last">Its last.</param>
    /// <param name="firstLine">Line of the first other row, from 1; 0 without any.</param>
    public int OtherNumberRows(int first, int last, out int firstLine)
    {
        firstLine = 0;
        int count = 0;
        for (int row = 0; row < rows.Count && !IsTransposed && !IsUnfolded; row++)
        {
            if ((row < first || row > last) && IsOfNumbers(row))
            {
                firstLine = count == 0 ? LineOf(row) : firstLine;
                count++;
            }
        }
        return count;
    }

    /// <summary>Number of cells of a row.</summary>
    public int CellsOf(int row) => rows[row].Count;

    /// <summary>Line of a row, from 1.</summary>
    public int LineOf(int row) => rows[row].Line + 1;

    /// <summary>What a cell holds; nothing where the row is shorter.</summary>
    public CellSort SortOf(int row, int column) =>
        column < rows[row].Count ? sorts[rows[row].FirstCell + column] : CellSort.Empty;

    /// <summary>The number in a cell, minutes where it is a time; NaN where it is neither.</summary>
    public double NumberAt(int row, int column) =>
        column < rows[row].Count ? numbers[rows[row].FirstCell + column] : double.NaN;

    /// <summary>A cell's text.</summary>
    public string TextAt(int row, int column) =>
        column < rows[row].Count
            ? text.Substring(
                cells[rows[row].FirstCell + column].Start,
                cells[rows[row].FirstCell + column].Length
            )
            : "";

    /// <summary>A number whose thousands are set apart, and that has no decimals.</summary>
    public bool IsGroupAlone(int row, int column) =>
        column < rows[row].Count && isGroupAlone[rows[row].FirstCell + column];

    /// <summary>The unit behind a number in its cell; empty where there is none.</summary>
    public ReadOnlySpan<char> UnitAt(int row, int column)
    {
        if (column >= rows[row].Count || units[rows[row].FirstCell + column] is var at && at == 0)
        {
            return [];
        }
        var (start, length) = cells[rows[row].FirstCell + column];
        return text.AsSpan(start + at, length - at);
    }

    /// <summary>Where a cell begins, or where it is missing.</summary>
    public Place PlaceOf(int row, int column)
    {
        var (line, first, count) = rows[row];
        var (lineStart, length) = lines[line];
        int start = column < count ? cells[first + column].Start : lineStart + length;
        return new(line + 1, start - lineStart + 1);
    }

    /// <summary>The text of a row's line.</summary>
    public ReadOnlySpan<char> LineText(int row) =>
        text.AsSpan(lines[rows[row].Line].Start, lines[rows[row].Line].Length);

    private void ReadCells(int first)
    {
        for (int i = first; i < cells.Count; i++)
        {
            var cell = text.AsSpan(cells[i].Start, cells[i].Length);
            if (cell.Length == 0)
            {
                Add(CellSort.Empty, double.NaN);
            }
            else if (NumberCell.TryRead(cell, Format.DecimalMark, out NumberCell number))
            {
                HasFractions |= number.HasMark;
                HasGroups |= number.IsGrouped;
                if (number.Unit > 0 && CellUnits.MinutesIn(cell[number.Unit..]) is { } inUnit)
                {
                    Add(CellSort.Duration, number.Value * inUnit);
                }
                else
                {
                    Add(
                        CellSort.Number,
                        number.Value,
                        number.Unit,
                        number is { IsGrouped: true, HasMark: false }
                    );
                }
            }
            else if (ClockCell.TryRead(cell, out double minutes))
            {
                Add(CellSort.Clock, minutes);
            }
            else if (DurationCell.TryRead(cell, Format.DecimalMark, out double told))
            {
                Add(CellSort.Duration, told);
            }
            else
            {
                Add(ClockCell.IsDate(cell) ? CellSort.Date : CellSort.Text, double.NaN);
            }
        }
    }

    private void Add(CellSort sort, double number, int unit = 0, bool isGrouped = false)
    {
        isGroupAlone.Add(isGrouped);
        sorts.Add(sort);
        numbers.Add(number);
        units.Add((byte)unit);
    }

    private List<string> LinesAboveNumbers()
    {
        const int MostLines = 2000;
        var above = new List<string>();
        int end = NumberRows.Count > 0 ? rows[NumberRows[0]].Line : lines.Count;
        for (int i = Math.Max(0, end - MostLines); i < end; i++)
        {
            above.Add(text.Substring(lines[i].Start, Math.Min(LongestLine, lines[i].Length)));
        }
        return above;
    }
}
