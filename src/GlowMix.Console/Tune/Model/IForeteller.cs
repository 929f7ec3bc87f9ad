using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>The model of the piece, as the text UI needs it: quick likely figures first, bands when they are ready.</summary>
internal interface IForeteller
{
    /// <summary>The likely figures. Some milliseconds.</summary>
    Outlook Likely(RecipeDocument document);

    /// <summary>The same with the bands of the few runs that bound the doubt. Some ten milliseconds.</summary>
    Outlook Rough(RecipeDocument document);

    /// <summary>The same with bands that hold every tolerance and doubt. May take some seconds.</summary>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    Outlook Banded(RecipeDocument document, CancellationToken stop);
}
