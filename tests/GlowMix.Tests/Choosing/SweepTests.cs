using GlowMix.Choosing;
using GlowMix.Predictions;
using GlowMix.Recipes;
using GlowMix.Tests.Predictions;

namespace GlowMix.Tests.Choosing;

public sealed class SweepTests
{
    private static readonly Figure glow = FigureCatalogue.Find("afterglow.luminance_mcd_m2[60]")!;
    private static readonly Figure cct = FigureCatalogue.Find("lit.cct_k")!;
    private static readonly RecipeDocument recipe = new TestRecipe().Document;

    [Fact]
    public void Values_are_evenly_spaced_short_and_end_where_they_should()
    {
        Assert.Equal([0.1, 0.2, 0.3, 0.4], SweepAxis.Evenly("depth_mm", 0.1, 0.4, 4).Values);
        Assert.Equal([5, 40], SweepAxis.Evenly("loading_percent", 5, 40, 2).Values);
        Assert.Equal([-10, 0, 10], SweepAxis.Evenly("temperature_c", -10, 10, 3).Values);
        Assert.Equal(1.0 / 3, SweepAxis.Evenly("depth_mm", 0, 1, 4).Values[1], tolerance: 1e-11);
    }

    [Theory]
    [InlineData(2, 1, 3)]
    [InlineData(1, 1, 3)]
    [InlineData(1, 2, 1)]
    [InlineData(1, 2, 2.5)]
    [InlineData(1, 2, 1e9)]
    [InlineData(double.NaN, 2, 3)]
    [InlineData(1, double.PositiveInfinity, 3)]
    [InlineData(double.MinValue, double.MaxValue, 3)]
    public void Ends_and_counts_that_make_no_sweep_are_told(double from, double to, double count) =>
        Assert.NotNull(SweepAxis.ProblemOf(from, to, count));

    [Fact]
    public void A_point_is_what_the_changed_recipe_predicts()
    {
        var table = Swept(
            recipe,
            SweepAxis.Evenly("loading_percent", 10, 20, 3),
            SweepAxis.Evenly("layers.layer-1.depth_mm", 1, 2, 2)
        );
        Assert.True(table.IsComplete);
        Assert.Equal(
            ["layers.layer-1.loading_percent", "layers.layer-1.depth_mm"],
            table.Axes.Select(a => a.KeyPath)
        );
        double[][] at =
        [
            [10, 1],
            [10, 2],
            [15, 1],
            [15, 2],
            [20, 1],
            [20, 2],
        ];
        Assert.Equal(at, table.Points.Select(p => p.At.ToArray()));
        foreach (var point in table.Points)
        {
            var predicted = TestRecipe
                .Predictor.Predict(recipe.With("loading_percent", point.At[0]).With("depth_mm", point.At[1]))
                .Prediction!;
            Assert.Equal(predicted.Bands.Single(b => b.Key == glow).Value, point.Figures[0]);
            Assert.Equal(predicted.Figures[cct], point.Figures[1].Likely);
        }
    }

    [Fact]
    public void Bands_are_those_that_a_prediction_of_the_point_draws()
    {
        var sweep = Prepared(recipe, SweepAxis.Evenly("loading_percent", 10, 20, 2)).Sweep!;
        var table = sweep.Run([glow], draws: 32, stop: TestContext.Current.CancellationToken);
        Assert.Equal(32, table.DrawCount);
        foreach (var point in table.Points)
        {
            var drawn = new Forecaster(TestRecipe.Predictor).Drawn(
                recipe.With("loading_percent", point.At[0]),
                draws: 32,
                stop: TestContext.Current.CancellationToken
            );
            Assert.Equal(drawn.Prediction!.Bands.Single(b => b.Key == glow).Value, point.Figures[0]);
        }
    }

