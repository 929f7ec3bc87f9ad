using GlowMix.Console.Tune.Model;
using GlowMix.Console.Tune.Pictures;

namespace GlowMix.Console.Tune.Views;

/// <summary>The piece lit, or dark.</summary>
internal sealed class SideView(TuneModel model, bool ascii, bool hasColour, bool dark) : LeafView(ascii)
{
    /// <inheritdoc/>
    protected override void Paint(Leaf leaf) =>
        SidePicture.Paint(leaf, model, new Palette(model.Shown, hasColour), dark);
}
