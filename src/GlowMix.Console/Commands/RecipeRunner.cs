using GlowMix.Afterglow;
using GlowMix.Choosing;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Console.Commands;

/// <summary>The model that travels with the program.</summary>
internal sealed class RecipeRunner : IRecipeRunner
{
    // Recipes of one folder share their materials, and what was worked out of them.
    private readonly Dictionary<string, Predictor> ofFolder = [];

    /// <inheritdoc/>
    public RecipeOutcome Predict(
        FileText recipe,
        FolderMaterials files,
        IDrawWatcher? draws,
        CancellationToken stop
    )
    {
        var forecaster = new Forecaster(PredictorFor(files));
        var document = RecipeDocument.Read(recipe);
        var outcome = draws is null
            ? forecaster.Bounded(document)
            : forecaster.Drawn(document, draws.Likely, draws.Done, stop: stop);
        stop.ThrowIfCancellationRequested();
        return new(outcome.Prediction, outcome.Problems);
    }

    /// <inheritdoc/>
    public CauseOutcome Causes(
        FileText recipe,
        FolderMaterials files,
        Action<int, int> done,
        CancellationToken stop
    ) => new Forecaster(PredictorFor(files)).Causes(RecipeDocument.Read(recipe), done, stop: stop);

    /// <inheritdoc/>
    public IReadOnlyList<Problem> Check(FileText recipe, FolderMaterials files) =>
        PredictorFor(files).Check(RecipeDocument.Read(recipe)).Problems;

    /// <inheritdoc/>
    public LadderFitResult? LadderOf(Pigment pigment, FolderMaterials files) =>
        PredictorFor(files).LadderOf(pigment).Fit;

    /// <inheritdoc/>
    public void Forget() => ofFolder.Clear();

    /// <inheritdoc/>
    public Predictor PredictorFor(FolderMaterials files)
    {
        if (!ofFolder.TryGetValue(files.Folder, out var predictor))
        {
            ofFolder[files.Folder] = predictor = new(new Shelf(files), files);
        }
        return predictor;
    }
}
