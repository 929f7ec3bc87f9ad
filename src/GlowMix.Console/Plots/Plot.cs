namespace GlowMix.Console.Plots;

/// <summary>Curves over two axes, as rows of letters. Later curves are drawn over earlier ones.</summary>
internal sealed record Plot(string Title, Axis X, Axis Y, IReadOnlyList<Curve> Curves)
{
    private const int GutterColumns = 8;
    private const int ColumnsPerTick = 9;
    private const int RowsPerTick = 2;

    /// <summary>The rows: title, curves with the y axis on the left, x axis, legend.</summary>
    /// <param name="columns">Width of the whole.</param>
    /// <param name="rows">Height of the field of curves.</param>
    /// <param name="ascii">Letters of ASCII instead of braille.</param>
    public IReadOnlyList<string> Draw(int columns, int rows, bool ascii)
    {
        int wide = Math.Max(10, columns - GutterColumns - 1);
        Canvas canvas = ascii ? new AsciiCanvas(wide, rows) : new BrailleCanvas(wide, rows);
        foreach (var curve in Curves)
        {
            DrawCurve(canvas, curve);
        }
        var lines = new List<string>(rows + 5) { Title, Y.Label };
        var labels = YLabels(rows);
        for (int row = 0; row < rows; row++)
        {
            string label = labels[row] ?? "";
            string edge = ascii ? (label.Length > 0 ? "+" : "|") : (label.Length > 0 ? "┤" : "│");
            lines.Add(label.PadLeft(GutterColumns) + edge + canvas.Row(row).TrimEnd());
        }
        lines.AddRange(XAxis(wide, ascii));
        lines.AddRange(Legend(columns, ascii));
        return lines;
    }

    private void DrawCurve(Canvas canvas, Curve curve)
    {
        int drawn = 0;
        for (int i = 1; i < curve.Xs.Count; i++)
        {
            drawn = canvas.Line(Dot(canvas, curve, i - 1), Dot(canvas, curve, i), curve.Mark, drawn);
        }
    }

    private (double X, double Y) Dot(Canvas canvas, Curve curve, int point) =>
        (
            X.Position(curve.Xs[point]) * (canvas.DotsWide - 1),
            (1 - Y.Position(curve.Ys[point])) * (canvas.DotsHigh - 1)
        );

    private string?[] YLabels(int rows)
    {
        var labels = new string?[rows];
        foreach (double tick in Y.Ticks(Math.Max(2, rows / RowsPerTick)))
        {
            int row = (int)Math.Round((1 - Y.Position(tick)) * (rows - 1));
            if (row >= 0 && row < rows)
            {
                labels[row] = Axis.TickText(tick);
            }
        }
        return labels;
    }

    private IEnumerable<string> XAxis(int wide, bool ascii)
    {
        var line = new string(ascii ? '-' : '─', wide).ToCharArray();
        var labels = new string(' ', GutterColumns + 1 + wide).ToCharArray();
        string unit = " " + X.Label;
        int free = 0;
        foreach (double tick in X.Ticks(Math.Max(2, wide / ColumnsPerTick)))
        {
            int column = (int)Math.Round(X.Position(tick) * (wide - 1));
            if (column < 0 || column >= wide)
            {
                continue;
            }
            string text = Axis.TickText(tick);
            int start = Math.Clamp(
                GutterColumns + 1 + column - (text.Length / 2),
                0,
                labels.Length - text.Length
            );
            line[column] = ascii ? '+' : '┬';
            if (start >= free)
            {
                text.CopyTo(labels.AsSpan(start));
                free = start + text.Length + 1;
            }
        }
        yield return new string(' ', GutterColumns) + (ascii ? "+" : "└") + new string(line);
        yield return new string(labels).TrimEnd();
        yield return unit.PadLeft(GutterColumns + 1 + wide);
    }

    private IEnumerable<string> Legend(int columns, bool ascii)
    {
        string line = "";
        foreach (var curve in Curves)
        {
            if (curve.Name.Length == 0)
            {
                continue;
            }
            string entry = $"  {Sample(curve.Mark, ascii)} {curve.Name}";
            if (line.Length > 0 && line.Length + entry.Length > columns)
            {
                yield return line;
                line = "";
            }
            line += entry;
        }
        if (line.Length > 0)
        {
            yield return line;
        }
    }

    private static string Sample(LineMark mark, bool ascii)
    {
        const int Columns = 5;
        Canvas canvas = ascii ? new AsciiCanvas(Columns, 1) : new BrailleCanvas(Columns, 1);
        double middle = canvas.DotsHigh / 2;
        canvas.Line((0, middle), (canvas.DotsWide - 1, middle), mark);
        return canvas.Row(0);
    }
}
