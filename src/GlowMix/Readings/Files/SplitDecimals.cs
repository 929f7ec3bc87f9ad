namespace GlowMix.Readings.Files;

/// <summary>
/// Tables that use the comma both between columns and in numbers: '450,5,0,82' for 450.5 and 0.82. They show by digits alone,
/// by decimals that begin with a zero, or by a header of half as many names.
/// </summary>
internal static class SplitDecimals
{
    /// <summary>The format of such a table; null where the commas only separate.</summary>
    /// <param name="text">The text.</param>
    /// <param name="sample">Lines of it.</param>
    /// <param name="isTold">The user says that it is one.</param>
    public static TableFormat? Of(string text, List<(int Start, int Length)> sample, bool isTold)
    {
        var rows = Rows(text, sample, out int names);
        if (rows.Count == 0)
        {
            return null;
        }
        int width = rows[0].Length;
        if (width < 3 || (!isTold && rows.Count < 3))
        {
            return null;
        }
        if (width % 2 == 0)
        {
            int[] whole = [.. Enumerable.Range(0, width / 2).Select(j => 2 * j)];
            bool shows =
                names == width / 2
                || whole.Any(j => HasLeadingZero(rows, j + 1))
                || (!Rises(rows, r => Number(r[0])) && Rises(rows, r => Number(r[0] + "." + r[1])));
            return whole.All(j => IsFraction(rows, j + 1)) && (isTold || shows) ? Joined(whole) : null;
        }
        // One of the numbers is whole on every line: with three columns, the wavelength or the value.
        if (width == 3 && (isTold || names == 2 || HasLeadingZero(rows, 1) || HasLeadingZero(rows, 2)))
        {
            bool wavelengthIsWhole = HasLeadingZero(rows, 2) || Rises(rows, r => Number(r[0]));
            return Joined([wavelengthIsWhole ? 1 : 0]);
        }
        return null;
    }

    private static TableFormat Joined(IEnumerable<int> joinedAt)
    {
        // Positions after the joins left of them are made from right to left, so these are those before any.
        return new(',', ',', [.. joinedAt]);
    }

    private static List<string[]> Rows(string text, List<(int Start, int Length)> sample, out int names)
    {
        var rows = new List<string[]>();
        names = 0;
        foreach (var (start, length) in sample)
        {
            string[] cells = text.Substring(start, length)
                .TrimEnd(',', ' ')
                .Split(',', StringSplitOptions.TrimEntries);
            if (cells.Length >= 2 && Array.TrueForAll(cells, IsDigits))
            {
                rows.Add(cells);
            }
            else if (rows.Count == 0 && cells.Length >= 2)
            {
                names = cells.Length;
            }
            else if (
                cells.Length >= 2
                && cells.Any(c => NumberCell.TryRead(c, '.', out NumberCell n) && n.HasMark)
            )
            {
                // A point in a number: then commas do not mark decimals.
                return [];
            }
        }
        // A header's line of two numbers is another width than the rows'.
        var widest = rows.GroupBy(r => r.Length).MaxBy(g => g.Count());
        return widest is null ? [] : [.. widest];
    }

    private static bool IsDigits(string cell)
    {
        int start = cell.Length > 0 && cell[0] is '-' or '+' ? 1 : 0;
        int exponent = cell.IndexOfAny(['e', 'E']);
        var digits = exponent > start ? cell.AsSpan(start, exponent - start) : cell.AsSpan(start);
        foreach (char c in digits)
        {
            if (!char.IsAsciiDigit(c))
            {
                return false;
            }
        }
        return digits.Length > 0
            && (
                exponent < 0
                || int.TryParse(
                    cell.AsSpan(exponent + 1),
                    System.Globalization.CultureInfo.InvariantCulture,
                    out _
                )
            );
    }

    private static bool IsFraction(List<string[]> rows, int column) =>
        rows.TrueForAll(r => char.IsAsciiDigit(r[column][0]));

    private static bool HasLeadingZero(List<string[]> rows, int column) =>
        rows.Exists(r => r[column].Length > 1 && r[column][0] == '0');

    private static double Number(string cell) =>
        NumberCell.TryRead(cell, '.', out NumberCell number) ? number.Value : 0;

    private static bool Rises(List<string[]> rows, Func<string[], double> number)
    {
        int sign = Math.Sign(number(rows[1]) - number(rows[0]));
        for (int i = 1; i < rows.Count; i++)
        {
            if (sign == 0 || Math.Sign(number(rows[i]) - number(rows[i - 1])) != sign)
            {
                return false;
            }
        }
        return true;
    }
}
