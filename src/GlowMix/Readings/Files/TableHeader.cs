using System.Globalization;
using System.Text.RegularExpressions;

namespace GlowMix.Readings.Files;

/// <summary>The names of a table's columns, from the lines above its numbers.</summary>
internal static partial class TableHeader
{
    private const int MostLinesUp = 60;

    /// <summary>One name a column; empty where there is none.</summary>
    public static string[] NamesOf(CellTable table)
    {
        if (table.IsTransposed)
        {
            return TransposedNames(table);
        }
        var lines = table.HeaderLines;
        string[]? nearest = null;
        for (int up = 1; up <= Math.Min(MostLinesUp, lines.Count); up++)
        {
            int at = lines.Count - up;
            if (CellsOf(lines[at], table) is not { } cells)
            {
                continue;
            }
            if (AreUnits(cells) && at > 0 && CellsOf(lines[at - 1], table) is { } above)
            {
                cells = [.. above.Zip(cells, (name, unit) => $"{name} {unit}".Trim())];
            }
            if (Array.Exists(cells, IsScale))
            {
                return cells;
            }
            nearest ??= cells;
        }
        return ListedNames(table) ?? nearest ?? [.. Enumerable.Repeat("", table.Width)];
    }

    // '# 1 wavelength (nm)', 'column 2: counts': one name a line.
    private static string[]? ListedNames(CellTable table)
    {
        string[] names = [.. Enumerable.Repeat("", table.Width)];
        foreach (string line in table.HeaderLines.TakeLast(MostLinesUp))
        {
            if (
                ListedName().Match(line) is { Success: true } match
                && int.TryParse(match.Groups["number"].Value, CultureInfo.InvariantCulture, out int number)
                && number >= 1
                && number <= names.Length
            )
            {
                names[number - 1] = match.Groups["name"].Value.Trim();
            }
        }
        return Array.TrueForAll(names, n => n.Length > 0) && Array.Exists(names, IsScale) ? names : null;
    }

    [GeneratedRegex(
        @"^[\s#%/;!*>]*(?:col\.?|columns?|spalte|colonne|columna|kolom)?\s*(?<number>\d{1,2})\s*[:=.)-]?\s+(?<name>\p{L}.*)$",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex ListedName();

    /// <summary>The cells of a header line that has one for each column; numbers only beside the word of a scale. Else null.</summary>
    private static string[]? CellsOf(string line, CellTable table)
    {
        string stripped = line.Trim().TrimStart('#', ';', '%', '/', '!', '*', '\'', '>').Trim();
        foreach (string[] cells in Splits(line, stripped, table))
        {
            if (
                cells.Length == table.Width
                && (!Array.Exists(cells, IsNumber) || AreNumbered(cells))
                && Array.Exists(cells, c => c.Length > 0)
            )
            {
                return cells;
            }
        }
        return null;
    }

    private static IEnumerable<string[]> Splits(string line, string stripped, CellTable table)
    {
        if (table.Format.Delimiter != ' ')
        {
            // The mark of a remark is part of no name.
            yield return Split(stripped, table.Format.Delimiter);
            yield return Split(line, table.Format.Delimiter);
            yield break;
        }
        // Names may hold blanks where blanks separate: wide gaps first, then brackets kept with what stands before them.
        yield return WideGaps(stripped);
        yield return Bracketed(stripped);
        foreach (char delimiter in "\t;,|")
        {
            yield return Split(stripped, delimiter);
        }
    }

    private static string[] Split(string line, char delimiter)
    {
        var cells = new List<(int Start, int Length)>();
        CellSplitter.Split(line, (0, line.Length), new TableFormat(delimiter, '.'), cells);
        return [.. cells.ConvertAll(c => line.Substring(c.Start, c.Length))];
    }

    private static string[] WideGaps(string line) =>
        line.Replace("\t", "  ", StringComparison.Ordinal)
            .Split("  ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static string[] Bracketed(string line)
    {
        var cells = new List<string>();
        foreach (string word in Split(line, ' '))
        {
            bool isOpen = cells.Count > 0 && (Opens(cells[^1]) || word[0] is '[' or '(' or '/');
            if (isOpen)
            {
                cells[^1] += " " + word;
            }
            else
            {
                cells.Add(word);
            }
        }
        return [.. cells];
    }

    private static bool Opens(string cell) =>
        cell.Count(c => c is '[' or '(') > cell.Count(c => c is ']' or ')') || cell.EndsWith('/');

    private static bool IsScale(string cell) =>
        HeaderWords.RoleOf(cell) is ColumnRole.Wavelength or ColumnRole.OtherScale or ColumnRole.Time;

    // 'Wavelength; 1; 2; mean': the repeats have numbers for names.
    private static bool AreNumbered(string[] cells) =>
        Array.Exists(cells, c => !IsNumber(c) && HeaderWords.RoleOf(c) == ColumnRole.Wavelength)
            && (IsScale(cells[0]) || cells.Count(c => !IsNumber(c)) > 1)
        || (
            IsScale(cells[0]) && cells.Where(IsNumber).Select((c, i) => c == $"{i + 1}").All(isNext => isNext)
        );

    private static bool IsNumber(string cell) =>
        NumberCell.TryRead(cell, '.', out _)
        || NumberCell.TryRead(cell, ',', out _)
        || ClockCell.TryRead(cell, out _)
        || ClockCell.IsDate(cell);

    // '[nm]', '(counts)', 'nm', 'W/m²/nm': a second line below the names.
    private static bool AreUnits(string[] cells) =>
        Array.TrueForAll(
            cells,
            c =>
                c.Length == 0
                || c[0] is '[' or '('
                || c
                    is "nm"
                        or "µm"
                        or "um"
                        or "counts"
                        or "s"
                        or "min"
                        or "h"
                        or "lx"
                        or "-"
                        or "a.u."
                        or "%"
                || (c.Contains('/') && c.Length <= 16 && LightUnits.Of(c) is not null)
        );

    // The words in front name the columns across; but the one before the wavelengths may name what stands below it.
    private static string[] TransposedNames(CellTable table)
    {
        var names = new string[table.Width];
        for (int column = 0; column < names.Length; column++)
        {
            string[] words =
            [
                .. Enumerable
                    .Range(0, table.RowCount)
                    .TakeWhile(row => row < table.NumberRows[0])
                    .Where(row => table.SortOf(row, column) == CellSort.Text)
                    .Select(row => table.TextAt(row, column)),
            ];
            bool isScale = column == 0 && IsOrdered(table, column);
            names[column] = isScale ? Array.Find(words, IsScale) ?? "" : words.FirstOrDefault("");
        }
        return names;
    }

    private static bool IsOrdered(CellTable table, int column) =>
        NumberSequence.Of([.. table.NumberRows.Select(row => table.NumberAt(row, column))]).IsOrdered;
}
