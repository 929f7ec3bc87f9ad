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
    private Leaf? shown;
    private Area place;

    /// <summary>Where it stands; an empty area hides it.</summary>
    public void Place(Area area)
    {
        if (area != place)
        {
            Forget();
            place = area;
        }
        Visible = !area.IsEmpty;
        if (!area.IsEmpty)
        {
            (X, Y, Width, Height) = (area.X, area.Y, area.Columns, area.Rows);
        }
    }

    /// <summary>All of it is drawn anew the next time, not only what changed.</summary>
    public void Forget() => shown = null;

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
        for (int y = 0; y < leaf.Rows; y++)
        {
            Row(leaf, y);
        }
        shown = leaf;
        return true;
    }

    // Only what changed, letters of one look in one go: a turn then sends some hundred letters, not the whole screen.
    private void Row(Leaf leaf, int y)
    {
        var run = new StringBuilder();
        int x = 0;
        while (x < leaf.Columns)
        {
            int from = x;
            var look = leaf.LookAt(x, y);
            while (x < leaf.Columns && leaf.LookAt(x, y) == look && !IsShown(leaf, x, y))
            {
                run.Append(leaf.LetterAt(x++, y));
            }
            if (run.Length > 0)
            {
                SetAttribute(AttributeOf(look));
                AddStr(from, y, run.ToString());
                run.Clear();
            }
            else
            {
                x++;
            }
        }
    }

    private bool IsShown(Leaf leaf, int x, int y) =>
        shown is not null
        && shown.LookAt(x, y) == leaf.LookAt(x, y)
        && shown.LetterAt(x, y) == leaf.LetterAt(x, y);

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
