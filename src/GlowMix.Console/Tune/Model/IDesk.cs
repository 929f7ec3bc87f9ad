using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>Where the text UI asks for figures. Answers come later, one at a time, where the UI runs.</summary>
internal interface IDesk
{
    /// <summary>Asks for a recipe's figures; what was asked for before and is not begun is given up.</summary>
    /// <param name="document">What is on the screen.</param>
    /// <param name="also">Likely figures of these afterwards, if there is time: what to compare with.</param>
    void Ask(RecipeDocument document, params IEnumerable<RecipeDocument> also);

    /// <summary>Says which recipes the next key may lead to: their likely figures may be worked out while nothing else is to do.</summary>
    /// <param name="documents">Put together where they are worked out, not here.</param>
    void LookAhead(IEnumerable<RecipeDocument> documents);
}
