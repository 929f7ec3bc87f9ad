using GlowMix.Choosing.Compare;
using GlowMix.Predictions;
using GlowMix.Recipes;
using GlowMix.Tests.Predictions;

namespace GlowMix.Tests.Choosing.Compare;

public sealed class DrawnComparerTests
{
    private const int Draws = 40;

    [Fact]
    public void First_recipe_is_drawn_once_and_every_pair_is_what_it_is_by_itself()
    {
        var first = Side(new TestRecipe());
        var clear = Side(new TestRecipe { Layers = TestRecipe.Clear(3) });
        var thicker = Side(new TestRecipe { Layers = TestRecipe.Glow(3, 15) });
        var comparer = new DrawnComparer(first, Draws);
        Compared(comparer, clear);

        int least = int.MaxValue;
        var second = Compared(comparer, thicker, done => least = Math.Min(least, done));
        Assert.Equal(Draws + 1, least);

        var alone = Compared(new DrawnComparer(first, Draws), thicker);
        Assert.NotEmpty(alone.Figures);
        Assert.Equal(alone.Figures, second.Figures);
        Assert.Equal(alone.Before.Bands, second.Before.Bands);
        Assert.Equal(alone.DrawCount, second.DrawCount);
    }

    private static Comparison Compared(
        DrawnComparer comparer,
        (RecipeDocument, Predictor) after,
        Action<int>? done = null
    )
    {
        var told = new object();
        return comparer
            .With(
                after,
                done is null
                    ? null
                    : n =>
                    {
                        lock (told)
                        {
                            done(n);
                        }
                    },
                TestContext.Current.CancellationToken
            )
            .Comparison!;
    }

    private static (RecipeDocument, Predictor) Side(TestRecipe recipe) =>
        (recipe.Document, TestRecipe.Predictor);
}
