using GlowMix.Afterglow;
using GlowMix.Choosing;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Predictions;

namespace GlowMix.Console.Commands;

/// <summary>The model, as the commands see it.</summary>
internal interface IRecipeRunner
{
    /// <summary>Predicts a recipe.</summary>
    /// <param name="recipe">The file's text.</param>
    /// <param name="files">The user's files beside it.</param>
    /// <param name="draws">Who is told how the draws get on; null for the quick way, without draws.</param>
    /// <param name="stop">Ends the run.</param>
    RecipeOutcome Predict(
        FileText recipe,
        FolderMaterials files,
        IDrawWatcher? draws,
        CancellationToken stop
    );

    /// <summary>What makes a recipe's figures doubtful.</summary>
    /// <param name="recipe">The file's text.</param>
    /// <param name="files">The user's files beside it.</param>
    /// <param name="done">Told how many runs of how many are done, from any thread.</param>
    /// <param name="stop">Ends the study.</param>
    CauseOutcome Causes(
        FileText recipe,
        FolderMaterials files,
        Action<int, int> done,
        CancellationToken stop
    );

    /// <summary>Errors and warnings of a recipe and the files it names, without predicting it.</summary>
    IReadOnlyList<Problem> Check(FileText recipe, FolderMaterials files);

    /// <summary>The ladder of traps behind a pigment's sheet; null if the sheet's sample cannot be put together.</summary>
    LadderFitResult? LadderOf(Pigment pigment, FolderMaterials files);

    /// <summary>Files of the user's have changed: what was read of them is read again when it is asked for.</summary>
    void Forget() { }

    /// <summary>Who predicts recipes of a folder, for commands that ask more than once.</summary>
    Predictor PredictorFor(FolderMaterials files);
}
