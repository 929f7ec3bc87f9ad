using System.Text;
using System.Xml.Linq;
using GlowMix.Console.Plots;

namespace GlowMix.Console.Reports;

/// <summary>A field with two axes, into which curves, bands and marks are drawn.</summary>
internal sealed class Chart
{
    /// <summary>Width of the whole, in the drawing's own lengths.</summary>
    public const double Width = 480;

    private const double Left = 52;
    private const double Right = 12;
    private const double Top = 22;
    private const double Bottom = 38;
    private const double TickLength = 4;
    private const double FieldWidth = Width - Left - Right;
    private const double WidthPerTick = 62;
    private const double HeightPerTick = 34;
    private const double LetterWidth = 7;
    private const double LegendFoot = 12;
    private const double LegendStroke = 24;

    private readonly Axis x;
    private readonly Axis y;
    private readonly double height;
    private readonly List<XElement> parts = [];

    /// <param name="x">Along the foot.</param>
    /// <param name="y">On the left.</param>
    /// <param name="height">Of the whole.</param>
    public Chart(Axis x, Axis y, double height = 260)
    {
        (this.x, this.y, this.height) = (x, y, height);
        Frame();
    }

    private double FieldHeight => height - Top - Bottom;

    /// <summary>Adds a curve; it ends where it leaves the field.</summary>
    /// <param name="xs">Rising.</param>
    /// <param name="ys">One a point.</param>
    /// <param name="looks">A class of the style sheet.</param>
    public Chart Curve(IReadOnlyList<double> xs, IReadOnlyList<double> ys, string looks)
    {
        var path = new StringBuilder();
        bool isDown = false;
        for (int i = 0; i < xs.Count; i++)
        {
            bool isInside = IsInside(xs[i], ys[i]);
            if (isInside)
            {
                path.Append(isDown ? 'L' : 'M').Append(Place(xs[i], ys[i]));
            }
            isDown = isInside;
        }
        parts.Add(
            Markup.Of("path", Markup.With("d", path.ToString()), Markup.With("class", $"curve {looks}"))
        );
        return this;
    }

    /// <summary>Adds what lies between two curves; what is below the field lies on its foot.</summary>
    public Chart Band(
        IReadOnlyList<double> xs,
        IReadOnlyList<double> low,
        IReadOnlyList<double> high,
        string looks
    )
    {
        var path = new StringBuilder();
        for (int i = 0; i < xs.Count; i++)
        {
            path.Append(i == 0 ? 'M' : 'L').Append(Place(xs[i], high[i]));
        }
        for (int i = xs.Count - 1; i >= 0; i--)
        {
            path.Append('L').Append(Place(xs[i], low[i]));
        }
        parts.Add(
            Markup.Of(
                "path",
                Markup.With("d", path.Append('Z').ToString()),
                Markup.With("class", $"band {looks}")
            )
        );
        return this;
    }

    /// <summary>Adds a level line across the field with its name.</summary>
    public Chart Level(double at, string name, string looks)
    {
        if (IsInside(x.From, at))
        {
            double level = AtY(at);
            parts.Add(Drawing.Line(Left, level, Width - Right, level, $"curve {looks}"));
            parts.Add(Drawing.Letters(Left + 4, level - 4, name, looks));
        }
        return this;
    }

    /// <summary>Adds a mark with its name beside it.</summary>
    /// <param name="xAt">Where.</param>
    /// <param name="yAt">Where.</param>
    /// <param name="shape">'dot', 'ring' or 'diamond'.</param>
    /// <param name="name">May be empty.</param>
    /// <param name="looks">A class of the style sheet.</param>
    /// <param name="below">The name stands below, not above.</param>
    /// <param name="left">The name stands on the left.</param>
    public Chart Mark(
        double xAt,
        double yAt,
        string shape,
        string name,
        string looks,
        bool below = false,
        bool left = false
    )
    {
        if (!IsInside(xAt, yAt))
        {
            return this;
        }
        double atX = AtX(xAt);
        double atY = AtY(yAt);
        parts.Add(
            shape == "diamond"
                ? Markup.Of(
                    "path",
                    Markup.With("d", $"M{Markup.Length(atX)} {Markup.Length(atY - 5)}l5 5l-5 5l-5-5Z"),
                    Markup.With("class", $"mark {looks}")
                )
                : Markup.Of(
                    "circle",
                    Markup.With("cx", atX),
                    Markup.With("cy", atY),
                    Markup.With("r", 4),
                    Markup.With("class", $"{(shape == "ring" ? "ring" : "mark")} {looks}")
                )
        );
        if (name.Length > 0)
        {
            bool isAtRight = left || atX + 8 + (LetterWidth * name.Length) > Width;
            parts.Add(
                Drawing.Letters(
                    atX + (isAtRight ? -8 : 8),
                    atY + (below ? 15 : -6),
                    name,
                    isAtRight ? $"end {looks}" : looks
                )
            );
        }
        return this;
    }

    /// <summary>Adds the names of the curves in a line above the field, a piece of each curve before its name.</summary>
    public Chart Legend(IReadOnlyList<(string Name, string Looks)> curves)
    {
        double right = Width - Right;
        foreach (var (name, looks) in curves.Reverse())
        {
            double start = right - (LetterWidth * name.Length);
            parts.Add(Drawing.Letters(start, LegendFoot, name, looks));
            parts.Add(
                Drawing.Line(
                    start - LegendStroke - 5,
                    LegendFoot - 4,
                    start - 5,
                    LegendFoot - 4,
                    $"curve {looks}"
                )
            );
            right = start - LegendStroke - 18;
        }
        return this;
    }

    /// <summary>The drawing.</summary>
    public XElement Drawn(string name, string inWords) =>
        Drawing.Of(Width, height, name, inWords, "", parts.ToArray<object>());

    private void Frame()
    {
        double foot = height - Bottom;
        foreach (double tick in y.Ticks((int)(FieldHeight / HeightPerTick)))
        {
            double at = AtY(tick);
            parts.Add(Drawing.Line(Left, at, Width - Right, at, "guide"));
            parts.Add(Drawing.Letters(Left - 7, at + 4, Axis.TickText(tick), "end"));
        }
        foreach (double tick in x.Ticks((int)(FieldWidth / WidthPerTick)))
        {
            double at = AtX(tick);
            parts.Add(Drawing.Line(at, foot, at, foot + TickLength, "axis"));
            parts.Add(Drawing.Letters(at, foot + 17, Axis.TickText(tick), "middle"));
        }
        parts.Add(Drawing.Line(Left, foot, Width - Right, foot, "axis"));
        parts.Add(Drawing.Letters(Width - Right, height - 6, x.Label, "end unit"));
        parts.Add(Drawing.Letters(2, 12, y.Label, "unit"));
    }

    private bool IsInside(double xAt, double yAt) =>
        x.Position(xAt) is >= -1e-9 and <= 1 + 1e-9 && y.Position(yAt) is >= -1e-9 and <= 1 + 1e-9;

    private double AtX(double value) => Left + (Math.Clamp(x.Position(value), 0, 1) * FieldWidth);

    private double AtY(double value) => Top + ((1 - Math.Clamp(y.Position(value), 0, 1)) * FieldHeight);

    private string Place(double xAt, double yAt) => $"{Markup.Length(AtX(xAt))} {Markup.Length(AtY(yAt))}";
}
