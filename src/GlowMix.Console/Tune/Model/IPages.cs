using GlowMix.Console.Texts;
using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>Pages that take long to work out.</summary>
internal interface IPages
{
    /// <summary>Asks for the glow of a recipe beside the criteria it names, or beside all.</summary>
    /// <param name="document">The recipe.</param>
    /// <param name="answer">Told the page, where the text UI runs; not told at all if something newer is asked for first.</param>
    void AskMarkings(RecipeDocument document, Action<IReadOnlyList<PageBlock>> answer);
}
