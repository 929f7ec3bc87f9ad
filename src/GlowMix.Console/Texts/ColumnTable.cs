namespace GlowMix.Console.Texts;

/// <summary>
/// A table of right-aligned columns. One wider than the page is set as several below each other, each beginning with the
/// columns that say which row it is.
/// </summary>
/// <param name="keyBlocks">How many of the first blocks say which row it is.</param>
internal sealed class ColumnTable(int keyBlocks)
{
    private const int Gap = 2;

    private readonly List<Block> blocks = [];

    /// <summary>Adds one column, or several that stay together under one head.</summary>
    /// <param name="head">Lines over the block.</param>
    /// <param name="columns">The title of each column, empty for none, and its cells, one a row.</param>
    public void Add(IEnumerable<string> head, params IEnumerable<(string Title, string[] Cells)> columns) =>
        blocks.Add(new([.. head], [.. columns]));

    /// <summary>Prints it.</summary>
    /// <param name="sheet">Where to.</param>
    /// <param name="width">Columns of the page.</param>
    public void Print(Sheet sheet, int width)
    {
        int next = keyBlocks;
        do
        {
            if (next > keyBlocks)
            {
                sheet.Blank();
            }
            List<Block> shown = [.. blocks.Take(keyBlocks)];
            int used = shown.Sum(b => b.Width + Gap);
            while (next < blocks.Count && (shown.Count == keyBlocks || used + blocks[next].Width <= width))
            {
                used += blocks[next].Width + Gap;
                shown.Add(blocks[next++]);
            }
            Print(sheet, shown);
        } while (next < blocks.Count);
    }

    private static void Print(Sheet sheet, List<Block> shown)
    {
        int lines = shown.Max(b => b.Lines.Length);
        for (int line = lines; line > 0; line--)
        {
            sheet.Line(
                Joined(shown.Select(b => (b.Lines.Length >= line ? b.Lines[^line] : "").PadLeft(b.Width)))
            );
        }
        for (int row = 0; row < shown[0].RowCount; row++)
        {
            sheet.Line(Joined(shown.Select(b => b.Row(row).PadLeft(b.Width))));
        }
    }

    private static string Joined(IEnumerable<string> cells) => string.Join(new string(' ', Gap), cells);

    private sealed class Block
    {
        private readonly (string Title, string[] Cells)[] columns;
        private readonly int[] widths;

        public Block(string[] head, (string Title, string[] Cells)[] columns)
        {
            this.columns = columns;
            widths = [.. columns.Select(c => c.Cells.Append(c.Title).Max(t => t.Length))];
            string titles = Joined(columns.Select((c, i) => c.Title.PadLeft(widths[i])));
            Lines = string.IsNullOrWhiteSpace(titles) ? head : [.. head, titles];
            Width = Math.Max(
                widths.Sum() + (Gap * (widths.Length - 1)),
                Lines.Select(l => l.Length).DefaultIfEmpty().Max()
            );
        }

        public string[] Lines { get; }

        public int Width { get; }

        public int RowCount => columns[0].Cells.Length;

        public string Row(int row) => Joined(columns.Select((c, i) => c.Cells[row].PadLeft(widths[i])));
    }
}
