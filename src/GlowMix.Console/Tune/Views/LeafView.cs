using System.Drawing;
using System.Text;
using GlowMix.Console.Tune.Pictures;
using Terminal.Gui.ViewBase;
using Attribute = Terminal.Gui.Drawing.Attribute;
using TextStyle = Terminal.Gui.Drawing.TextStyle;

namespace GlowMix.Console.Tune.Views;

/// <summary>Shows a painted field of letters.</summary>
/// <param name="ascii">Letters of ASCII only.</param>
internal abstract class LeafView(bool ascii) : View
{
    private Area place;

    /// <summary>Where it stands; an empty area hides it.</summary>
    /// <remarks>Setting what is set already would count as a new layout, for which the toolkit clears the whole screen.</remarks>
    public void Place(Area area)
    {
        if (area == place && Visible != area.IsEmpty)
        {
            return;
        }
        place = area;
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
        var corner = ViewportToScreen(Point.Empty);
        for (int y = 0; y < leaf.Rows; y++)
        {
            Row(leaf, y, corner);
        }
        return true;
    }

    // Only what changed, letters of one look in one go: a turn then sends some hundred letters, not the whole screen.
    private void Row(Leaf leaf, int y, Point corner)
    {
        var run = new StringBuilder();
        int x = 0;
        while (x < leaf.Columns)
        {
            int from = x;
            var look = leaf.LookAt(x, y);
            var attribute = AttributeOf(look);
            while (x < leaf.Columns && leaf.LookAt(x, y) == look && !IsThere(leaf, x, y, corner, attribute))
            {
                run.Append(leaf.LetterAt(x++, y));
            }
            if (run.Length > 0)
            {
                SetAttribute(attribute);
                AddStr(from, y, run.ToString());
                run.Clear();
            }
            else
            {
                x++;
            }
        }
    }

    // By what the toolkit holds for the terminal: it may have cleared it. Half of a wide letter is never taken as it is.
    private bool IsThere(Leaf leaf, int x, int y, Point corner, Attribute attribute)
    {
        var cells = App?.Driver?.Contents;
        int row = corner.Y + y;
        int column = corner.X + x;
        if (
            cells is null
            || row < 0
            || column < 0
            || row >= cells.GetLength(0)
            || column >= cells.GetLength(1)
        )
        {
            return false;
        }
        var cell = cells[row, column];
        string letter = leaf.LetterAt(x, y);
        bool isHalf = letter.Length == 0 || (x + 1 < leaf.Columns && leaf.LetterAt(x + 1, y).Length == 0);
        return !isHalf && cell.Grapheme == letter && cell.Attribute == attribute;
    }

    private static Attribute AttributeOf(Look look) =>
        new(ColourOf(look.Ink), ColourOf(look.Paper), StyleOf(look.Emphasis));

    private static Terminal.Gui.Drawing.Color ColourOf(Rgb? colour) =>
        colour is { } c
            ? new Terminal.Gui.Drawing.Color(c.Red, c.Green, c.Blue, 255)
            : Terminal.Gui.Drawing.Color.None;

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
