namespace GlowMix.Console.Plots;

/// <summary>Curves over two axes, as rows of letters. Later curves are drawn over earlier ones.</summary>
internal sealed record Plot(string Title, Axis X, Axis Y, IReadOnlyList<Curve> Curves)
{
    private const int GutterColumns = 8;
    private const int ColumnsPerTick = 9;
    private const int RowsPerTick = 2;
    private const int ColumnsPerGuideDot = 4;

    // Rows that suit a width, so that a wide plot is not all breadth.
    private static int RowsFor(int columns) => Math.Clamp(columns / 6, 10, 20);

    /// <summary>As <see cref="Draw(int, int, bool)"/>, with the rows that suit the width.</summary>
    public IReadOnlyList<string> Draw(int columns, bool ascii) => Draw(columns, RowsFor(columns), ascii);

    /// <summary>The rows: title, unit and curves with the y values on the left, x values, legend.</summary>
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
        var labels = YLabels(canvas);
        for (int row = 0; row < rows; row++)
        {
            string label = labels[row] ?? "";
            string field = canvas.Row(row);
            if (label.Length > 0 && !ascii)
            {
                field = WithGuide(field);
            }
            lines.Add(label.PadLeft(GutterColumns) + (ascii ? '|' : '▏') + field.TrimEnd());
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
        (X.Position(curve.Xs[point]) * (canvas.DotsWide - 1), Height(canvas, curve.Ys[point]));

    private double Height(Canvas canvas, double y) => (1 - Y.Position(y)) * (canvas.DotsHigh - 1);

    // A value stands in the row that holds its dots.
    private string?[] YLabels(Canvas canvas)
    {
        var labels = new string?[canvas.Rows];
        int dotsPerRow = canvas.DotsHigh / canvas.Rows;
        foreach (double tick in Y.Ticks(Math.Max(2, canvas.Rows / RowsPerTick)))
        {
            int row = (int)Math.Floor(Height(canvas, tick) + 0.5) / dotsPerRow;
            if (row >= 0 && row < labels.Length)
            {
                labels[row] = Axis.TickText(tick);
            }
        }
        return labels;
    }

    // Single dots lead the eye from a value across the field.
    private static string WithGuide(string field)
    {
        var letters = field.ToCharArray();
        for (int i = ColumnsPerGuideDot - 1; i < letters.Length; i += ColumnsPerGuideDot)
        {
            if (letters[i] == ' ')
            {
                letters[i] = '·';
            }
        }
        return new string(letters);
    }

    // Each value stands right of a mark under its place; at the right edge left of it.
    private IEnumerable<string> XAxis(int wide, bool ascii)
    {
        char mark = ascii ? '\'' : '╵';
        var line = new string(' ', GutterColumns + 1 + wide).ToCharArray();
        int free = 0;
        foreach (double tick in X.Ticks(Math.Max(2, wide / ColumnsPerTick)))
        {
            int start = GutterColumns + 1 + (int)Math.Round(X.Position(tick) * (wide - 1));
            string text = Axis.TickText(tick);
            if (start < free || start >= line.Length)
            {
                continue;
            }
            line[start] = mark;
            int first = start + text.Length < line.Length ? start + 1 : start - text.Length;
            if (first >= free)
            {
                text.CopyTo(line.AsSpan(first));
            }
            free = Math.Max(start, first + text.Length) + 1;
        }
        string values = new string(line).TrimEnd();
        int room = line.Length - values.Length;
        if (room > X.Label.Length)
        {
            yield return values + X.Label.PadLeft(room);
            yield break;
        }
        yield return values;
        yield return X.Label.PadLeft(line.Length);
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
