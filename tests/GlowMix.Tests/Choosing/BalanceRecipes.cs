using GlowMix.Choosing.Search;
using GlowMix.Recipes;
using GlowMix.Tests.Predictions;

namespace GlowMix.Tests.Choosing;

/// <summary>Small recipes to balance, all invented, and what a search needs of them.</summary>
internal static class BalanceRecipes
{
    /// <summary>White against glow in loading and depth, both ends of the front cut by targets.</summary>
    public static RecipeDocument LoadingAndDepth { get; } =
        Recipe(
            """
            targets:
              - figure: lit.duv
                at_most: 0.02
              - figure: afterglow.luminance_mcd_m2
                at_minutes: 60
                at_least: 8
            balance:
              choices:
                - key: loading_percent
                  from: 2
                  to: 20
                - key: depth_mm
                  from: 1
                  to: 4
            """
        );

    /// <summary>Three grains, one range, a white that no design reaches.</summary>
    public static RecipeDocument GrainsAndLoading { get; } =
        Recipe(
            """
            targets:
              - figure: lit.flux_kept_percent
                at_least: 104
            balance:
              white_cct_k: 4000
              glow_at_minutes: 10
              choices:
                - key: grain_median_um
                  any_of: [15, 40, 25]
                - key: loading_percent
                  from: 3
                  to: 40
            """
        );

    /// <summary>Current and depth, held by a narrow band of lumens.</summary>
    public static RecipeDocument DriveAndDepth { get; } =
        Recipe(
            """
            targets:
              - figure: lit.flux_lm
                at_least: 1000
                at_most: 1100
            balance:
              choices:
                - key: drive_ma
                  from: 20
                  to: 60
                - key: depth_mm
                  from: 0.9
                  to: 3
            """
        );

    /// <summary>Nothing can be so bright and so white.</summary>
    public static RecipeDocument Impossible { get; } =
        Recipe(
            """
            targets:
              - figure: lit.duv
                at_most: 0.02
              - figure: afterglow.luminance_mcd_m2
                at_minutes: 60
                at_least: 60
            balance:
              choices:
                - key: loading_percent
                  from: 2
                  to: 20
                - key: depth_mm
                  from: 1
                  to: 4
            """
        );

    public static SearchSpace SpaceOf(RecipeDocument recipe, int steps)
    {
        var (space, problems) = SearchSpace.Of(
            recipe,
            TestRecipe.Predictor.Check,
            steps,
            TestContext.Current.CancellationToken
        );
        Assert.Empty(problems);
        return space!;
    }

    public static IReadOnlyList<DesignResult> Solve(
        RecipeDocument recipe,
        SearchSpace space,
        IReadOnlyList<Design> designs,
        bool isSettled = false,
        int cores = 2
    ) =>
        new DesignBench(TestRecipe.Predictor, space, new BalanceGoal(recipe.Recipe!), cores, isSettled).Solve(
            designs,
            _ => { },
            TestContext.Current.CancellationToken
        );

    public static RecipeDocument Recipe(string more, TestRecipe? recipe = null) =>
        RecipeDocument.Read((recipe ?? new TestRecipe()).Text + more + "\n", "a.yaml");
}
