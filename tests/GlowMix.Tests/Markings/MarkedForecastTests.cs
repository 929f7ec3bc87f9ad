using GlowMix.Choosing;
using GlowMix.Markings;
using GlowMix.Recipes;
using GlowMix.Tests.Predictions;

namespace GlowMix.Tests.Markings;

public sealed class MarkedForecastTests
{
    private const int Draws = 48;
    private const string Criteria = "criteria:\n  - jis9107-jb\n";

    [Fact]
    public void Draws_for_both_give_the_bands_and_the_guidance_of_each_by_itself()
    {
        var document = Named(new TestRecipe().Text);
        var (outcome, guidance) = MarkedForecast.Of(
            document,
            TestRecipe.Predictor,
            Draws,
            TestContext.Current.CancellationToken
        );
        var alone = new Forecaster(TestRecipe.Predictor).Drawn(
            document,
            draws: Draws,
            stop: TestContext.Current.CancellationToken
        );
        Assert.NotEmpty(alone.Prediction!.Bands);
        Assert.Equal(alone.Prediction.Bands, outcome.Prediction!.Bands);

        var guideAlone = MarkingGuide.Of(
            TestRecipe.Predictor.Check(document).Piece!,
            TestRecipe.Predictor,
            [TestRecipe.Predictor.Shelf.Criterion("jis9107-jb").Material!],
            Draws,
            TestContext.Current.CancellationToken
        );
        Assert.Equal(guideAlone.DrawCount, guidance!.DrawCount);
        Assert.Equal(guideAlone.Room, guidance.Room);
        Assert.Equal(guideAlone.Criteria[0].Limits, guidance.Criteria[0].Limits);
    }

    [Fact]
    public void A_clear_piece_is_drawn_without_any_glow()
    {
        var document = Named((new TestRecipe() with { Layers = TestRecipe.Clear(3) }).Text);
        var (outcome, guidance) = MarkedForecast.Of(
            document,
            TestRecipe.Predictor,
            Draws,
            TestContext.Current.CancellationToken
        );
        Assert.Equal(Draws, outcome.Prediction!.DrawCount);
        Assert.Null(guidance!.Room);
        Assert.Single(guidance.Criteria);
    }

    [Fact]
    public void A_recipe_with_errors_gives_its_problems_alone()
    {
        var (outcome, guidance) = MarkedForecast.Of(
            RecipeDocument.Read("format: 1\n", "empty.yaml"),
            TestRecipe.Predictor,
            Draws,
            TestContext.Current.CancellationToken
        );
        Assert.NotEmpty(outcome.Problems);
        Assert.Null(outcome.Prediction);
        Assert.Null(guidance);
    }

    private static RecipeDocument Named(string text) =>
        RecipeDocument.Read(text.TrimEnd() + "\n" + Criteria, "recipe.yaml");
}
