using GlowMix.Console.Tune.Model;
using GlowMix.Console.Tune.Pictures;
using Terminal.Gui.Input;

namespace GlowMix.Console.Tune.Views;

/// <summary>The numbers to turn. A click holds one, the wheel turns it.</summary>
internal sealed class NumbersView(TuneModel model, bool ascii) : LeafView(ascii)
{
    private int[] knobAt = [];

    /// <inheritdoc/>
    protected override void Paint(Leaf leaf) => knobAt = NumbersPicture.Paint(leaf, model);

    /// <inheritdoc/>
    protected override bool OnMouseEvent(Mouse mouse)
    {
        int row = mouse.Position?.Y ?? -1;
        if (row < 0 || row >= knobAt.Length || knobAt[row] < 0 || model.IsBusy)
        {
            return false;
        }
        if (mouse.Flags.HasFlag(MouseFlags.LeftButtonClicked))
        {
            model.Hold(knobAt[row]);
        }
        else if (mouse.Flags.HasFlag(MouseFlags.WheeledUp) || mouse.Flags.HasFlag(MouseFlags.WheeledDown))
        {
            model.Hold(knobAt[row]);
            model.Turn(StepSize.Usual, mouse.Flags.HasFlag(MouseFlags.WheeledUp));
        }
        else
        {
            return false;
        }
        (SuperView as TuneScreen)?.Refresh();
        return true;
    }
}
