namespace GlowMix.Readings.Files;

/// <summary>
/// Finds delimiter and decimal mark: of all pairs the one under which the most cells of the most lines are numbers. Looks at
/// a few hundred lines from all over the text.
/// </summary>
internal static class FormatFinder
{
    private const int MostLines = 200;

    private const int WrittenAcross = 20;

    // A number with set-apart thousands is believed a little less than one with a decimal mark.
    private const double GroupedWeight = 0.9;

    // The earlier wins where all fit equally well.
    private static readonly (char Delimiter, char DecimalMark)[] Candidates =
    [
        ('\t', '.'),
        ('\t', ','),
        (';', '.'),
        (';', ','),
        ('|', '.'),
        ('|', ','),
        (',', '.'),
        (' ', '.'),
        (' ', ','),
        (',', ','),
    ];

    /// <summary>Finds the format.</summary>
    /// <param name="text">The text.</param>
    /// <param name="lines">Its lines.</param>
    /// <param name="options">What the user says.</param>
    /// <returns>Null where no pair makes a line of two numbers.</returns>
    public static TableFormat? Find(string text, List<(int Start, int Length)> lines, ReadingOptions options)
    {
        List<(int Start, int Length)> sample = Sample(lines);
        TableFormat? best = null;
        double most = 0;
        var scores = new Dictionary<(char, char), double>();
        foreach (var (delimiter, decimalMark) in Candidates)
        {
            if (
                (options.Delimiter is { } d && d != delimiter)
                || (options.DecimalMark is { } m && m != decimalMark)
                || (delimiter != ' ' && !text.Contains(delimiter))
            )
            {
                continue;
            }
            TableFormat format = new(delimiter, decimalMark);
            double score = Score(text, sample, format);
            scores[(delimiter, decimalMark)] = score;
            if (score > most + 1e-9)
            {
                (best, most) = (format, score);
            }
        }
        bool commasInTwoRoles = options.Delimiter is ',' && options.DecimalMark is ',';
        if (commasInTwoRoles || best is { Delimiter: ',', DecimalMark: '.' } && options.DecimalMark is null)
        {
            return SplitDecimals.Of(text, sample, commasInTwoRoles) ?? best;
        }
        if (best is null || options.DecimalMark is not null)
        {
            return best;
        }
        char other = best.DecimalMark == ',' ? '.' : ',';
        return
            scores.TryGetValue((best.Delimiter, other), out double otherScore)
            && otherScore > most * (GroupedWeight - 0.01)
            && GroupsThousands(text, sample, best)
            ? new(best.Delimiter, other)
            : best;
    }

    private static List<(int Start, int Length)> Sample(List<(int Start, int Length)> lines)
    {
        var sample = new List<(int, int)>(MostLines);
        double step = Math.Max(1, lines.Count / (double)MostLines);
        for (double i = 0; i < lines.Count; i += step)
        {
            if (lines[(int)i].Length > 0)
            {
                sample.Add(lines[(int)i]);
            }
        }
        return sample;
    }

    // Lines of the commonest width, each by the square of its share of numbers.
    private static double Score(string text, List<(int Start, int Length)> sample, TableFormat format)
    {
        var ofWidth = new Dictionary<int, double>();
        var cells = new List<(int Start, int Length)>();
        foreach (var line in sample)
        {
            cells.Clear();
            int count = CellSplitter.Split(text, line, format, cells);
            double numbers = 0;
            foreach (var (start, length) in cells)
            {
                var cell = text.AsSpan(start, length);
                if (NumberCell.TryRead(cell, format.DecimalMark, out NumberCell number))
                {
                    numbers += number.IsGrouped ? GroupedWeight : 1;
                }
                else if (
                    ClockCell.TryRead(cell, out _) || DurationCell.TryRead(cell, format.DecimalMark, out _)
                )
                {
                    numbers++;
                }
                else if (length == 0 || ClockCell.IsDate(cell))
                {
                    count--;
                }
            }
            if (numbers >= 2 * GroupedWeight && numbers * 2 >= count)
            {
                double share = numbers / count;
                // A row across counts for all its columns; else it would be outvoted by a header's two numbers.
                double weight = cells.Count >= WrittenAcross ? numbers : 1;
                ofWidth[cells.Count] = ofWidth.GetValueOrDefault(cells.Count) + (weight * share * share);
            }
        }
        double most = 0;
        foreach (double score in ofWidth.Values)
        {
            most = Math.Max(most, score);
        }
        return most;
    }

    /// <summary>
    /// Every decimal mark stands before exactly three digits, and in the same column whole numbers below 1000 stand without
    /// one: '987' beside '1,002' is a count.
    /// </summary>
    private static bool GroupsThousands(string text, List<(int Start, int Length)> sample, TableFormat format)
    {
        char other = format.DecimalMark == ',' ? '.' : ',';
        var cells = new List<(int Start, int Length)>();
        var grouped = new HashSet<int>();
        var below1000 = new HashSet<int>();
        foreach (var line in sample)
        {
            cells.Clear();
            CellSplitter.Split(text, line, format, cells);
            // Words: a header's line, whose numbers are in no column.
            if (cells.Exists(c => IsWord(text.AsSpan(c.Start, c.Length), format.DecimalMark)))
            {
                continue;
            }
            for (int column = 0; column < cells.Count; column++)
            {
                var cell = text.AsSpan(cells[column].Start, cells[column].Length);
                if (!NumberCell.TryRead(cell, other, out NumberCell number))
                {
                    if (NumberCell.TryRead(cell, format.DecimalMark, out _))
                    {
                        return false;
                    }
                }
                else if (number.IsGrouped)
                {
                    grouped.Add(column);
                }
                else if (!number.HasMark && Math.Abs(number.Value) < 1000)
                {
                    below1000.Add(column);
                }
            }
        }
        grouped.IntersectWith(below1000);
        return grouped.Count > 0;
    }

    private static bool IsWord(ReadOnlySpan<char> cell, char decimalMark) =>
        !cell.IsEmpty
        && !NumberCell.TryRead(cell, decimalMark, out _)
        && !ClockCell.TryRead(cell, out _)
        && !ClockCell.IsDate(cell);
}
