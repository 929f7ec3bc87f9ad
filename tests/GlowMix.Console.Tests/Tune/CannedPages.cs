using GlowMix.Console.Texts;
using GlowMix.Console.Tune.Model;
using GlowMix.Recipes;

namespace GlowMix.Console.Tests.Tune;

/// <summary>Never gets ready: what is seen until then is what counts.</summary>
internal sealed class CannedPages : IPages
{
    public void AskMarkings(RecipeDocument document, Action<IReadOnlyList<PageBlock>> answer) { }
}
