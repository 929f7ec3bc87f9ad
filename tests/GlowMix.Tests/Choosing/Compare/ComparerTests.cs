using GlowMix.Choosing.Compare;
using GlowMix.Materials;
using GlowMix.Pieces;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Tests.Choosing.Compare;

public class ComparerTests
{
    private const string Strip = """
        format: 1
        resin: epoxy-clear-slow
        led:
          material: warm-white-3000
          count: 60
        pour:
          length_mm: 500
          width_mm: 12
        layers:
          - name: glow
            depth_mm: 2.5
            pigment: green-aluminate
            loading_percent: 20
        targets:
          - figure: lit.duv
            at_most: 0.03
        """;

    private static readonly Predictor Predictor = new(new Shelf());

    [Fact]
    public void Two_recipes_that_say_the_same_differ_in_nothing()
    {
        // Order, comments, quotes and the form of the loading are how it is said, not what.
        string other = """
            # the same
            format: 1
            led: {count: 60, material: 'warm-white-3000'}
            resin: "epoxy-clear-slow"
            pour:
              width_mm: 12.0
              length_mm: 500
            layers:
              - depth_mm: 2.50
                name: glow
                loading_g_per_100g_resin: 25
                pigment: green-aluminate
            targets:
              - figure: lit.duv
                at_most: 0.030
            """;
        var comparison = Compare(Strip, other);
        Assert.Empty(comparison.Differences);
        Assert.Empty(comparison.Causes);
        Assert.All(comparison.Figures, f => Assert.Equal(0, f.Change.Likely));
    }

    [Theory]
    [InlineData("loading_percent", "25", "layers.glow.loading_percent", false)]
    [InlineData("resin", "silicone-clear", "resin", false)]
    [InlineData("depth_tolerance_mm", "0.2", "layers.glow.depth_tolerance_mm", true)]
    [InlineData("limit_mcd_m2", "2", "darkness.limit_mcd_m2", true)]
    [InlineData("charge.start", "settled-daily", "charge.start", true)]
    public void A_change_is_told_and_whether_it_moves_the_yardstick(
        string key,
        string value,
        string path,
        bool isYardstick
    )
    {
        var difference = Assert.Single(Compare(Strip, Changed((key, value))).Differences);
        Assert.Equal(
            (path, value, isYardstick),
            (difference.KeyPath, difference.After, difference.IsYardstick)
        );
    }

    [Fact]
    public void A_target_is_known_by_its_figure_and_not_by_its_place()
    {
        string other = Strip.Replace(
            "  - figure: lit.duv\n    at_most: 0.03",
            "  - figure: lit.flux_kept_percent\n    at_least: 80\n  - figure: lit.duv\n    at_most: 0.02",
            StringComparison.Ordinal
        );
        var differences = Compare(Strip, other).Differences;
        Assert.Equal(
            [
                "targets.lit.duv: at most 0.03 to at most 0.02",
                "targets.lit.flux_kept_percent:  to at least 80",
            ],
            differences.Select(d => $"{d.KeyPath}: {d.Before} to {d.After}")
        );
    }

    [Fact]
    public void A_layer_that_comes_is_one_difference()
    {
        string other = Strip.Replace(
            "targets:",
            "  - name: cover\n    depth_mm: 0.5\ntargets:",
            StringComparison.Ordinal
        );
        var difference = Assert.Single(Compare(Strip, other).Differences);
        Assert.Equal(
            ("layers.cover", null, "0.5 mm clear"),
            (difference.KeyPath, difference.Before, difference.After)
        );
    }

    [Fact]
    public void A_target_breaks_where_the_second_misses_what_the_first_met()
    {
        var target = Assert.Single(
            Compare(Strip, Changed(("targets.1.at_most", "0.03"), ("depth_mm", "20"))).Targets
        );
        Assert.Equal((TargetState.Met, TargetState.Missed), (target.Before.State, target.After.State));
        Assert.True(target.Breaks);
    }

