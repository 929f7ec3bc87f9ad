using GlowMix.Console.Tune.Model;
using GlowMix.Console.Tune.Pictures;

namespace GlowMix.Console.Tune.Views;

/// <summary>The open panel.</summary>
internal sealed class PanelView(TuneModel model, bool ascii) : LeafView(ascii)
{
    /// <inheritdoc/>
    protected override void Paint(Leaf leaf) => PanelPicture.Paint(leaf, model);
}
