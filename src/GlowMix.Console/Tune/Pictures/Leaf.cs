using System.Globalization;
using GlowMix.Console.Texts;

namespace GlowMix.Console.Tune.Pictures;

/// <summary>A field of letters with their looks, painted without knowing which toolkit shows it.</summary>
/// <param name="columns">Cells in a row.</param>
/// <param name="rows">Rows.</param>
/// <param name="ascii">Other letters than those of ASCII become some that are.</param>
internal sealed class Leaf(int columns, int rows, bool ascii)
{
    private readonly string[] letters = NewLetters(columns * rows);
    private readonly Look[] looks = new Look[columns * rows];

    /// <summary>Cells in a row.</summary>
    public int Columns => columns;

    /// <summary>Rows.</summary>
    public int Rows => rows;

    /// <summary>Letters of ASCII only.</summary>
    public bool Ascii => ascii;

    /// <summary>All of it.</summary>
    public Area Whole => new(0, 0, columns, rows);

    /// <summary>What stands in a cell; empty behind a letter of two columns.</summary>
    public string LetterAt(int x, int y) => letters[(y * columns) + x];

    /// <summary>How it looks.</summary>
    public Look LookAt(int x, int y) => looks[(y * columns) + x];

    /// <summary>A row as text.</summary>
    public string Row(int y) => string.Concat(letters.AsSpan(y * columns, columns)).TrimEnd();

    /// <summary>Blanks with a look.</summary>
    public void Fill(Area area, Look look)
    {
        for (int y = Math.Max(0, area.Y); y < Math.Min(rows, area.Y + area.Rows); y++)
        {
            for (int x = Math.Max(0, area.X); x < Math.Min(columns, area.X + area.Columns); x++)
            {
                Set(x, y, " ", look);
            }
        }
    }

    /// <summary>One letter of one column; outside the field it is left out.</summary>
    public void Set(int x, int y, char letter, Look look) => Set(x, y, letter.ToString(), look);

    /// <summary>The look of a cell, its letter left as it is.</summary>
    public void Recolour(int x, int y, Look look)
    {
        if (x >= 0 && x < columns && y >= 0 && y < rows)
        {
            looks[(y * columns) + x] = look;
        }
    }

    /// <summary>Text from a cell to the right, cut at so many columns.</summary>
    /// <returns>The column behind it.</returns>
    public int Put(int x, int y, string text, Look look, int room = int.MaxValue)
    {
        string line = Letters.OneLine(text, ascii);
        int end = (int)Math.Min(columns, (long)x + room);
        for (int i = 0; i < line.Length; i++)
        {
            char c = line[i];
            if (
                CharUnicodeInfo.GetUnicodeCategory(c)
                is UnicodeCategory.NonSpacingMark
                    or UnicodeCategory.Format
            )
            {
                continue;
            }
            if (char.IsSurrogate(c))
            {
                // Signs beyond the first plane have no width that all terminals agree on.
                i +=
                    char.IsHighSurrogate(c) && i + 1 < line.Length && char.IsLowSurrogate(line[i + 1])
                        ? 1
                        : 0;
                c = '?';
            }
            int width = IsWide(c) ? 2 : 1;
            if (x + width > end)
            {
                break;
            }
            Set(x, y, c.ToString(), look);
            if (width == 2)
            {
                Set(x + 1, y, "", look);
            }
            x += width;
        }
        return x;
    }

    /// <summary>Text that ends before a column.</summary>
    public void PutRight(int endX, int y, string text, Look look)
    {
        string line = Letters.OneLine(text, ascii);
        Put(endX - WidthOf(line), y, line, look);
    }

    /// <summary>Columns a text takes.</summary>
    public static int WidthOf(string text)
    {
        int width = 0;
        foreach (char c in text)
        {
            width +=
                IsWide(c) ? 2
                : CharUnicodeInfo.GetUnicodeCategory(c)
                    is UnicodeCategory.NonSpacingMark
                        or UnicodeCategory.Format
                || char.IsLowSurrogate(c)
                    ? 0
                : 1;
        }
        return width;
    }

    private void Set(int x, int y, string letter, Look look)
    {
        if (x >= 0 && x < columns && y >= 0 && y < rows)
        {
            letters[(y * columns) + x] = letter;
            looks[(y * columns) + x] = look;
        }
    }

    // The blocks that Unicode's UAX #11 calls wide, as far as the first plane goes and letters are in them.
    private static bool IsWide(char c) =>
        c
            is (>= '\u1100' and <= '\u115F')
                or (>= '\u2E80' and <= '\uA4CF')
                or (>= '\uAC00' and <= '\uD7A3')
                or (>= '\uF900' and <= '\uFAFF')
                or (>= '\uFE30' and <= '\uFE6F')
                or (>= '\uFF00' and <= '\uFF60')
                or (>= '\uFFE0' and <= '\uFFE6');

    private static string[] NewLetters(int count)
    {
        var letters = new string[count];
        Array.Fill(letters, " ");
        return letters;
    }
}