    /// <summary>A moved bound is one yardstick for both: the first is not called met under its own old bound.</summary>
    [Fact]
    public void Both_are_judged_by_the_second_ones_targets()
    {
        var target = Assert.Single(Compare(Strip, Changed(("at_most", "0.001"))).Targets);
        Assert.Equal((TargetState.Missed, TargetState.Missed), (target.Before.State, target.After.State));
        Assert.False(target.Breaks);
    }

    [Fact]
    public void Doubt_that_both_share_falls_out_of_the_difference()
    {
        var change = ChangeOf(
            Compare(Strip, Changed(("loading_percent", "25"))),
            "afterglow.minutes_to_0_3_mcd_m2"
        );
        double before = change.Before.High!.Value / change.Before.Low!.Value;
        double ofRatio = change.Ratio!.Value.High!.Value / change.Ratio.Value.Low!.Value;
        Assert.True(ofRatio < 1 + ((before - 1) / 4), $"{ofRatio} against {before}");
        Assert.InRange(
            change.Ratio.Value.Likely!.Value,
            change.Ratio.Value.Low.Value,
            change.Ratio.Value.High.Value
        );
    }

    [Fact]
    public void The_change_is_the_difference_of_the_two_predictions()
    {
        var comparison = Compare(Strip, Changed(("board.material", "black-mask")));
        var after = Predictor
            .Predict(RecipeDocument.Read(Changed(("board.material", "black-mask")), "b"))
            .Prediction!;
        var before = Predictor.Predict(RecipeDocument.Read(Strip, "a")).Prediction!;
        Assert.All(
            comparison.Figures,
            f => Assert.Equal(after.Figures[f.Figure] - before.Figures[f.Figure], f.Change.Likely)
        );
    }

    [Fact]
    public void Exchanged_one_after_the_other_all_changes_make_the_second_piece()
    {
        var from = PieceOf(Strip);
        var to = PieceOf(
            Changed(
                ("resin", "silicone-clear"),
                ("led.material", "cool-white-6500"),
                ("drive_ma", "30"),
                ("board.material", "black-mask"),
                ("face", "down"),
                ("runs_out_mm", "0.4"),
                ("depth_mm", "3"),
                ("pigment", "blue-green-aluminate"),
                ("loading_percent", "12"),
                ("mixing.temperature_c", "30"),
                ("darkness.temperature_c", "5"),
                ("charge.start", "settled-daily")
            )
        );
        var exchanges = Exchanges.Between(from, to);
        Assert.Equal(12, exchanges.Count);
        var mixed = exchanges.Aggregate(from, (piece, exchange) => exchange.Apply(piece));
        Assert.Empty(Exchanges.Between(mixed, to));
        var expected = Predictor.LikelyRun(to).Figures;
        var found = Predictor.LikelyRun(mixed).Figures;
        Assert.All(FigureCatalogue.All, f => Assert.Equal(expected[f], found[f]));
    }

    [Fact]
    public void What_leaves_the_pour_as_it_is_gives_the_same_figures_without_solving_it_again()
    {
        var from = PieceOf(Strip);
        var pour = Predictor.LikelyRun(from).Light.Pour;
        var keepers = Exchanges
            .Between(
                from,
                PieceOf(
                    Changed(
                        ("led.material", "cool-white-6500"),
                        ("drive_ma", "30"),
                        ("board.material", "black-mask"),
                        ("face", "down"),
                        ("runs_out_mm", "0.4"),
                        ("loading_percent", "12"),
                        ("darkness.temperature_c", "5"),
                        ("charge.start", "settled-daily")
                    )
                )
            )
            .Where(e => e.KeepsPour)
            .ToArray();
        Assert.Equal(
            ["led", "led.drive_ma", "board", "pour.runs_out_mm", "charge", "darkness"],
            keepers.Select(e => e.Key)
        );
        Assert.All(
            keepers,
            exchange =>
            {
                var piece = exchange.Apply(from);
                var anew = Predictor.LikelyRun(piece).Figures;
                var kept = Predictor.LikelyRun(piece, pour).Figures;
                Assert.All(FigureCatalogue.All, f => Assert.Equal(anew[f], kept[f]));
            }
        );
    }

