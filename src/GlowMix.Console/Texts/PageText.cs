using System.Text;

namespace GlowMix.Console.Texts;

/// <summary>Sets a page as plain text, as it is read on a terminal and printed.</summary>
internal sealed class PageText(Sheet sheet)
{
    private const int Indent = 2;
    private const int Gap = 2;
    private const int BlankColumns = 9;

    /// <summary>Prints it.</summary>
    public void Print(IEnumerable<PageBlock> page)
    {
        foreach (var block in page)
        {
            Print(block);
        }
    }

    private void Print(PageBlock block)
    {
        switch (block)
        {
            case PageBlock.Title title:
                sheet.Heading(title.Text);
                break;
            case PageBlock.Heading heading:
                sheet.Blank();
                sheet.Heading(heading.Text);
                break;
            case PageBlock.Space:
                sheet.Blank();
                break;
            case PageBlock.Paragraph paragraph:
                sheet.Paragraph(paragraph.Text);
                break;
            case PageBlock.Rows rows:
                foreach (var (label, text) in rows.Items)
                {
                    sheet.Row(label, text);
                }
                break;
            case PageBlock.Points points:
                foreach (string point in points.Items)
                {
                    sheet.Paragraph($"- {point}", hanging: Indent);
                }
                break;
            case PageBlock.Blanks blanks:
                Print(blanks);
                break;
            case PageBlock.Table table:
                Print(table);
                break;
        }
    }

    private void Print(PageBlock.Blanks blanks)
    {
        var line = new StringBuilder();
        foreach (var (label, columns, unit) in blanks.Items)
        {
            string item = $"{label} {Underlined(columns)}{(unit.Length > 0 ? " " : "")}{unit}";
            if (line.Length > 0 && line.Length + Gap + item.Length > sheet.Style.Columns)
            {
                sheet.Line(line.ToString());
                line.Clear();
            }
            line.Append(line.Length > 0 ? new string(' ', Gap) : "").Append(item);
        }
        sheet.Line(line.ToString());
    }

    // Where a row is wider than the page its last cell, if it is a text, goes below.
    private void Print(PageBlock.Table table)
    {
        int last = table.Columns.Count - 1;
        var widths = new int[table.Columns.Count];
        int all = Indent + (Gap * last);
        for (int i = 0; i < widths.Length; i++)
        {
            widths[i] = WidthOf(table, i);
            all += widths[i];
        }
        bool fits = all <= sheet.Style.Columns;
        int inLine = fits || table.Columns[last].IsRight ? table.Columns.Count : last;
        if (table.Columns.Any(c => c.Head.Length > 0))
        {
            sheet.Line(Joined([.. table.Columns.Select(c => c.Head)]));
        }
        foreach (var row in table.Cells)
        {
            sheet.Line(Joined(row));
            if (inLine == last && row[last] is { Length: > 0 } below)
            {
                sheet.Paragraph(below, indent: 2 * Indent);
            }
        }

        string Joined(IReadOnlyList<string?> cells)
        {
            var line = new StringBuilder(new string(' ', Indent));
            for (int i = 0; i < inLine; i++)
            {
                string cell = cells[i] ?? Underlined(BlankColumns);
                line.Append(i > 0 ? new string(' ', Gap) : "")
                    .Append(table.Columns[i].IsRight ? cell.PadLeft(widths[i]) : cell.PadRight(widths[i]));
            }
            return line.ToString();
        }
    }

    private static int WidthOf(PageBlock.Table table, int column)
    {
        int width = table.Columns[column].Head.Length;
        foreach (var row in table.Cells)
        {
            width = Math.Max(width, row[column]?.Length ?? BlankColumns);
        }
        return width;
    }

    private static string Underlined(int columns) => new('_', columns);
}
