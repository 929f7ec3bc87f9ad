namespace GlowMix.Readings.Files;

// Which rows are those of the table: of numbers, and not of names or settings.
internal sealed partial class CellTable
{
    private void FindNumberRows()
    {
        var ofWidth = new Dictionary<int, int>();
        for (int row = 0; row < rows.Count; row++)
        {
            if (IsOfNumbers(row))
            {
                ofWidth[rows[row].Count] = ofWidth.GetValueOrDefault(rows[row].Count) + 1;
            }
        }
        int most = 0;
        foreach (var (width, count) in ofWidth)
        {
            if (count > most || (count == most && width > Width))
            {
                (Width, most) = (width, count);
            }
        }
        for (int row = 0; row < rows.Count; row++)
        {
            if (rows[row].Count == Width && IsOfNumbers(row))
            {
                NumberRows.Add(row);
            }
        }
        DropSettings();
    }

    // 'averages; 10' above the line of names looks like a row, and is none.
    private void DropSettings()
    {
        if (IsTransposed || NumberRows.Count == 0)
        {
            return;
        }
        int names = Enumerable
            .Range(0, rows.Count)
            .TakeWhile(r => r <= NumberRows[^1])
            .FirstOrDefault(IsLineOfNames, -1);
        int above = NumberRows.FindIndex(r => r > names);
        if (above > 0 && 2 * above < NumberRows.Count)
        {
            NumberRows.RemoveRange(0, above);
        }
    }

    private bool IsLineOfNames(int row)
    {
        var (line, first, count) = rows[row];
        return count > 0
            && lines[line].Length < LongestLine
            && !sorts
                .Skip(first)
                .Take(count)
                .Any(s => s is CellSort.Number or CellSort.Clock or CellSort.Duration)
            && HeaderWords.RoleOf(LineText(row).ToString()) is ColumnRole.Wavelength or ColumnRole.Time;
    }

    private bool IsOfNumbers(int row)
    {
        var (line, first, count) = rows[row];
        if (among is var (from, to) && (line + 1 < from || line + 1 > to))
        {
            return false;
        }
        int found = 0;
        int filled = 0;
        for (int i = first; i < first + count; i++)
        {
            found += sorts[i] is CellSort.Number or CellSort.Clock or CellSort.Duration ? 1 : 0;
            filled += sorts[i] is CellSort.Empty or CellSort.Date ? 0 : 1;
        }
        return found >= 2 && found * 2 >= filled && !(found < filled && IsOfNames(row));
    }

    // 'Wavelength; 1; 2; 3; mean': the numbers are names; but 'Wavelength; 380; 385' is a table written across.
    private bool IsOfNames(int row)
    {
        var (_, first, count) = rows[row];
        // Names begin with that of the scale; a number with a flag behind it is a row.
        if (sorts[first] != CellSort.Text)
        {
            return false;
        }
        int known = 0;
        bool isScale = false;
        bool isCount = true;
        double next = 1;
        for (int i = first; i < first + count; i++)
        {
            if (sorts[i] == CellSort.Number)
            {
                isCount &= numbers[i] == next++;
            }
            else if (sorts[i] == CellSort.Text)
            {
                ColumnRole role = HeaderWords.RoleOf(text.Substring(cells[i].Start, cells[i].Length));
                known += role == ColumnRole.Unknown ? 0 : 1;
                isScale |= role is ColumnRole.Wavelength or ColumnRole.Time;
            }
        }
        return isScale && (known > 1 || isCount);
    }
}
