using GlowMix.Choosing.Search;
using GlowMix.Recipes;

namespace GlowMix.Tests.Choosing.Search;

/// <summary>
/// The search against every design of the fine row, or of every second or third of it, tried one by one with what settles.
/// </summary>
public sealed class BalanceSearchTests
{
    public static TheoryData<string, int, int> Recipes =>
        new()
        {
            { nameof(BalanceRecipes.LoadingAndDepth), 2, 2 },
            { nameof(BalanceRecipes.GrainsAndLoading), 4, 1 },
            { nameof(BalanceRecipes.DriveAndDepth), 2, 2 },
        };

    [Theory]
    [MemberData(nameof(Recipes))]
    public void A_full_grid_finds_no_better_design_by_more_than_its_step_and_the_front_none_that_is_dominated(
        string name,
        int steps,
        int every
    )
    {
        var recipe = Named(name);
        var space = BalanceRecipes.SpaceOf(recipe, steps);
        var search = Searched(recipe, space).Settled;
        var front = Front.Of(search.Tried.Where(r => r.IsFeasible));
        var grid = GridOf(recipe, space, every);
        var feasible = grid.Values.Where(r => r.IsFeasible).ToArray();
        Assert.True(
            4 * search.TriedCount < 3 * grid.Count * every * every,
            $"the search tries fewer: {search.TriedCount} of {grid.Count * every * every}"
        );
        Assert.True(front.Length > 2);
        Assert.All(front, f => Assert.DoesNotContain(search.Tried, r => r.IsFeasible && r.Dominates(f)));
        Assert.NotEmpty(feasible);
        Assert.NotEqual(grid.Count, feasible.Length);

        Assert.All(
            feasible,
            r =>
            {
                var (offStep, glowStep) = StepsAround(r, grid, every);
                Assert.Contains(
                    front,
                    f => f.OffWhite <= r.OffWhite + offStep && f.GlowMcdPerM2 >= r.GlowMcdPerM2 - glowStep
                );
            }
        );
        var scale = new FrontScale(front);
        double found = scale.FromIdeal(Front.Compromise(front)!);
        var best = feasible.MinBy(scale.FromIdeal)!;
        double step = Neighbours(best.Design, grid, every)
            .Max(n => Math.Abs(scale.FromIdeal(n) - scale.FromIdeal(best)));
        Assert.True(found <= scale.FromIdeal(best) + step, $"{found} against {scale.FromIdeal(best)}");
    }

    [Fact]
    public void Where_nothing_is_feasible_each_target_is_relaxed_no_further_than_a_full_grid_asks_for()
    {
        var recipe = BalanceRecipes.Impossible;
        var space = BalanceRecipes.SpaceOf(recipe, steps: 2);
        var search = Searched(recipe, space).Settled;
        var grid = GridOf(recipe, space, every: 2);
        Assert.DoesNotContain(search.Tried, r => r.IsFeasible);
        Assert.DoesNotContain(grid.Values, r => r.IsFeasible);
        for (int t = 0; t < 2; t++)
        {
            var best = grid.Values.Where(r => r.Shortfalls[1 - t] == 0).MinBy(r => r.Shortfalls[t])!;
            double step = Neighbours(best.Design, grid, 2)
                .Max(n => Math.Abs(n.Values[t]!.Value - best.Values[t]!.Value));
            Assert.True(search.MissingOnly(t).First().Shortfalls[t] <= best.Shortfalls[t] + step);
        }
    }

    private static RecipeDocument Named(string name) =>
        (RecipeDocument)typeof(BalanceRecipes).GetProperty(name)!.GetValue(null)!;

    private static BalancePasses Searched(RecipeDocument recipe, SearchSpace space)
    {
        var passes = new BalancePasses(
            space,
            (designs, isSettled, _) => BalanceRecipes.Solve(recipe, space, designs, isSettled)
        );
        passes.Run(TestContext.Current.CancellationToken);
        Assert.True(passes.IsComplete);
        return passes;
    }

    private static Dictionary<Design, DesignResult> GridOf(
        RecipeDocument recipe,
        SearchSpace space,
        int every
    )
    {
        var designs = Enumerable.Range(0, space.Variants.Length).Select(v => new Design(v, []));
        foreach (var axis in space.Axes)
        {
            designs = designs.SelectMany(d =>
                Enumerable
                    .Range(0, ((axis.Values.Length - 1) / every) + 1)
                    .Select(i => d with { Steps = d.Steps.Add(i * every) })
            );
        }
        return BalanceRecipes.Solve(recipe, space, [.. designs], isSettled: true).ToDictionary(r => r.Design);
    }

    private static (double OffWhite, double Glow) StepsAround(
        DesignResult r,
        Dictionary<Design, DesignResult> grid,
        int every
    )
    {
        DesignResult[] near = [.. Neighbours(r.Design, grid, every)];
        return (
            near.Max(n => Math.Abs(n.OffWhite - r.OffWhite)),
            near.Max(n => Math.Abs(n.GlowMcdPerM2 - r.GlowMcdPerM2))
        );
    }

    private static IEnumerable<DesignResult> Neighbours(
        Design design,
        Dictionary<Design, DesignResult> grid,
        int every
    )
    {
        for (int a = 0; a < design.Steps.Length; a++)
        {
            foreach (int step in (int[])[-every, every])
            {
                var moved = design with { Steps = design.Steps.SetItem(a, design.Steps[a] + step) };
                if (grid.TryGetValue(moved, out var result))
                {
                    yield return result;
                }
            }
        }
    }
}
