using GlowMix.Choosing.Compare;
using GlowMix.Materials;
using GlowMix.Materials.Calibrations;
using GlowMix.Predictions;
using GlowMix.Recipes;
using GlowMix.Tests.Materials;
using GlowMix.Tests.Materials.Calibrations;
using GlowMix.Tests.Predictions;

namespace GlowMix.Tests.Choosing.Compare;

/// <summary>Recipes that say the same may still lean on files that do not: of two folders, or of two times.</summary>
public class MaterialDifferencesTests
{
    private static readonly string Recipe =
        "calibration: a.calibration.yaml\n" + new TestRecipe { Led = "warm-white-3000" }.Text;

    [Fact]
    public void Other_readings_of_one_calibration_are_a_difference_and_a_change()
    {
        string was = CalibrationText.Of(Calibration(absorptionFactor: 1.4));
        string now = CalibrationText.Of(Calibration(absorptionFactor: 9));
        var comparison = Compare(was, now);
        var difference = Assert.Single(comparison.Differences);
        Assert.Equal("calibration", difference.KeyPath);
        Assert.EndsWith("with other numbers", difference.After, StringComparison.Ordinal);
        Assert.NotEqual(0, comparison.Figures.Single(f => f.Figure.Name == "lit.duv").Change.Likely);
    }

    [Fact]
    public void The_same_readings_read_twice_are_none()
    {
        string text = CalibrationText.Of(Calibration(absorptionFactor: 1.4));
        var comparison = Compare(text, text);
        Assert.Empty(comparison.Differences);
        Assert.Empty(Exchanges.Between(PieceOf(text), PieceOf(text)));
    }

    [Fact]
    public void Other_readings_are_exchanged_with_their_material()
    {
        var from = PieceOf(CalibrationText.Of(Calibration(absorptionFactor: 1.4)));
        var to = PieceOf(CalibrationText.Of(Calibration(absorptionFactor: 9)));
        var exchange = Assert.Single(Exchanges.Between(from, to));
        Assert.Equal("resin", exchange.Key);
        Assert.Same(to.Resin, exchange.Apply(from).Resin);
    }

    private static Calibration Calibration(double absorptionFactor)
    {
        var whole = SampleCalibration.Whole;
        return new()
        {
            Name = whole.Name,
            Date = whole.Date,
            RecipeName = whole.RecipeName,
            Readings = whole.Readings,
            Resin = whole.Resin! with { AbsorptionFactor = new(absorptionFactor, 0.1) },
        };
    }

    private static GlowMix.Pieces.Piece PieceOf(string calibration)
    {
        var (recipe, predictor) = SideOf(calibration);
        return predictor.Check(recipe).Piece!;
    }

    private static Comparison Compare(string before, string after) =>
        Comparer.Bounded(SideOf(before), SideOf(after)).Comparison!;

    private static (RecipeDocument, Predictor) SideOf(string calibration)
    {
        var files = new InMemoryMaterials(("a.calibration.yaml", calibration));
        return (RecipeDocument.Read(Recipe, "a.yaml"), new Predictor(new Shelf(files), files));
    }
}
