using System.Text;

namespace GlowMix.Console.Texts;

/// <summary>Sets a page as Markdown with tables.</summary>
internal static class PageMarkdown
{
    /// <summary>Its text, with a line end.</summary>
    /// <param name="page">The page.</param>
    /// <param name="ascii">Letters of ASCII only.</param>
    public static string Of(IEnumerable<PageBlock> page, bool ascii)
    {
        var text = new StringBuilder();
        foreach (var block in page.Where(b => b is not PageBlock.Space))
        {
            if (text.Length > 0)
            {
                text.Append('\n');
            }
            Write(text, block, ascii);
        }
        return text.ToString();
    }

    private static void Write(StringBuilder text, PageBlock block, bool ascii)
    {
        switch (block)
        {
            case PageBlock.Title title:
                Line("# ", title.Text);
                break;
            case PageBlock.Heading heading:
                Line("## ", heading.Text);
                break;
            case PageBlock.Paragraph paragraph:
                Line("", paragraph.Text);
                break;
            case PageBlock.Points points:
                foreach (string point in points.Items)
                {
                    Line("- ", point);
                }
                break;
            case PageBlock.Rows rows:
                foreach (var (label, row) in rows.Items)
                {
                    Line(label.Length > 0 ? $"- **{Escaped(label, ascii)}:** " : "  - ", row);
                }
                break;
            case PageBlock.Blanks blanks:
                Row(blanks.Items.Select(b => b.Unit.Length > 0 ? $"{b.Label}, {b.Unit}" : b.Label));
                Row(blanks.Items.Select(_ => "---"), isRule: true);
                Row(blanks.Items.Select(_ => (string?)null));
                break;
            case PageBlock.Table table:
                Row(table.Columns.Select(c => c.Head));
                Row(table.Columns.Select(c => c.IsRight ? "---:" : "---"), isRule: true);
                foreach (var row in table.Cells)
                {
                    Row(row);
                }
                break;
        }

        void Line(string lead, string line) => text.Append(lead).Append(Escaped(line, ascii)).Append('\n');

        void Row(IEnumerable<string?> cells, bool isRule = false)
        {
            text.Append('|');
            foreach (string? cell in cells)
            {
                text.Append(' ').Append(isRule ? cell : Escaped(cell ?? "", ascii)).Append(" |");
            }
            text.Append('\n');
        }
    }

    // Titles and names are the user's own and may hold anything.
    private static string Escaped(string text, bool ascii)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (char c in Letters.OneLine(text, ascii))
        {
            if (c is '\\' or '`' or '*' or '_' or '[' or ']' or '<' or '>' or '|' or '#' or '~')
            {
                escaped.Append('\\');
            }
            escaped.Append(c);
        }
        return escaped.ToString();
    }
}
