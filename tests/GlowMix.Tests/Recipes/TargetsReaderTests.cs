using GlowMix.Recipes;

namespace GlowMix.Tests.Recipes;

public class TargetsReaderTests
{
    [Fact]
    public void Targets_are_read_in_order()
    {
        var recipe = Read(
            "figure: lit.duv, at_least: -0.006, at_most: 0.02",
            "figure: afterglow.luminance_mcd_m2, at_minutes: 60, at_least: 5"
        ).Recipe!;
        Assert.Equal(
            [
                new()
                {
                    Figure = "lit.duv",
                    AtLeast = -0.006,
                    AtMost = 0.02,
                },
                new RecipeTarget
                {
                    Figure = "afterglow.luminance_mcd_m2",
                    AtMinutes = 60,
                    AtLeast = 5,
                },
            ],
            recipe.Targets
        );
        Assert.Equal(11, recipe.PlaceOf("targets.2.figure")!.Value.Line);
    }

    [Fact]
    public void A_target_needs_a_bound() =>
        AssertProblem("figure: lit.duv", RecipeTexts.TargetNeedsABound("lit.duv"));

    [Fact]
    public void Bounds_do_not_cross() =>
        AssertProblem("figure: lit.ra, at_least: 90, at_most: 80", RecipeTexts.BoundsCross(90, 80));

    [Fact]
    public void A_luminance_is_meant_at_some_minutes() =>
        AssertProblem(
            "figure: afterglow.luminance_mcd_m2, at_least: 5",
            RecipeTexts.FigureNeedsMinutes("afterglow.luminance_mcd_m2")
        );

    [Fact]
    public void Only_a_luminance_is_meant_at_some_minutes() =>
        AssertProblem(
            "figure: lit.duv, at_minutes: 60, at_least: 0",
            RecipeTexts.FigureHasNoMinutes("lit.duv")
        );

    [Fact]
    public void Minutes_are_those_of_the_decay_table() =>
        AssertProblem(
            "figure: afterglow.luminance_mcd_m2, at_minutes: 45, at_least: 5",
            "at_minutes is 45; allowed: 0.5, 1, 2, 5, 10, 20, 30, 60, 90, 120, 240, 480"
        );

    private static RecipeDocument Read(params string[] targets) =>
        Sample.With("targets:\n" + string.Concat(targets.Select(s => $"  - {{{s}}}\n")));

    private static void AssertProblem(string target, string problem) =>
        Assert.Equal([problem], Read(target).Problems.Select(p => p.Text));
}
