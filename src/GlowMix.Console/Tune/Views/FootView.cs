using GlowMix.Console.Tune.Model;
using GlowMix.Console.Tune.Pictures;

namespace GlowMix.Console.Tune.Views;

/// <summary>The sentence at the foot.</summary>
internal sealed class FootView(TuneModel model, bool ascii) : LeafView(ascii)
{
    /// <inheritdoc/>
    protected override void Paint(Leaf leaf) => FootPicture.Paint(leaf, model);
}
