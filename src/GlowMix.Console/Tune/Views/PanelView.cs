using GlowMix.Console.Tune.Model;
using GlowMix.Console.Tune.Pictures;
using Terminal.Gui.Input;

namespace GlowMix.Console.Tune.Views;

/// <summary>The open panel. On the map a click looks at a point and a second click takes it; elsewhere the wheel scrolls.</summary>
internal sealed class PanelView(TuneModel model, bool ascii, bool hasColour) : LeafView(ascii)
{
    private MapPlaces places;

    /// <inheritdoc/>
    protected override void Paint(Leaf leaf) =>
        places = PanelPicture.Paint(leaf, model, new Palette(model.Shown, hasColour));

    /// <inheritdoc/>
    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (model.IsBusy || mouse.Position is not { } at)
        {
            return false;
        }
        if (mouse.Flags.HasFlag(MouseFlags.WheeledDown) || mouse.Flags.HasFlag(MouseFlags.WheeledUp))
        {
            model.Scroll = Math.Max(0, model.Scroll + (mouse.Flags.HasFlag(MouseFlags.WheeledDown) ? 3 : -3));
        }
        else if (mouse.Flags.HasFlag(MouseFlags.LeftButtonClicked) && places.At(at.X, at.Y) is { } point)
        {
            if (model.Map.Cursor == point)
            {
                model.Map.Take();
            }
            model.Map.MoveTo(point.Across, point.Up);
        }
        else
        {
            return false;
        }
        (SuperView as TuneScreen)?.Refresh();
        return true;
    }
}
