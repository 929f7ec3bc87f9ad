using GlowMix.Choosing.Search;
using GlowMix.Optics.Pour;
using GlowMix.Predictions;
using GlowMix.Recipes;
using GlowMix.Tests.Predictions;

namespace GlowMix.Tests.Choosing.Search;

public sealed class DesignBenchTests
{
    private static readonly Predictor predictor = TestRecipe.Predictor;

    /// <summary>Every key that a search can turn by numbers, in two layers of which one has a loading by the resin's mass.</summary>
    private static readonly RecipeDocument everyKey = BalanceRecipes.Recipe(
        """
        balance:
          choices:
            - key: led.drive_ma
              from: 20
              to: 60
            - key: layers.low.depth_mm
              from: 0.4
              to: 2
            - key: layers.low.loading_percent
              from: 0
              to: 30
            - key: layers.low.grain_median_um
              from: 20
              to: 40
            - key: layers.high.depth_mm
              from: 0.3
              to: 1
            - key: layers.high.loading_g_per_100g_resin
              from: 5
              to: 50
            - key: layers.high.pigment
              any_of: [green-aluminate, blue-green-aluminate]
        """,
        new TestRecipe
        {
            Layers =
                "  - name: low\n    depth_mm: 1\n    pigment: green-aluminate\n    loading_percent: 10\n"
                + "  - name: high\n    depth_mm: 1\n    pigment: blue-green-aluminate\n    loading_g_per_100g_resin: 20\n",
        }
    );

    [Fact]
    public void A_design_is_the_changed_recipe_read_again_to_the_last_bit()
    {
        var space = BalanceRecipes.SpaceOf(everyKey, steps: 2);
        int[] last = [.. space.Axes.Select(a => a.Values.Length - 1)];
        Design[] designs =
        [
            new(0, [.. last.Select(_ => 0)]),
            new(1, [.. last]),
            new(0, [.. last.Select((l, a) => (l / 3) + a)]),
            // The same mix at other depths: solved together.
            new(1, [last[0], 3, last[2], last[3], 5, last[5]]),
        ];
        var pours = designs
            .GroupBy(d => (d.Variant, Mix: d.Steps[2] + (100 * d.Steps[5])))
            .SelectMany(g =>
                g.Zip(
                    PourOptics.OfDepths([
                        .. g.Select(d => predictor.StackOf(space.PieceOf(d, isSettled: false))),
                    ])
                )
            )
            .ToDictionary(p => p.First, p => p.Second);
        Assert.Equal(4, pours.Count);
        foreach (var design in designs)
        {
            var changed = space.ChoicesOf(design).Aggregate(everyKey, (r, c) => r.With(c.Key, c.Value));
            var piece = predictor.Check(changed).Piece! with { IsSettled = false };
            var turned = space.PieceOf(design, isSettled: false);
            Assert.Equal(piece.Layers, turned.Layers);
            Assert.Equal(piece.DriveMa, turned.DriveMa);
            var expected = predictor.LikelyRun(piece, PourOptics.Of(predictor.StackOf(piece))).Figures;
            var figures = predictor.LikelyRun(turned, pours[design]).Figures;
            Assert.All(FigureCatalogue.All, f => Assert.Equal(expected[f], figures[f]));
        }
    }

    [Fact]
    public void One_core_finds_what_two_cores_find()
    {
        var recipe = BalanceRecipes.LoadingAndDepth;
        var space = BalanceRecipes.SpaceOf(recipe, steps: 3);
        Design[] designs = [.. space.CoarseDesigns];
        var one = BalanceRecipes.Solve(recipe, space, designs, cores: 1);
        var two = BalanceRecipes.Solve(recipe, space, designs, cores: 2);
        Assert.Equal(designs, one.Select(r => r.Design));
        Assert.Equal(one.Select(Numbers), two.Select(Numbers));

        static string Numbers(DesignResult r) => $"{r.OffWhite:R} {r.GlowMcdPerM2:R} {r.Values[0]:R}";
    }

    [Fact]
    public void Targets_may_name_figures_that_only_some_runs_work_out()
    {
        var recipe = BalanceRecipes.Recipe(
            """
            targets:
              - figure: casting.mix_volume_ml
                at_most: 100
              - figure: lit.shift_by_cause_k.pigment_emission
                at_most: 5000
              - figure: along_largest_step_u_prime_v_prime
                at_most: 0.1
            """
        );
        recipe = recipe.With("pour.runs_out_mm", 0.2);
        var space = BalanceRecipes.SpaceOf(recipe, steps: 2);
        var result = Assert.Single(BalanceRecipes.Solve(recipe, space, [space.CoarseDesigns.First()]));
        var changed = space.ChoicesOf(result.Design).Aggregate(recipe, (r, c) => r.With(c.Key, c.Value));
        var figures = predictor.Predict(changed, isSettled: false).Prediction!.Figures;
        Assert.Equal(figures["casting.mix_volume_ml"], result.Values[0]);
        Assert.Equal(figures["along_largest_step_u_prime_v_prime"], result.Values[2]);
        Assert.NotNull(result.Values[2]);
    }
}
