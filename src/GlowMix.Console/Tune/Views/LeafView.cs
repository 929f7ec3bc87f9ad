using System.Text;
using GlowMix.Console.Tune.Pictures;
using Terminal.Gui.Drawing;
using Terminal.Gui.ViewBase;
using Attribute = Terminal.Gui.Drawing.Attribute;
using TextStyle = Terminal.Gui.Drawing.TextStyle;

namespace GlowMix.Console.Tune.Views;

/// <summary>Shows a painted field of letters.</summary>
/// <param name="ascii">Letters of ASCII only.</param>
internal abstract class LeafView(bool ascii) : View
{
    /// <summary>Where it stands; an empty area hides it.</summary>
    public void Place(Area area)
    {
        Visible = !area.IsEmpty;
        if (!area.IsEmpty)
        {
            (X, Y, Width, Height) = (area.X, area.Y, area.Columns, area.Rows);
        }
    }

    /// <summary>Paints what it shows.</summary>
    protected abstract void Paint(Leaf leaf);

    /// <inheritdoc/>
    protected override bool OnClearingViewport() => true;

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        if (Viewport.Width <= 0 || Viewport.Height <= 0)
        {
            return true;
        }
        var leaf = new Leaf(Viewport.Width, Viewport.Height, ascii);
        Paint(leaf);
        var run = new StringBuilder();
        for (int y = 0; y < leaf.Rows; y++)
        {
            int x = 0;
            while (x < leaf.Columns)
            {
                // Letters of one look in one go.
                int from = x;
                var look = leaf.LookAt(x, y);
                run.Clear();
                while (x < leaf.Columns && leaf.LookAt(x, y) == look)
                {
                    run.Append(leaf.LetterAt(x++, y));
                }
                SetAttribute(AttributeOf(look));
                AddStr(from, y, run.ToString());
            }
        }
        return true;
    }

    private static Attribute AttributeOf(Look look) =>
        new(ColourOf(look.Ink), ColourOf(look.Paper), StyleOf(look.Emphasis));

    private static Color ColourOf(Rgb? colour) =>
        colour is { } c ? new Color(c.Red, c.Green, c.Blue, 255) : Color.None;

    private static TextStyle StyleOf(Emphasis emphasis)
    {
        var style = TextStyle.None;
        style |= emphasis.HasFlag(Emphasis.Bold) ? TextStyle.Bold : TextStyle.None;
        style |= emphasis.HasFlag(Emphasis.Faint) ? TextStyle.Faint : TextStyle.None;
        style |= emphasis.HasFlag(Emphasis.Reverse) ? TextStyle.Reverse : TextStyle.None;
        style |= emphasis.HasFlag(Emphasis.Underline) ? TextStyle.Underline : TextStyle.None;
        return style;
    }
}
