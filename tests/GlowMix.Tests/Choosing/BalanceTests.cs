using GlowMix.Choosing;
using GlowMix.Predictions;
using GlowMix.Recipes;
using GlowMix.Tests.Predictions;

namespace GlowMix.Tests.Choosing;

public sealed class BalanceTests
{
    private static readonly Lazy<BalanceAnswer> loadingAndDepth = new(() =>
        AnswerOf(BalanceRecipes.LoadingAndDepth)
    );
    private static readonly Lazy<BalanceAnswer> grainsAndLoading = new(() =>
        AnswerOf(BalanceRecipes.GrainsAndLoading)
    );

    [Fact]
    public void The_recommended_design_is_on_the_front_and_meets_every_target()
    {
        var answer = loadingAndDepth.Value;
        Assert.True(answer.IsComplete);
        var best = answer.Recommended!;
        Assert.Contains(best, answer.Front);
        Assert.All(
            answer.Front,
            design => Assert.All(design.Prediction.Targets, t => Assert.True(t.Margin >= 0))
        );
        Assert.Equal(answer.Front.OrderBy(d => d.OffWhite), answer.Front);
        Assert.Equal(answer.Front.OrderBy(d => d.GlowMcdPerM2), answer.Front);
        Assert.InRange(answer.Front.Length, 3, 9);
        Assert.Equal(
            ["layers.layer-1.loading_percent", "layers.layer-1.depth_mm"],
            best.Choices.Select(c => c.Key)
        );
        Assert.InRange(answer.ShareOfDraws!.Value, 0.1, 1);
        Assert.Empty(answer.Relaxations);
        Assert.Null(answer.Nearest);
    }

    [Fact]
    public void What_is_put_forward_has_the_bands_of_its_own_draws()
    {
        var balance = Prepared(BalanceRecipes.LoadingAndDepth);
        var answer = balance.Run(draws: 32, stop: TestContext.Current.CancellationToken);
        foreach (var design in (BalanceDesign[])[answer.Recommended!, answer.Front[0]])
        {
            var drawn = new Forecaster(TestRecipe.Predictor).Drawn(
                balance.RecipeOf(design),
                draws: 32,
                stop: TestContext.Current.CancellationToken
            );
            Assert.Equal(drawn.Prediction!.Bands, design.Prediction.Bands);
        }
    }

    [Fact]
    public void The_ends_of_the_front_are_held_by_the_targets_that_cut_them()
    {
        var answer = loadingAndDepth.Value;
        Assert.Equal(
            "afterglow.luminance_mcd_m2",
            Assert.Single(answer.WhitestHeldBy, l => l.Target is not null).Target!.Figure
        );
        Assert.Equal(
            "lit.duv",
            Assert.Single(answer.BrightestHeldBy, l => l.Target is not null).Target!.Figure
        );
    }

    [Fact]
    public void One_core_and_two_put_forward_the_same_to_the_last_bit()
    {
        var one = Prepared(BalanceRecipes.LoadingAndDepth)
            .Run(cores: 1, draws: 32, stop: TestContext.Current.CancellationToken);
        var two = Prepared(BalanceRecipes.LoadingAndDepth)
            .Run(cores: 2, draws: 32, stop: TestContext.Current.CancellationToken);
        Assert.Equal((one.TriedCount, one.SettledCount), (two.TriedCount, two.SettledCount));
        Assert.Equal(one.Front.Select(Numbers), two.Front.Select(Numbers));
        Assert.Equal(Numbers(one.Recommended!), Numbers(two.Recommended!));

        static string Numbers(BalanceDesign d) =>
            $"{string.Join(' ', d.Choices)} {d.OffWhite:R} {d.GlowMcdPerM2:R}";
    }

    [Fact]
    public void Grains_that_settle_can_meet_what_they_could_not_evenly_spread()
    {
        // Less of the blue meets a bed between the packages: whiter, where evenly spread all is too green.
        var recipe = BalanceRecipes.LoadingAndDepth.With("targets.2.at_least", 40);
        var space = BalanceRecipes.SpaceOf(recipe, steps: 3);
        Assert.DoesNotContain(
            BalanceRecipes.Solve(recipe, space, [.. space.CoarseDesigns]),
            r => r.IsFeasible
        );
        var best = AnswerOf(recipe).Recommended!;
        Assert.All(best.Prediction.Targets, t => Assert.True(t.Margin >= 0));
    }

    [Fact]
    public void White_and_glow_are_those_of_the_prediction()
    {
        var answer = grainsAndLoading.Value;
        foreach (var design in answer.Front)
        {
            Assert.Equal(
                design.Prediction.Figures["afterglow.luminance_mcd_m2[10]"]!.Value,
                design.GlowMcdPerM2,
                tolerance: 1e-9
            );
            // u′ 0.2251, v′ 0.5016: the Planckian radiator of 4000 K (CIE 1931 observer), to the digits that tables print.
            double u = design.Prediction.Figures["lit.u_prime"]!.Value - 0.2251;
            double v = design.Prediction.Figures["lit.v_prime"]!.Value - 0.5016;
            Assert.Equal(Math.Sqrt((u * u) + (v * v)), design.OffWhite!.Value, tolerance: 2e-4);
        }
    }

