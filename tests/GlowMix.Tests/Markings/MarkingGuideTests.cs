using GlowMix.Documents;
using GlowMix.Markings;
using GlowMix.Materials;
using GlowMix.Tests.Materials;
using GlowMix.Tests.Predictions;

namespace GlowMix.Tests.Markings;

public class MarkingGuideTests
{
    private const string NoSuchLamp = "materials/criteria/mine.yaml";

    private static readonly Shelf Shelf = new(
        new InMemoryMaterials(
            (NoSuchLamp, Own("no-such-lamp")),
            ("materials/criteria/ultraviolet.yaml", Own("uv-365"))
        )
    );

    // Flat packages that cover little: the LEDs do not displace the pour.
    private static readonly TestRecipe Piece = new()
    {
        Led = "flat-warm-white-3000",
        WindowShare = 0.001,
        Steps = TestRecipe.Lamp("fl11", 100, 60),
    };

    [Fact]
    public void A_criterion_is_computed_as_a_recipe_with_its_charge_is_predicted()
    {
        // JIS Z 9107:2008 charges with 200 lx for 20 min.
        var own = Piece with
        {
            Steps = TestRecipe.Lamp("fl7", 200, 20),
        };
        foreach (var limit in Guided(Piece, "jis9107-jb").Criteria[0].Limits)
        {
            Assert.Equal(
                own.Figures["afterglow.luminance_mcd_m2", limit.Minutes],
                limit.Luminance!.Value.Likely
            );
            Assert.InRange(
                limit.Luminance.Value.Likely!.Value,
                limit.Luminance.Value.Low!.Value,
                limit.Luminance.Value.High!.Value
            );
        }
    }

    [Theory]
    [InlineData("a")]
    [InlineData("c")]
    [InlineData("e")]
    public void A_pigment_fitted_to_a_class_stands_at_the_limits_of_that_class(string letter)
    {
        // The sheets of the class pigments are the class limits, taken on a sample such as this one.
        var sheet = Shelf.Pigment($"green-aluminate-class-{letter}").Material!.Sheet;
        var sample = Piece with
        {
            Layers = TestRecipe.Glow(
                sheet.DepthMm.Value,
                sheet.LoadingPercent.Value,
                $"green-aluminate-class-{letter}"
            ),
        };
        var compared = Guided(sample, $"iso17398-{letter}").Criteria[0];
        Assert.Equal([2, 10, 30, 60], compared.Limits.Select(l => l.Minutes));
        Assert.All(
            compared.Limits,
            l => Assert.Equal(1, l.Luminance!.Value.Likely!.Value / l.LeastMcdPerM2!.Value, tolerance: 0.04)
        );
    }

    [Fact]
    public void The_recipes_own_charge_does_not_matter_to_a_criterion()
    {
        var other = Piece with
        {
            Steps = TestRecipe.OwnLeds(480),
            Start = "settled-daily",
            DarknessC = 5,
            LimitMcdM2 = 2,
        };
        Assert.Equal(
            Guided(Piece, "nyc-rs6-1").Criteria[0].Limits,
            Guided(other, "nyc-rs6-1").Criteria[0].Limits
        );
    }

    [Fact]
    public void The_worst_time_decides_and_above_needs_the_whole_band()
    {
        var criterion = Shelf.Criterion("jis9107-jb").Material!;
        var band = Guided(Piece, "jis9107-jb").Criteria[0].Limits[1].Luminance!.Value;
        double late = 0.01; // far below what it is at 60 min
        Assert.Equal(MarkingState.Above, StateWith(band.Low!.Value));
        Assert.Equal(MarkingState.TooClose, StateWith(band.Likely!.Value));
        Assert.Equal(MarkingState.TooClose, StateWith(band.High!.Value));
        Assert.Equal(MarkingState.Below, StateWith(1.001 * band.High!.Value));
        late = 1e5;
        Assert.Equal(MarkingState.Below, StateWith(band.Low!.Value));

        MarkingState StateWith(double leastMcdPerM2) =>
            GuidedBy(
                Piece,
                criterion with
                {
                    Limits = criterion.Limits.Select(_ => new CriterionLimits(
                        [new(10, leastMcdPerM2), new(60, late)],
                        IsKnown: true
                    )),
                }
            )
                .Criteria[0]
                .State;
    }

