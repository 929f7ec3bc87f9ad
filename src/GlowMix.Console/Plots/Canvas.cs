namespace GlowMix.Console.Plots;

/// <summary>A field of dots that prints as rows of letters. Dot 0, 0 is at the top left.</summary>
internal abstract class Canvas(int columns, int rows)
{
    /// <summary>Letters in a row.</summary>
    public int Columns => columns;

    /// <summary>Rows.</summary>
    public int Rows => rows;

    /// <summary>Dots from left to right.</summary>
    public abstract int DotsWide { get; }

    /// <summary>Dots from top to bottom.</summary>
    public abstract int DotsHigh { get; }

    /// <summary>Sets a dot; one outside the field is left out.</summary>
    public abstract void Set(int x, int y, LineMark mark);

    /// <summary>A row as letters.</summary>
    public abstract string Row(int row);

    /// <summary>A line between two dots, ends included, with the gaps of its mark.</summary>
    /// <param name="from">First dot; may lie outside.</param>
    /// <param name="to">Last dot; may lie outside.</param>
    /// <param name="mark">How the line is told from others.</param>
    /// <param name="start">Dots already drawn of the same curve, so that its gaps go on evenly.</param>
    /// <returns>Dots drawn up to the end, not counting it.</returns>
    public int Line((double X, double Y) from, (double X, double Y) to, LineMark mark, int start = 0)
    {
        // What lies far outside is cut first: a steep log axis may ask for millions of dots.
        if (!Clip(ref from, ref to))
        {
            return start;
        }
        int steps = (int)Math.Ceiling(Math.Max(Math.Abs(to.X - from.X), Math.Abs(to.Y - from.Y)));
        for (int i = 0; i <= steps; i++)
        {
            double t = steps == 0 ? 0 : (double)i / steps;
            if (mark.IsDrawn(start + i))
            {
                Set(
                    (int)Math.Floor(from.X + (t * (to.X - from.X)) + 0.5),
                    (int)Math.Floor(from.Y + (t * (to.Y - from.Y)) + 0.5),
                    mark
                );
            }
        }
        return start + steps;
    }

    // Liang & Barsky (1984), with a margin of one dot.
    private bool Clip(ref (double X, double Y) from, ref (double X, double Y) to)
    {
        double enter = 0;
        double leave = 1;
        double dx = to.X - from.X;
        double dy = to.Y - from.Y;
        if (
            !Edge(-dx, from.X + 1, ref enter, ref leave)
            || !Edge(dx, DotsWide - from.X, ref enter, ref leave)
            || !Edge(-dy, from.Y + 1, ref enter, ref leave)
            || !Edge(dy, DotsHigh - from.Y, ref enter, ref leave)
        )
        {
            return false;
        }
        var start = from;
        from = (start.X + (enter * dx), start.Y + (enter * dy));
        to = (start.X + (leave * dx), start.Y + (leave * dy));
        return true;
    }

    private static bool Edge(double step, double room, ref double enter, ref double leave)
    {
        if (step == 0)
        {
            return room >= 0;
        }
        double t = room / step;
        if (step < 0)
        {
            enter = Math.Max(enter, t);
        }
        else
        {
            leave = Math.Min(leave, t);
        }
        return enter <= leave;
    }
}