    [Fact]
    public void The_map_shows_where_targets_are_met_and_which_one_fails()
    {
        var answer = loadingAndDepth.Value;
        var map = answer.Map!;
        Assert.Equal("layers.layer-1.loading_percent", map.AcrossKeyPath);
        Assert.Equal("layers.layer-1.depth_mm", map.UpKeyPath);
        Assert.Equal(map.Up.Length, map.Missed.Length);
        Assert.Equal(answer.GridCount, map.Up.Length * map.Across.Length);
        Assert.Equal(answer.GridFeasibleCount, map.Missed.Sum(row => row.Count(missed => missed.IsEmpty)));
        // Little pigment: too dark. Much of it: too green.
        Assert.Equal([1], map.Missed[0][0]);
        Assert.Equal([0], map.Missed[^1][^1]);
    }

    [Fact]
    public void One_range_makes_a_strip_and_grains_are_chosen_for_each_place_on_it()
    {
        var map = grainsAndLoading.Value.Map!;
        Assert.Null(map.UpKeyPath);
        Assert.Single(map.Missed);
        Assert.Equal(map.Across.Length, map.Missed[0].Length);
    }

    [Fact]
    public void Where_nothing_is_feasible_a_single_target_to_relax_is_told_with_its_value()
    {
        var answer = AnswerOf(BalanceRecipes.Impossible);
        Assert.Null(answer.Recommended);
        Assert.Null(answer.ShareOfDraws);
        Assert.Empty(answer.Front);
        Assert.Equal(0, answer.GridFeasibleCount);
        Assert.Equal(2, answer.Relaxations.Length);
        foreach (var relaxation in answer.Relaxations)
        {
            // With the target so relaxed the design meets all of them.
            var changed = relaxation.Choices.Aggregate(
                BalanceRecipes.Impossible,
                (r, c) => r.With(c.Key, c.Value)
            );
            int index = answer.Targets.IndexOf(relaxation.Target) + 1;
            bool isLower = relaxation.Target.AtLeast is not null;
            changed = changed.With($"targets.{index}.{(isLower ? "at_least" : "at_most")}", relaxation.To);
            var figures = TestRecipe.Predictor.Predict(changed).Prediction!.Figures;
            Assert.All(
                changed.Recipe!.Targets,
                t =>
                {
                    double value = figures[FigureCatalogue.Find(t.Figure, t.AtMinutes)!]!.Value;
                    Assert.InRange(
                        value,
                        (t.AtLeast ?? double.NegativeInfinity) - 1e-9,
                        (t.AtMost ?? double.PositiveInfinity) + 1e-9
                    );
                }
            );
        }
        Assert.Contains(answer.Nearest!.Prediction.Targets, t => t.Margin < 0);
    }

    [Fact]
    public void A_piece_without_pigment_is_balanced_for_white_alone()
    {
        var answer = AnswerOf(
            BalanceRecipes.Recipe(
                "balance:\n  choices:\n    - key: depth_mm\n      from: 1\n      to: 4\n",
                new TestRecipe { Layers = TestRecipe.Clear(2) }
            )
        );
        var best = Assert.Single(answer.Front);
        Assert.Equal(best, answer.Recommended);
        Assert.Equal(0, best.GlowMcdPerM2);
        // The thinner the pour, the nearer to the bare board.
        Assert.Equal("1", best.Choices.Single().Value);
        Assert.Equal(1, Assert.Single(answer.HeldBy).EndsAt);
    }

    [Fact]
    public void Words_alone_can_be_chosen_from()
    {
        var answer = AnswerOf(
            BalanceRecipes.Recipe(
                "balance:\n  choices:\n    - key: board.material\n      any_of: [black-mask, white-mask]\n"
            )
        );
        Assert.Equal(2, answer.TriedCount);
        Assert.Null(answer.Map);
        Assert.All(answer.Front, d => Assert.Equal("board.material", d.Choices.Single().Key));
    }

    [Fact]
    public void The_saved_recipe_keeps_its_comments_and_has_the_chosen_numbers()
    {
        var commented = RecipeDocument.Read(
            "# mine\n"
                + BalanceRecipes.GrainsAndLoading.Text.Replace(
                    "resin:",
                    "# clear\nresin:",
                    StringComparison.Ordinal
                ),
            "a.yaml"
        );
        var balance = Prepared(commented);
        var answer = balance.Run(draws: 32, stop: TestContext.Current.CancellationToken);
        var saved = balance.RecipeOf(answer.Recommended!);
        Assert.StartsWith("# mine\n", saved.Text, StringComparison.Ordinal);
        Assert.Contains("# clear\n", saved.Text, StringComparison.Ordinal);
        foreach (var choice in answer.Recommended!.Choices)
        {
            Assert.Equal(choice.Value, saved.Get(choice.Key));
        }
    }

    [Fact]
    public void A_stopped_search_tells_what_it_has()
    {
        using var stop = new CancellationTokenSource();
        var answer = Prepared(BalanceRecipes.LoadingAndDepth)
            .Run(
                (done, _) =>
                {
                    if (done >= 2)
                    {
                        stop.Cancel();
                    }
                },
                cores: 1,
                stop: stop.Token
            );
        Assert.False(answer.IsComplete);
        Assert.Null(answer.Map);
        Assert.InRange(answer.SettledCount, 1, answer.TriedCount);
        Assert.All(
            answer.Front,
            design => Assert.All(design.Prediction.Targets, t => Assert.True(t.Margin >= 0))
        );
    }

    private static Balance Prepared(RecipeDocument recipe)
    {
        var reading = Balance.Prepare(
            TestRecipe.Predictor,
            recipe,
            steps: 3,
            TestContext.Current.CancellationToken
        );
        Assert.Empty(reading.Problems);
        return reading.Balance!;
    }

    private static BalanceAnswer AnswerOf(RecipeDocument recipe) =>
        Prepared(recipe).Run(draws: 32, stop: TestContext.Current.CancellationToken);
}
