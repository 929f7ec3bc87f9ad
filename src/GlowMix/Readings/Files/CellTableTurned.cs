namespace GlowMix.Readings.Files;

// Tables that stand otherwise than one row a line: several pairs on a line, or written across.
internal sealed partial class CellTable
{
    /// <summary>
    /// Row and column of each wavelength where lines hold several pairs of wavelength and value that make one spectrum, read along
    /// the lines or down the blocks; null where they do not.
    /// </summary>
    private List<(int Row, int Column)>? PairsOnLines()
    {
        const int FewestPairs = 8;
        if (Width < 4 || Width % 2 != 0)
        {
            return null;
        }
        // The last lines may hold fewer.
        var full = new List<int>(NumberRows);
        for (
            int next = full[^1] + 1;
            next < rows.Count && rows[next].Count % 2 == 0 && IsOfNumbers(next);
            next++
        )
        {
            full.Add(next);
        }
        var along = (
            from row in full
            from column in Enumerable.Range(0, rows[row].Count / 2)
            select (row, 2 * column)
        ).ToList();
        var down = along.OrderBy(p => p.Item2).ToList();
        return along.Count < FewestPairs ? null
            : IsOneScale(along) ? along
            : IsOneScale(down) ? down
            : null;
    }

    private bool IsOneScale(List<(int Row, int Column)> pairs)
    {
        double first = NumberAt(pairs[0].Row, pairs[0].Column);
        double last = NumberAt(pairs[^1].Row, pairs[^1].Column);
        int way = last > first ? 1 : -1;
        for (int i = 1; i < pairs.Count; i++)
        {
            double step =
                NumberAt(pairs[i].Row, pairs[i].Column) - NumberAt(pairs[i - 1].Row, pairs[i - 1].Column);
            if (!(way * step > 0))
            {
                return false;
            }
        }
        return WavelengthHints.UnitOf(Math.Min(first, last), Math.Max(first, last)) is not null;
    }

    private CellTable Unfolded(List<(int Row, int Column)> pairs)
    {
        var turned = new CellTable(text, lines, Format)
        {
            IsUnfolded = true,
            HasFractions = HasFractions,
            HasGroups = HasGroups,
            HeaderLines = HeaderLines,
        };
        foreach (var (row, column) in pairs)
        {
            turned.rows.Add((rows[row].Line, turned.cells.Count, 2));
            for (int c = rows[row].FirstCell + column; c < rows[row].FirstCell + column + 2; c++)
            {
                turned.TakeCell(this, c);
            }
        }
        turned.FindNumberRows();
        return turned;
    }

    private CellTable Transposed()
    {
        var turned = new CellTable(text, lines, Format)
        {
            IsTransposed = true,
            HasFractions = HasFractions,
            HasGroups = HasGroups,
            HeaderLines = HeaderLines,
        };
        for (int column = 0; column < Width; column++)
        {
            turned.rows.Add((rows[NumberRows[0]].Line, turned.cells.Count, NumberRows.Count));
            foreach (int row in NumberRows)
            {
                turned.TakeCell(this, rows[row].FirstCell + column);
            }
        }
        turned.FindNumberRows();
        // What stands in front of the wavelengths: 'id; cct; 380; 385' above 'lamp; 2856; 9.8; 10.9'.
        turned.NumberRows.RemoveRange(0, turned.NumberRows.TakeWhile(turned.HasWords).Count());
        return turned;
    }

    private void TakeCell(CellTable from, int cell)
    {
        cells.Add(from.cells[cell]);
        sorts.Add(from.sorts[cell]);
        numbers.Add(from.numbers[cell]);
        units.Add(from.units[cell]);
        isGroupAlone.Add(from.isGroupAlone[cell]);
    }

    private bool HasWords(int row) =>
        sorts.Skip(rows[row].FirstCell).Take(rows[row].Count).Contains(CellSort.Text);
}
