using GlowMix.Console.Plots;

namespace GlowMix.Console.Tune.Pictures;

/// <summary>Curves over two axes, each in its own look; where two cross the later one stands in front.</summary>
internal static class CurvePicture
{
    private const int GutterColumns = 6;
    private const int ColumnsPerTick = 8;
    private const int RowsPerTick = 3;
    private const char Blank = '\u2800';

    /// <summary>Paints them.</summary>
    public static void Paint(
        Leaf leaf,
        Area area,
        Axis x,
        Axis y,
        IReadOnlyList<DrawnCurve> curves,
        Look axes
    )
    {
        var field = new Area(area.X + GutterColumns, area.Y, area.Columns - GutterColumns - 1, area.Rows - 2);
        if (field.Columns < 8 || field.Rows < 3)
        {
            return;
        }
        YValues(leaf, area, field, y, axes);
        foreach (var drawn in curves)
        {
            Paint(leaf, field, x, y, drawn);
        }
        YLabel(leaf, field, y.Label, axes);
        XValues(leaf, field, x, axes);
        Legend(leaf, area.From(area.Rows - 1), curves, axes);
    }

    private static void Paint(Leaf leaf, Area field, Axis x, Axis y, DrawnCurve drawn)
    {
        Canvas canvas = leaf.Ascii
            ? new AsciiCanvas(field.Columns, field.Rows)
            : new BrailleCanvas(field.Columns, field.Rows);
        var curve = drawn.Curve;
        int dots = 0;
        for (int i = 1; i < curve.Xs.Count; i++)
        {
            dots = canvas.Line(Dot(i - 1), Dot(i), curve.Mark, dots);
        }
        for (int row = 0; row < field.Rows; row++)
        {
            string letters = canvas.Row(row);
            for (int i = 0; i < letters.Length; i++)
            {
                if (letters[i] != ' ')
                {
                    leaf.Set(
                        field.X + i,
                        field.Y + row,
                        Joined(leaf.LetterAt(field.X + i, field.Y + row), letters[i]),
                        drawn.Look
                    );
                }
            }
        }

        (double X, double Y) Dot(int i) =>
            (
                x.Position(curve.Xs[i]) * (canvas.DotsWide - 1),
                (1 - y.Position(curve.Ys[i])) * (canvas.DotsHigh - 1)
            );
    }

    // Two braille patterns in one cell are all their dots.
    private static char Joined(string there, char over) =>
        there.Length == 1 && there[0] is >= Blank and <= '\u28FF' && over is >= Blank and <= '\u28FF'
            ? (char)(there[0] | over)
            : over;

    private static void YValues(Leaf leaf, Area area, Area field, Axis y, Look look)
    {
        for (int row = 0; row < field.Rows; row++)
        {
            leaf.Set(field.X - 1, field.Y + row, leaf.Ascii ? '|' : '▏', look);
        }
        foreach (double tick in y.Ticks(Math.Max(2, field.Rows / RowsPerTick)))
        {
            int row = (int)Math.Round((1 - y.Position(tick)) * (field.Rows - 1));
            if (row >= 0 && row < field.Rows)
            {
                leaf.PutRight(area.X + GutterColumns - 1, field.Y + row, Axis.TickText(tick), look);
            }
        }
    }

    // At the left, or where a curve begins there at the right.
    private static void YLabel(Leaf leaf, Area field, string label, Look look)
    {
        int left = field.X + 1;
        bool isFree = Enumerable
            .Range(left, Math.Min(label.Length + 1, field.Columns - 1))
            .All(x => leaf.LetterAt(x, field.Y) == " ");
        int at = isFree ? left : Math.Max(left, field.X + field.Columns - label.Length);
        leaf.Put(at, field.Y, label, look, field.X + field.Columns - at);
    }

    private static void XValues(Leaf leaf, Area field, Axis x, Look look)
    {
        int line = field.Y + field.Rows;
        int free = field.X;
        int end = field.X + field.Columns - x.Label.Length - 1;
        foreach (double tick in x.Ticks(Math.Max(2, field.Columns / ColumnsPerTick)))
        {
            string text = Axis.TickText(tick);
            int at = field.X + (int)Math.Round(x.Position(tick) * (field.Columns - 1));
            if (at >= free && at + text.Length + 1 < end)
            {
                leaf.Set(at, line, leaf.Ascii ? '\'' : '╵', look);
                free = leaf.Put(at + 1, line, text, look) + 1;
            }
        }
        leaf.PutRight(field.X + field.Columns, line, x.Label, look);
    }

    private static void Legend(Leaf leaf, Area line, IReadOnlyList<DrawnCurve> curves, Look look)
    {
        const int SampleColumns = 3;
        int x = line.X + GutterColumns;
        int end = line.X + line.Columns;
        foreach (var drawn in curves)
        {
            string name = drawn.Curve.Name;
            if (name.Length == 0 || x + SampleColumns + 1 + name.Length > end)
            {
                continue;
            }
            Canvas canvas = leaf.Ascii
                ? new AsciiCanvas(SampleColumns, 1)
                : new BrailleCanvas(SampleColumns, 1);
            canvas.Line(
                (0, canvas.DotsHigh / 2),
                (canvas.DotsWide - 1, canvas.DotsHigh / 2),
                drawn.Curve.Mark
            );
            x = leaf.Put(x, line.Y, canvas.Row(0), drawn.Look);
            x = leaf.Put(x + 1, line.Y, name, look) + 2;
        }
    }
}
