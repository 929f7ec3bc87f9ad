using GlowMix.Console.Tune.Model;
using GlowMix.Console.Tune.Pictures;

namespace GlowMix.Console.Tune.Views;

/// <summary>The piece's name, at the top.</summary>
internal sealed class HeadView(TuneModel model, bool ascii) : LeafView(ascii)
{
    /// <inheritdoc/>
    protected override void Paint(Leaf leaf) => HeadPicture.Paint(leaf, model);
}