    [Fact]
    public void What_is_not_known_is_not_judged_and_said_so()
    {
        var guidance = Guided(Piece, "astm-e2072", "jis9097-i", "ul-924", "din67510-1");
        Assert.All(guidance.Criteria, c => Assert.Equal(MarkingState.NotJudged, c.State));
        Assert.Equal(
            [
                "its limits are not known",
                "its test charge is not known",
                "it sets no limit",
                "it sets no limit",
            ],
            guidance.Criteria.Select(c => c.NotJudgedBecause)
        );
        // Limits without a charge are shown; luminances without a limit are.
        Assert.Equal((720, 3, null), Flat(guidance.Criteria[1].Limits.Single()));
        Assert.Empty(guidance.Criteria[0].Limits);
        Assert.Equal([10, 60], guidance.Criteria[3].Limits.Select(l => l.Minutes));
        Assert.True(guidance.Criteria[3].Limits[0].Luminance!.Value.Low > 0);
        Assert.True(guidance.Criteria[3].MinutesTo03McdPerM2!.Value.Low > 60);
        Assert.All(guidance.Criteria, c => Assert.Null(c.Tightest));
    }

    [Fact]
    public void Limits_from_memory_are_known_as_such()
    {
        Assert.True(Guided(Piece, "ibc-1025").Criteria[0].IsFromMemory);
        Assert.False(Guided(Piece, "jis9107-ja").Criteria[0].IsFromMemory);
    }

    [Fact]
    public void The_tightest_limit_is_the_one_the_low_end_comes_least_far_to()
    {
        var compared = Guided(Piece, "jis9107-jd").Criteria[0];
        var shares = compared.Limits.Select(l => l.Luminance!.Value.Low!.Value / l.LeastMcdPerM2!.Value);
        Assert.Equal(shares.Min(), compared.Tightest!.LowShareOfLimit!.Value);
    }

    [Fact]
    public void The_own_room_has_the_minutes_that_predict_tells()
    {
        var predicted = (Piece with { LimitMcdM2 = 2 }).Predicted;
        var room = Guided(Piece with { LimitMcdM2 = 2 }).Room!;
        Assert.Equal(predicted.Figures["afterglow.minutes_to_limit"], room.MinutesToLimit.Likely);
        Assert.True(room.MinutesToLimit.Low < room.MinutesToLimit.High);
        Assert.Equal(predicted.ChargedBy, room.ChargedBy);
    }

    [Theory]
    [InlineData(0.7)]
    [InlineData(15)]
    [InlineData(25)]
    public void Daylight_in_terms_of_daylight_is_itself(double minutes)
    {
        var bridge = Guided(Piece with { Steps = TestRecipe.Lamp("daylight-d65", 1000, minutes) }).Bridge!;
        Assert.Equal(minutes, bridge.DaylightMinutes!.Value, tolerance: 1e-6 * minutes);
        Assert.Equal(1000 * minutes / 60, bridge.LuxHours!.Value, tolerance: 1e-9 * minutes * 1000);
    }

    [Fact]
    public void The_same_glow_comes_from_so_many_minutes_of_daylight_and_lux_hours_differ()
    {
        var dim = Piece with { Steps = TestRecipe.Lamp("led-4000", 50, 480) };
        var bridge = Guided(dim).Bridge!;
        var bright = Piece with
        {
            Steps = TestRecipe.Lamp("daylight-d65", 1000, bridge.DaylightMinutes!.Value),
        };
        Assert.Equal(1, bright.At(10) / dim.At(10), tolerance: 1e-6);
        Assert.Equal(bridge.TenMinuteMcdPerM2, dim.At(10), tolerance: 1e-9 * dim.At(10));
        Assert.Equal(400, bridge.LuxHours!.Value, tolerance: 1e-9);
        Assert.True(bridge.DaylightLuxHours < bridge.LuxHours / 3);
    }

    [Fact]
    public void Longer_adds_little_exactly_when_it_adds_less_than_a_tenth()
    {
        foreach (double minutes in (double[])[5, 30, 480])
        {
            var charged = Piece with { Steps = TestRecipe.Lamp("led-4000", 50, minutes) };
            var longer = Piece with { Steps = TestRecipe.Lamp("led-4000", 50, 1e5) };
            Assert.Equal(charged.At(10) >= 0.9 * longer.At(10), Guided(charged).Bridge!.LongerAddsLittle);
        }
    }

