using GlowMix.Choosing;
using GlowMix.Choosing.Search;
using GlowMix.Recipes;
using GlowMix.Tests.Predictions;

namespace GlowMix.Tests.Choosing.Search;

public sealed class SearchSpaceTests
{
    [Fact]
    public void Without_choices_loading_and_depth_of_each_pigmented_layer_go_from_half_to_double()
    {
        var space = BalanceRecipes.SpaceOf(
            BalanceRecipes.Recipe(
                "",
                new TestRecipe
                {
                    Layers =
                        "  - depth_mm: 2\n    pigment: green-aluminate\n    loading_percent: 50\n"
                        + "  - depth_mm: 1\n"
                        + "  - depth_mm: 0.5\n    pigment: green-aluminate\n    loading_g_per_100g_resin: 20\n",
                }
            ),
            steps: 2
        );
        (string, double, double)[] expected =
        [
            ("layers.layer-1.loading_percent", 25, 80),
            ("layers.layer-1.depth_mm", 1, 4),
            ("layers.layer-3.loading_g_per_100g_resin", 10, 40),
            ("layers.layer-3.depth_mm", 0.25, 1),
        ];
        Assert.Equal(expected, space.Axes.Select(a => (a.KeyPath, a.Values[0], a.Values[^1])));
        Assert.Single(space.Variants);
    }

    [Fact]
    public void Words_are_combined_in_the_order_in_which_they_stand()
    {
        var space = BalanceRecipes.SpaceOf(
            BalanceRecipes.Recipe(
                """
                balance:
                  choices:
                    - key: board.material
                      any_of: [white-mask, black-mask]
                    - key: layers.layer-1.grain_median_um
                      any_of: [40, 20, 30]
                """
            ),
            steps: 2
        );
        Assert.Equal(
            [
                "white-mask 40",
                "white-mask 20",
                "white-mask 30",
                "black-mask 40",
                "black-mask 20",
                "black-mask 30",
            ],
            space.Variants.Select(v => string.Join(' ', v.Values))
        );
        Assert.Equal(20, space.PieceOf(new(4, []), isSettled: true).Layers[0].GrainMedianUm);
        Assert.Equal("black-mask", space.PieceOf(new(4, []), isSettled: true).Board.Name);
    }

    [Theory]
    [InlineData(1000, 1)]
    [InlineData(40, 2)]
    [InlineData(20, 4)]
    [InlineData(1, 16)]
    public void A_thinner_grid_leaves_out_values_between_the_ends(int most, int every)
    {
        var space = BalanceRecipes.SpaceOf(BalanceRecipes.LoadingAndDepth, steps: 10);
        var thin = space.Thinned(most);
        Assert.Equal(SearchAxis.Stride * every, thin.Stride);
        foreach (var (axis, whole) in thin.Axes.Zip(space.Axes))
        {
            Assert.Equal(whole.Values, axis.Values);
            Assert.Equal(whole.CoarseIndices[0], axis.CoarseIndices[0]);
            Assert.Equal(whole.CoarseIndices[^1], axis.CoarseIndices[^1]);
            Assert.Empty(axis.CoarseIndices.Except(whole.CoarseIndices));
            Assert.Equal(axis.CoarseIndices.Distinct(), axis.CoarseIndices);
        }
        // Both ends of both ranges are the fewest that there can be.
        Assert.InRange(thin.CoarseDesigns.Count(), 4, Math.Max(4, most));
    }

    [Theory]
    [InlineData("  - depth_mm: 2\n", BalanceTexts.NothingToTurn)]
    [InlineData(
        "  - depth_mm: 2\n    pigment: green-aluminate\n    loading_percent: 0\n",
        BalanceTexts.NothingLoaded
    )]
    public void A_recipe_with_nothing_to_turn_is_told_so(string layers, string text) =>
        Assert.Equal([text], ProblemsOf(BalanceRecipes.Recipe("", new TestRecipe { Layers = layers })));

    [Fact]
    public void A_current_over_what_the_LED_bears_is_refused() =>
        Assert.StartsWith(
            "the choice of led.drive_ma 400: drive_ma is 400; allowed for warm-white-3000",
            Assert.Single(ProblemsOf(Raw("key: drive_ma", "from: 5", "to: 400"))),
            StringComparison.Ordinal
        );

    [Fact]
    public void More_designs_than_anyone_waits_for_are_refused()
    {
        var recipe = BalanceRecipes.Recipe(
            """
            balance:
              choices:
                - key: loading_percent
                  from: 2
                  to: 20
                - key: depth_mm
                  from: 1
                  to: 4
                - key: drive_ma
                  from: 10
                  to: 60
            """
        );
        string text = Assert.Single(ProblemsOf(recipe, steps: 100));
        Assert.Matches(
            @"^the choices make \d{7} designs with 100 steps a range; allowed: up to 200000; ",
            text
        );
    }

    private static RecipeDocument Raw(params string[] choice) =>
        BalanceRecipes.Recipe($"balance:\n  choices:\n    - {string.Join("\n      ", choice)}\n");

    private static IEnumerable<string> ProblemsOf(RecipeDocument recipe, int? steps = null)
    {
        var reading = Balance.Prepare(
            TestRecipe.Predictor,
            recipe,
            steps,
            TestContext.Current.CancellationToken
        );
        Assert.Null(reading.Balance);
        return reading.Problems.Select(p => p.Text);
    }
}
