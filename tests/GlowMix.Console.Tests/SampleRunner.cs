using GlowMix.Afterglow;
using GlowMix.Choosing;
using GlowMix.Console.Commands;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Predictions;

namespace GlowMix.Console.Tests;

/// <summary>Stands in for the model: the same prediction for every recipe.</summary>
internal sealed class SampleRunner(Prediction prediction) : IRecipeRunner
{
    public Exception? Fault { get; init; }

    public RecipeOutcome Predict(
        FileText recipe,
        FolderMaterials files,
        IDrawWatcher? draws,
        CancellationToken stop
    ) =>
        Fault is not null ? throw Fault
        : Document.Read(recipe) is { Root: null } broken ? new(null, broken.Problems)
        : new(prediction with { Recipe = recipe.Name }, []);

    public CauseOutcome Causes(
        FileText recipe,
        FolderMaterials files,
        Action<int, int> done,
        CancellationToken stop
    ) => throw new NotSupportedException();

    public IReadOnlyList<Problem> Check(FileText recipe, FolderMaterials files) =>
        Document.Read(recipe).Problems;

    public LadderFitResult? LadderOf(Pigment pigment, FolderMaterials files) => null;

    public Predictor PredictorFor(FolderMaterials files) => new(new Shelf(files), files);
}
