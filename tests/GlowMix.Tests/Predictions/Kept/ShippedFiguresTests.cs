using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Predictions;
using GlowMix.Predictions.Kept;
using GlowMix.Recipes;
using GlowMix.Tests.Recipes;

namespace GlowMix.Tests.Predictions.Kept;

/// <summary>
/// The figures beside the shipped recipes. Where a change of the program is meant to move them: one more in
/// <see cref="ModelVersion"/>, then 'glowmix predict recipes/*.yaml --write', and a look at the difference.
/// </summary>
public class ShippedFiguresTests
{
    public static TheoryData<string> Recipes =>
        [
            .. Directory
                .GetFiles(Sample.Folder(), "*.yaml")
                .Where(f => !f.EndsWith(KeptFiguresText.Ending, StringComparison.Ordinal))
                .Select(f => Path.GetFileName(f)!)
                .Order(StringComparer.Ordinal),
        ];

    // The bands take hundreds of draws, and are held by 'glowmix check recipes/*.yaml' in continuous integration.
    [Theory, MemberData(nameof(Recipes))]
    public void The_figures_beside_a_recipe_are_those_of_today(string name)
    {
        string path = Path.Combine(Sample.Folder(), name);
        var reading = KeptFiguresReader.Read(DocumentFile.Read(KeptFiguresText.PathBeside(path)));
        Assert.Empty(reading.Problems);
        var files = new FolderFiles(Sample.Folder());
        var predictor = new Predictor(new Shelf(files), files);
        var document = RecipeDocument.Read(DocumentFile.Read(path));
        var inputs = predictor.InputsOf(document);
        var now = KeptFigures.Of(predictor.Predict(document).Prediction!, name, inputs);
        Assert.Empty(KeptComparison.ChangedInputsOf(reading.Kept!, inputs));
        var comparison = KeptComparison.Of(reading.Kept! with { Bands = [] }, now with { Bands = [] });
        Assert.Empty(comparison.Moved);
        Assert.True(reading.Kept!.DrawCount > 0, "the bands are those of the quick way");
        Assert.Equal(ModelVersion.Number, reading.Kept.ModelVersion);
    }
}