    [Fact]
    public void Leds_of_another_size_need_the_pour_solved_again()
    {
        var before = PieceOf(Strip);
        var height = before.Led.PackageHeightMm;
        var to = before with
        {
            Led = before.Led with { Name = "low", PackageHeightMm = height.Select(mm => mm / 2) },
        };
        Assert.False(Assert.Single(Exchanges.Between(before, to)).KeepsPour);
    }

    [Fact]
    public void Causes_and_their_interaction_add_up_to_the_whole()
    {
        var comparison = Compare(
            Strip,
            Changed(("loading_percent", "30"), ("depth_mm", "2"), ("board.material", "black-mask"))
        );
        Assert.Equal(
            ["board", "layers.glow.depth_mm", "layers.glow.loading_percent", Comparison.Together],
            comparison.Causes.Select(c => c.Key)
        );
        for (int i = 0; i < Comparison.CauseFigures.Length; i++)
        {
            var figure = Comparison.CauseFigures[i];
            var whole = ChangeOf(comparison, figure.Name);
            if (Comparison.IsByRatio(figure))
            {
                double product = comparison.Causes.Aggregate(1.0, (p, c) => p * c.Changes[i]!.Value);
                Assert.Equal(whole.After.Likely!.Value / whole.Before.Likely!.Value, product, 1e-9);
            }
            else
            {
                Assert.Equal(
                    whole.Change.Likely!.Value,
                    comparison.Causes.Sum(c => c.Changes[i]!.Value),
                    1e-9
                );
            }
        }
    }

    [Fact]
    public void A_cause_alone_is_what_that_change_alone_does()
    {
        var both = Compare(Strip, Changed(("loading_percent", "30"), ("depth_mm", "2")));
        var one = ChangeOf(Compare(Strip, Changed(("depth_mm", "2"))), "lit.cct_k");
        Assert.Equal(one.Change.Likely!.Value, both.Causes[0].Changes[0]!.Value, 1e-9);
    }

    [Fact]
    public void Against_a_clear_piece_the_glow_is_new_and_nothing_fails()
    {
        string clear = Strip.Replace(
            "    pigment: green-aluminate\n    loading_percent: 20\n",
            "",
            StringComparison.Ordinal
        );
        var glow = ChangeOf(Compare(clear, Strip), "afterglow.luminance_mcd_m2[10]");
        Assert.Null(glow.Before.Likely);
        Assert.Null(glow.Change.Likely);
        Assert.True(glow.After.Likely > 0);
        var white = ChangeOf(Compare(clear, Strip), "lit.duv");
        Assert.True(white.Change.Low < white.Change.High);
    }

    [Fact]
    public void A_broken_recipe_gives_its_problems()
    {
        var outcome = Comparer.Bounded(
            (RecipeDocument.Read(Strip, "a.yaml"), Predictor),
            (RecipeDocument.Read(Changed(("format", "2")), "b.yaml"), Predictor)
        );
        Assert.Null(outcome.Comparison);
        Assert.Equal("b.yaml", Assert.Single(outcome.Problems).File);
    }

    private static FigureChange ChangeOf(Comparison comparison, string name) =>
        comparison.Figures.Single(f => f.Figure.Name == name);

    private static Piece PieceOf(string text) => Predictor.Check(RecipeDocument.Read(text, "a")).Piece!;

    private static string Changed(params (string Key, string Value)[] changes) =>
        changes.Aggregate(RecipeDocument.Read(Strip, "a"), (r, c) => r.With(c.Key, c.Value)).Text;

    private static Comparison Compare(string before, string after) =>
        Comparer
            .Bounded(
                (RecipeDocument.Read(before, "a.yaml"), Predictor),
                (RecipeDocument.Read(after, "b.yaml"), Predictor)
            )
            .Comparison!;
}