    [Fact]
    public void As_much_as_daylight_ever_gives_has_no_minutes()
    {
        // Saturated, or beyond it: any long time brings the same.
        foreach (double lx in (double[])[1000, 50000])
        {
            var full = Piece with { Steps = TestRecipe.Lamp("daylight-d65", lx, 2880) };
            var bridge = Guided(full).Bridge!;
            Assert.Null(bridge.DaylightMinutes);
            Assert.Null(bridge.DaylightLuxHours);
            Assert.InRange(bridge.DaylightMinutesTo90Percent!.Value, 1, 120);
        }
        Assert.Null(Guided(Piece with { Steps = TestRecipe.OwnLeds(480) }).Bridge!.LuxHours);
    }

    [Fact]
    public void A_piece_without_pigment_is_dark_and_below_every_limit()
    {
        var guidance = Guided(Piece with { Layers = TestRecipe.Clear(2) }, "jis9107-ja", "ul-1994");
        Assert.Equal(MarkingState.Below, guidance.Criteria[0].State);
        Assert.All(guidance.Criteria[0].Limits, l => Assert.Equal(0, l.Luminance!.Value.High));
        Assert.Null(guidance.Room);
        Assert.Null(guidance.Bridge);
    }

    [Theory]
    [InlineData("mine", "no lamp 'no-such-lamp'")]
    [InlineData("ultraviolet", "gives hardly any visible light")]
    public void A_criterion_whose_lamp_cannot_be_computed_is_an_error(string name, string text)
    {
        var guidance = Guided(Piece, name);
        var problem = Assert.Single(guidance.Problems);
        Assert.Equal(Severity.Error, problem.Severity);
        Assert.Equal($"materials/criteria/{name}.yaml", problem.File);
        Assert.Contains(text, problem.Text, StringComparison.Ordinal);
        Assert.Equal(MarkingState.NotJudged, guidance.Criteria[0].State);
    }

    [Fact]
    public void Drawn_bands_hold_the_likely_glow_and_are_wider_than_those_of_the_bounding_runs()
    {
        var piece = TestRecipe.Predictor.Check(Piece.Document).Piece!;
        Criterion[] criteria = [Shelf.Criterion("jis9107-ja").Material!];
        var bounded = MarkingGuide
            .Of(piece, TestRecipe.Predictor, criteria, stop: TestContext.Current.CancellationToken)
            .Criteria[0];
        var drawn = MarkingGuide
            .Of(piece, TestRecipe.Predictor, criteria, draws: 64, TestContext.Current.CancellationToken)
            .Criteria[0];
        foreach (var (one, other) in bounded.Limits.Zip(drawn.Limits))
        {
            var (wide, narrow) = (other.Luminance!.Value, one.Luminance!.Value);
            Assert.Equal(narrow.Likely!.Value, wide.Likely!.Value, tolerance: 1e-9 * narrow.Likely.Value);
            Assert.InRange(wide.Likely!.Value, wide.Low!.Value, wide.High!.Value);
            Assert.True(wide.High - wide.Low > narrow.High - narrow.Low);
        }
    }

    [Fact]
    public void A_guide_that_is_stopped_ends()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var piece = TestRecipe.Predictor.Check(Piece.Document).Piece!;
        Assert.Throws<OperationCanceledException>(() =>
            MarkingGuide.Of(
                piece,
                TestRecipe.Predictor,
                [Shelf.Criterion("jis9107-ja").Material!],
                stop: stop.Token
            )
        );
    }

    private static MarkingGuidance Guided(TestRecipe recipe, params string[] criteria) =>
        GuidedBy(recipe, [.. criteria.Select(name => Shelf.Criterion(name).Material!)]);

    private static MarkingGuidance GuidedBy(TestRecipe recipe, params Criterion[] criteria) =>
        MarkingGuide.Of(TestRecipe.Predictor.Check(recipe.Document).Piece!, TestRecipe.Predictor, criteria);

    private static (double, double?, double?) Flat(LimitComparison limit) =>
        (limit.Minutes, limit.LeastMcdPerM2, limit.Luminance?.Likely);

    private static string Own(string lamp) =>
        $"""
            material_format: 1
            kind: criterion
            title: Invented criterion
            document:
              value: Invented
              source: assumed
            clause: unknown
            charge:
              lamp:
                value: {lamp}
                source: assumed
              illuminance_lx:
                value: 100
                source: assumed
              minutes:
                value: 10
                source: assumed
            limits:
              mcd_m2_at_minutes:
                10: 20
              source: assumed

            """;
}
