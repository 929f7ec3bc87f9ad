using GlowMix.Documents;

namespace GlowMix.Console.Commands;

/// <summary>The model, as the commands see it.</summary>
internal interface IRecipeRunner
{
    /// <summary>Predicts a recipe.</summary>
    /// <param name="recipe">The file's text.</param>
    /// <param name="folder">Full path of the recipe's folder, where its own materials are looked for.</param>
    /// <param name="stop">Ends the run.</param>
    RecipeOutcome Predict(FileText recipe, string folder, CancellationToken stop);

    /// <summary>Errors and warnings of a recipe and the files it names, without predicting it.</summary>
    IReadOnlyList<Problem> CheckRecipe(FileText recipe, string folder);

    /// <summary>Errors and warnings of a material's file.</summary>
    IReadOnlyList<Problem> CheckMaterial(FileText material, string folder);
}
