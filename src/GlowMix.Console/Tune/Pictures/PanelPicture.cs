using GlowMix.Console.Texts;
using GlowMix.Console.Tune.Model;

namespace GlowMix.Console.Tune.Pictures;

/// <summary>The open panel.</summary>
internal static class PanelPicture
{
    private const int MostTextColumns = 100;
    private const int BothColumns = 150;

    /// <summary>Paints it.</summary>
    /// <returns>Where the points of a map stand.</returns>
    public static MapPlaces Paint(Leaf leaf, TuneModel model, Palette palette)
    {
        leaf.Fill(leaf.Whole, Look.Plain);
        for (int y = 0; y < leaf.Rows; y++)
        {
            leaf.Set(0, y, leaf.Ascii ? '|' : '▏', Look.Plain.Faint);
        }
        var area = leaf.Whole.Narrower(2);
        switch (model.Panel)
        {
            case Panel.Keys:
                Text(leaf, area, model, KeyLines(area.Columns));
                break;
            case Panel.Pins:
                Table(leaf, area, PinTable.Of(model));
                break;
            case Panel.Map:
                return WithPins(leaf, area, model, palette);
            default:
                Text(leaf, area, model, PageLines(model.Pages.Page, area.Columns, leaf.Ascii));
                break;
        }
        return default;
    }

    // Where the map leaves half of the width, the pinned states stand beside it.
    private static MapPlaces WithPins(Leaf leaf, Area area, TuneModel model, Palette palette)
    {
        if (area.Columns < BothColumns)
        {
            return MapPicture.Paint(leaf, area, model, palette);
        }
        int half = area.Columns / 2;
        var right = area with { X = area.X + half + 2, Columns = area.Columns - half - 2 };
        leaf.Put(
            right.X,
            right.Y,
            "Start, pins and now (p pins this state)",
            Look.Plain.Faint,
            right.Columns
        );
        Table(leaf, right.From(2), PinTable.Of(model));
        return MapPicture.Paint(leaf, area with { Columns = half }, model, palette);
    }

    private static void Text(Leaf leaf, Area area, TuneModel model, IReadOnlyList<string> lines)
    {
        // Where not all has room, the last row says so.
        int rows = lines.Count > area.Rows ? area.Rows - 1 : area.Rows;
        int most = Math.Max(0, lines.Count - rows);
        model.Scroll = Math.Min(model.Scroll, most);
        for (int i = 0; i < rows && model.Scroll + i < lines.Count; i++)
        {
            leaf.Put(area.X, area.Y + i, lines[model.Scroll + i], Look.Plain, area.Columns);
        }
        if (most > 0)
        {
            string way = model.Scroll < most ? "more: down, PageDown" : "the end; back: up, PageUp";
            leaf.PutRight(area.X + area.Columns - 1, area.Y + rows, $" {way} ", Look.Plain.Reverse);
        }
    }

    private static List<string> KeyLines(int columns)
    {
        const int WrittenColumns = 24;
        var lines = new List<string>();
        foreach (var line in KeyTable.All)
        {
            string written = line.Written;
            foreach (string part in Wrapped.Lines(line.Meaning, Math.Max(10, columns - WrittenColumns)))
            {
                lines.Add(written.PadRight(WrittenColumns) + part);
                written = "";
            }
        }
        return lines;
    }

    private static string[] PageLines(IReadOnlyList<PageBlock> page, int columns, bool ascii)
    {
        using var text = new StringWriter();
        new PageText(new Sheet(text, new TextStyle(Math.Min(columns, MostTextColumns), false, ascii))).Print(
            page
        );
        return text.ToString().TrimEnd('\n').Split('\n');
    }

    private static void Table(Leaf leaf, Area area, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        int labels = rows.Max(r => Leaf.WidthOf(r[0])) + 2;
        int last = rows[0].Count - 1;
        int[] widths = [.. Enumerable.Range(0, last + 1).Select(i => rows.Max(r => Leaf.WidthOf(r[i])) + 2)];
        // The latest states stand in view where not all have room.
        int first = last;
        while (first > 1 && labels + widths[(first - 1)..].Sum() <= area.Columns)
        {
            first--;
        }
        for (int y = 0; y < Math.Min(rows.Count, area.Rows); y++)
        {
            var look = y == 0 ? Look.Plain.Bold : Look.Plain;
            string label = y == 0 && first > 1 ? $"{first - 1} left out" : rows[y][0];
            leaf.Put(area.X, area.Y + y, label, Look.Plain.Faint, labels - 1);
            int right = area.X + labels;
            for (int i = first; i <= last; i++)
            {
                right += widths[i];
                leaf.PutRight(right, area.Y + y, rows[y][i], look);
            }
        }
    }
}
