using GlowMix.Console.Files;
using GlowMix.Documents;
using GlowMix.Predictions;
using GlowMix.Predictions.Kept;
using GlowMix.Recipes;

namespace GlowMix.Console.Commands;

/// <summary>The figures file beside a recipe: written, and held against what is predicted now.</summary>
/// <param name="recipe">The recipe's file as the user named it.</param>
/// <param name="surroundings">The world outside.</param>
/// <param name="runner">The model.</param>
internal sealed class FiguresFile(string recipe, Surroundings surroundings, IRecipeRunner runner)
{
    private const int MostMoved = 3;

    /// <summary>The figures file in the user's words.</summary>
    public string Name { get; } = KeptFiguresText.PathBeside(recipe);

    /// <summary>There is one.</summary>
    public bool IsThere => File.Exists(surroundings.FullPath(Name));

    /// <summary>Keeps a prediction, unless the file would be the same.</summary>
    /// <param name="text">The recipe's text.</param>
    /// <param name="prediction">What was predicted of it.</param>
    /// <param name="isNew">The file was not there or not the same.</param>
    /// <returns>What kept the file from being written, or null.</returns>
    public Problem? Write(FileText text, Prediction prediction, out bool isNew)
    {
        string content = KeptFiguresText.Of(KeptOf(text, prediction));
        var there = IsThere ? UserFile.Read(Name, surroundings) : null;
        isNew = there?.Text != content;
        return there?.Problem is { } unreadable ? unreadable
            : there is not null && !KeptFiguresReader.IsOurs(there.Text)
                ? new(Name, null, FiguresTexts.NotOurs)
            : isNew
                ? AtomicFile.Write(
                    Name,
                    content,
                    surroundings,
                    there is null ? IfThere.Keep : IfThere.Replace,
                    there?.Text
                )
            : null;
    }

    /// <summary>What is wrong with the file, or why it no longer stands; empty if it does.</summary>
    /// <param name="text">The recipe's text; one without errors.</param>
    public IReadOnlyList<Problem> ProblemsOf(FileText text)
    {
        var file = UserFile.Read(Name, surroundings);
        if (file.Problem is { } unreadable)
        {
            return [unreadable];
        }
        var reading = KeptFiguresReader.Read(file);
        if (reading.Kept is not { } kept)
        {
            return
            [
                .. reading.Problems.Select(p => p with { Text = $"{p.Text}; {FiguresTexts.Again(recipe)}" }),
            ];
        }
        var files = FolderMaterials.BesideFile(recipe, surroundings);
        var inputs = runner.PredictorFor(files).InputsOf(RecipeDocument.Read(text));
        var changed = KeptComparison.ChangedInputsOf(kept, inputs);
        if (changed.Length > 0)
        {
            return [new(Name, null, FiguresTexts.Stale(changed, recipe))];
        }
        // Bands are kept of draws or of bounding runs: they are compared with bands of their own kind.
        IDrawWatcher? draws = kept.DrawCount == 0 ? null : new UnwatchedDraws();
        var outcome = runner.Predict(text, files, draws, surroundings.Stop);
        if (outcome.Prediction is not { } prediction)
        {
            return outcome.Problems;
        }
        var comparison = KeptComparison.Of(kept, KeptOf(text, prediction));
        return comparison.IsFresh
            ? []
            : [new(Name, null, FiguresTexts.MovedByProgram(comparison, MostMoved, recipe))];
    }

    /// <summary>What is wrong with a figures file that the user named, or why it no longer stands; empty if it does.</summary>
    public static IReadOnlyList<Problem> ProblemsOf(
        string name,
        FileText file,
        Surroundings surroundings,
        IRecipeRunner runner
    )
    {
        // A file with a conflict in it tells no recipe; its name does.
        string recipeName =
            KeptFiguresReader.Read(file).Kept?.Recipe
            ?? Path.GetFileName(name).Replace(KeptFiguresText.Ending, ".yaml", StringComparison.Ordinal);
        string recipe = Path.Combine(Path.GetDirectoryName(name) ?? "", Path.GetFileName(recipeName));
        var figures = new FiguresFile(recipe, surroundings, runner);
        if (figures.Name != name)
        {
            return [new(name, null, FiguresTexts.OtherName(recipe, figures.Name))];
        }
        var text = UserFile.Read(recipe, surroundings);
        if (text.Problem is not null)
        {
            return [new(name, null, FiguresTexts.NoRecipe(recipe), Kind: text.Problem.Kind)];
        }
        var problems = runner.Check(text, FolderMaterials.BesideFile(recipe, surroundings));
        return problems.Any(p => p.Severity == Severity.Error) ? problems : figures.ProblemsOf(text);
    }

    private KeptFigures KeptOf(FileText text, Prediction prediction)
    {
        var predictor = runner.PredictorFor(FolderMaterials.BesideFile(recipe, surroundings));
        return KeptFigures.Of(
            prediction,
            Path.GetFileName(recipe),
            predictor.InputsOf(RecipeDocument.Read(text))
        );
    }
}