    [Theory]
    [InlineData("loading", "the recipe has no key 'loading'; did you mean 'loading_percent'?")]
    [InlineData("led.material", "'led.material' holds no number; a sweep goes through numbers only")]
    [InlineData(
        "balance.white_cct_k",
        "no figure depends on 'balance.white_cct_k'; vary what is poured, lit or charged"
    )]
    public void A_key_that_cannot_be_varied_is_told(string key, string text)
    {
        var reading = Prepared(recipe, SweepAxis.Evenly(key, 1, 2, 2));
        Assert.Null(reading.Sweep);
        Assert.Equal([text], reading.Problems.Select(p => p.Text));
    }

    [Fact]
    public void Values_that_a_recipe_could_not_hold_are_refused_before_anything_runs()
    {
        var reading = Prepared(recipe, SweepAxis.Evenly("loading_percent", 60, 90, 31));
        Assert.Null(reading.Sweep);
        Assert.Equal(4, reading.Problems.Length);
        // Too dense to pack is what the materials refuse, over 80 % what the recipe refuses.
        Assert.Contains(
            "layers.layer-1.loading_percent at 86: loading_percent is 86; allowed: 0 to 80",
            Prepared(recipe, SweepAxis.Evenly("loading_percent", 76, 86, 2)).Problems.Select(p => p.Text)
        );
        Assert.Equal(SweepTexts.AndMore(7), reading.Problems[^1].Text);
    }

    [Fact]
    public void Values_that_only_together_cannot_be_poured_are_refused_too()
    {
        var crooked = RecipeDocument.Read(
            new TestRecipe().Text.Replace("pour:\n", "pour:\n  runs_out_mm: 0\n", StringComparison.Ordinal),
            "a.yaml"
        );
        var reading = Prepared(
            crooked,
            SweepAxis.Evenly("runs_out_mm", 0.5, 3, 2),
            SweepAxis.Evenly("depth_mm", 1, 2.5, 2)
        );
        var problem = Assert.Single(reading.Problems);
        Assert.StartsWith(
            "pour.runs_out_mm at 3, layers.layer-1.depth_mm at 1: ",
            problem.Text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void More_predictions_than_anyone_waits_for_are_refused() =>
        Assert.Equal(
            [SweepTexts.PointCount(40_000)],
            Prepared(
                recipe,
                SweepAxis.Evenly("loading_percent", 1, 20, 200),
                SweepAxis.Evenly("depth_mm", 1, 2, 200)
            )
                .Problems.Select(p => p.Text)
        );

    [Fact]
    public void A_sweep_that_is_stopped_keeps_what_is_done()
    {
        using var stop = new CancellationTokenSource();
        var sweep = Prepared(recipe, SweepAxis.Evenly("loading_percent", 10, 20, 101)).Sweep!;
        var table = sweep.Run(
            [glow],
            draws: 0,
            done =>
            {
                if (done == 3)
                {
                    stop.Cancel();
                }
            },
            stop.Token
        );
        Assert.False(table.IsComplete);
        Assert.Equal([10, 10.1, 10.2], table.Points.Select(p => p.At[0]));
    }

    [Fact]
    public void A_figure_is_found_by_its_name_and_a_slip_is_told()
    {
        Assert.Equal(glow, Sweep.FigureOf("afterglow.luminance_mcd_m2[60]").Figure);
        Assert.Equal(
            "no figure is called 'afterglow.luminance_mcd_m2'; did you mean 'afterglow.luminance_mcd_m2[60]'?",
            Sweep.FigureOf("afterglow.luminance_mcd_m2").Problem
        );
        Assert.Equal("no figure is called 'duv'; did you mean 'bare.duv'?", Sweep.FigureOf("duv").Problem);
    }

    private static SweepReading Prepared(RecipeDocument recipe, params SweepAxis[] axes) =>
        Sweep.Prepare(TestRecipe.Predictor, recipe, axes, TestContext.Current.CancellationToken);

    private static SweepTable Swept(RecipeDocument recipe, params SweepAxis[] axes)
    {
        var reading = Prepared(recipe, axes);
        Assert.Empty(reading.Problems);
        return reading.Sweep!.Run([glow, cct], 0, null, TestContext.Current.CancellationToken);
    }
}
