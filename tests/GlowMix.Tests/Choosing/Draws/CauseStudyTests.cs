using GlowMix.Choosing;
using GlowMix.Choosing.Draws;
using GlowMix.Tests.Predictions;

namespace GlowMix.Tests.Choosing.Draws;

public sealed class CauseStudyTests
{
    private static readonly Forecaster Forecaster = new(TestRecipe.Predictor);

    [Fact]
    public void Clear_piece_owes_its_tint_to_the_package_and_the_answer_to_no_number_of_cores()
    {
        var recipe = new TestRecipe { Layers = TestRecipe.Clear(3) };
        var one = Study(recipe, cores: 1);
        var two = Study(recipe, cores: 2);
        var cct = one.Figures.Single(f => f.Figure.Name == "lit.cct_k").Causes;
        Assert.StartsWith("package_return:", cct[0].Cause.Key, StringComparison.Ordinal);
        Assert.InRange(cct[0].Indices.TotalOrder, 0.5, 1.2);
        Assert.DoesNotContain(
            one.Figures,
            f => f.Figure.Name.StartsWith("afterglow.", StringComparison.Ordinal)
        );
        foreach (var (a, b) in one.Figures.Zip(two.Figures))
        {
            Assert.Equal(a.Causes, b.Causes);
        }
    }

    [Fact]
    public void Heaviest_comes_first_and_each_has_its_reading()
    {
        var study = Study(new TestRecipe(), cores: null, rows: 16);
        Assert.Contains(study.Figures, f => f.Figure.Name == "afterglow.luminance_mcd_m2[10]");
        foreach (var figure in study.Figures)
        {
            Assert.Equal(figure.Causes.OrderByDescending(c => c.Indices.TotalOrder), figure.Causes);
            Assert.All(figure.Causes, c => Assert.NotEmpty(c.Cause.Reading));
            Assert.Equal(figure.Causes.Length, figure.Causes.Select(c => c.Cause.Key).Distinct().Count());
        }
    }

    private static CauseStudy Study(TestRecipe recipe, int? cores, int rows = 32) =>
        Forecaster
            .Causes(recipe.Document, rows: rows, cores: cores, stop: TestContext.Current.CancellationToken)
            .Study!;
}
