namespace GlowMix.Readings.Files;

/// <summary>Splits lines into cells.</summary>
internal static class CellSplitter
{
    /// <summary>Appends the cells of a line, trimmed; empty ones at its end are left out.</summary>
    /// <param name="text">The text.</param>
    /// <param name="line">Start and length of the line.</param>
    /// <param name="format">How columns are separated.</param>
    /// <param name="cells">Start and length of each cell in the text are put here.</param>
    /// <returns>How many.</returns>
    public static int Split(
        string text,
        (int Start, int Length) line,
        TableFormat format,
        List<(int Start, int Length)> cells
    )
    {
        int before = cells.Count;
        if (format.Delimiter == ' ')
        {
            SplitAtBlanks(text, line, cells);
        }
        else
        {
            SplitAtMarks(text, line, format.Delimiter, cells);
            while (cells.Count > before && cells[^1].Length == 0)
            {
                cells.RemoveAt(cells.Count - 1);
            }
        }
        // From the right, so that the columns left of it keep their numbers.
        for (int j = format.JoinedAt.Count - 1; j >= 0; j--)
        {
            int at = before + format.JoinedAt[j];
            if (at + 1 < cells.Count)
            {
                var (end, length) = cells[at + 1];
                cells[at] = (cells[at].Start, end + length - cells[at].Start);
                cells.RemoveAt(at + 1);
            }
        }
        return cells.Count - before;
    }

    private static void SplitAtBlanks(
        string text,
        (int Start, int Length) line,
        List<(int Start, int Length)> cells
    )
    {
        int end = line.Start + line.Length;
        int before = cells.Count;
        int i = line.Start;
        while (i < end)
        {
            while (i < end && (NumberCell.IsBlank(text[i]) || text[i] == '='))
            {
                i++;
            }
            int start = i;
            while (i < end && !NumberCell.IsBlank(text[i]) && text[i] != '=')
            {
                i++;
            }
            if (i > start)
            {
                // '450: 0.82'.
                bool hasColon = i - start > 1 && text[i - 1] == ':' && char.IsAsciiDigit(text[start]);
                AddOrJoin(text, start, hasColon ? i - 1 : i, before, cells);
            }
        }
    }

    // '450 nm': a unit belongs to the number one blank before it.
    private static void AddOrJoin(
        string text,
        int start,
        int end,
        int firstCell,
        List<(int Start, int Length)> cells
    )
    {
        if (
            cells.Count > firstCell
            && cells[^1] is var (number, length)
            && number + length + 1 == start
            && char.IsAsciiDigit(text[start - 2])
            && CellUnits.IsKnown(text.AsSpan(start, end - start))
        )
        {
            cells[^1] = (number, end - number);
        }
        else
        {
            AddTrimmed(text, start, end, cells);
        }
    }

    private static void SplitAtMarks(
        string text,
        (int Start, int Length) line,
        char delimiter,
        List<(int Start, int Length)> cells
    )
    {
        int end = line.Start + line.Length;
        int start = line.Start;
        bool isQuoted = false;
        for (int i = line.Start; i < end; i++)
        {
            if (text[i] == '"')
            {
                isQuoted = !isQuoted;
            }
            else if (text[i] == delimiter && !isQuoted)
            {
                AddTrimmed(text, start, i, cells);
                start = i + 1;
            }
        }
        AddTrimmed(text, start, end, cells);
    }

    private static void AddTrimmed(string text, int start, int end, List<(int Start, int Length)> cells)
    {
        while (start < end && (NumberCell.IsBlank(text[start]) || text[start] == '"'))
        {
            start++;
        }
        while (end > start && (NumberCell.IsBlank(text[end - 1]) || text[end - 1] == '"'))
        {
            end--;
        }
        cells.Add((start, end - start));
    }
}
