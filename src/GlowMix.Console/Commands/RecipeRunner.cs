using GlowMix.Documents;

namespace GlowMix.Console.Commands;

/// <summary>The model that travels with the program.</summary>
internal sealed class RecipeRunner : IRecipeRunner
{
    public RecipeOutcome Predict(FileText recipe, string folder, CancellationToken stop) =>
        new(null, [new Problem(recipe.Name, null, "recipes cannot be predicted yet")]);

    public IReadOnlyList<Problem> CheckRecipe(FileText recipe, string folder) =>
        Document.Read(recipe).Problems;

    public IReadOnlyList<Problem> CheckMaterial(FileText material, string folder) =>
        Document.Read(material).Problems;
}
