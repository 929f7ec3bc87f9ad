using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Recipes;

namespace GlowMix.Console.Commands;

/// <summary>The model that travels with the program.</summary>
internal sealed class RecipeRunner : IRecipeRunner
{
    /// <inheritdoc/>
    public RecipeOutcome Predict(FileText recipe, IMaterialSource files, CancellationToken stop)
    {
        var problems = Check(recipe, files);
        return Problems.CodeOf(problems) != ExitCode.Done
            ? new(null, problems)
            : new(null, [.. problems, new Problem(recipe.Name, null, "recipes cannot be predicted yet")]);
    }

    /// <inheritdoc/>
    public IReadOnlyList<Problem> Check(FileText recipe, IMaterialSource files) =>
        RecipeDocument.Read(recipe).Problems;
}
