using GlowMix.Predictions;

namespace GlowMix.Tests.Predictions;

/// <summary>Charge and glow through the whole model.</summary>
public class AfterglowTests
{
    private static readonly TestRecipe Piece = new() { Steps = TestRecipe.Lamp("daylight-d65", 300, 20) };

    public static TheoryData<string, double[]> Classes =>
        new()
        {
            // Three trade pages on ISO 17398:2004 and the association's classes; limits taken as points of a sheet.
            { "green-aluminate-class-a", [108, 23, 7, 3] },
            { "green-aluminate-class-b", [210, 50, 15, 7] },
            { "green-aluminate-class-c", [690, 140, 45, 20] },
            { "green-aluminate-class-d", [1100, 260, 85, 35] },
            { "green-aluminate-class-e", [1800, 400, 120, 55] },
        };

    [Theory, MemberData(nameof(Classes))]
    public void A_recipe_that_is_the_sheet_of_a_class_gives_its_points(string pigment, double[] mcdPerM2)
    {
        var sheet = new GlowMix.Materials.Shelf().Pigment(pigment).Material!.Sheet;
        var sample = new TestRecipe
        {
            // So few windows that the floor is the sheet's backing.
            WindowShare = 1e-4,
            Board = sheet.Backing.Value,
            Resin = sheet.Resin.Value,
            Layers = TestRecipe.Glow(sheet.DepthMm.Value, sheet.LoadingPercent.Value, pigment),
            Steps = TestRecipe.Lamp(
                sheet.Lamp.Value,
                sheet.IlluminanceLx.Value,
                sheet.Minutes.Value,
                sheet.TemperatureC.Value
            ),
            DarknessC = sheet.TemperatureC.Value,
        }.Figures;
        double[] minutes = [2, 10, 30, 60];
        Assert.All(
            minutes.Zip(mcdPerM2),
            point =>
                Assert.Equal(
                    point.Second,
                    sample["afterglow.luminance_mcd_m2", point.First]!.Value,
                    tolerance: 0.03 * point.Second
                )
        );
    }

    [Fact]
    public void After_one_charge_a_warmer_darkness_is_brighter_early_and_shorter_late()
    {
        var cold = Piece with { DarknessC = 0 };
        var warm = Piece with { DarknessC = 35 };
        Assert.True(warm.At(0.5) > cold.At(0.5));
        Assert.True(warm.At(1) > cold.At(1));
        Assert.True(warm.At(480) < cold.At(480));
        Assert.True(Minutes(warm, "0_3_mcd_m2") < Minutes(cold, "0_3_mcd_m2"));
    }

    [Fact]
    public void Charged_shortly_and_weakly_in_the_frost_it_is_dimmer_for_an_hour()
    {
        var mild = Piece with { Steps = TestRecipe.Lamp("fl11", 11, 60) };
        var frost = mild with { Steps = TestRecipe.Lamp("fl11", 11, 60, temperatureC: -20), DarknessC = -20 };
        Assert.All(
            FigureCatalogue.Minutes.Where(m => m <= 60),
            m => Assert.True(frost.At(m) < mild.At(m), $"at {m} min")
        );
    }

    [Theory]
    [InlineData(10)]
    [InlineData(60)]
    [InlineData(480)]
    public void Minutes_to_a_limit_are_where_the_curve_meets_it(double minutes)
    {
        double there = Piece.At(minutes);
        Assert.Equal(
            minutes,
            Minutes(Piece with { LimitMcdM2 = Math.Round(there, 9) }, "limit"),
            tolerance: 1e-5 * minutes
        );
    }

    [Fact]
    public void A_limit_it_is_never_above_is_met_at_once() =>
        Assert.Equal(0, Minutes(Piece with { LimitMcdM2 = 10_000 }, "limit"));

    [Fact]
    public void At_the_usual_limit_both_minutes_are_the_same() =>
        Assert.Equal(Minutes(Piece, "0_3_mcd_m2"), Minutes(Piece, "limit"));

    [Fact]
    public void Luminance_falls_all_the_time_and_ever_steeper_in_logarithms()
    {
        // Becquerel's exponent is close to 1 (Chernov et al. 2007, Radiat. Meas. 42, 668, abstract); sheets start below it
        // and end above.
        var sheet = Piece with
        {
            Steps = TestRecipe.Lamp("xenon", 1000, 5),
        };
        double[] luminances = [.. FigureCatalogue.Minutes.Select(sheet.At)];
        Assert.Equal(luminances.OrderDescending(), luminances);
        double Slope(double from, double to) => Math.Log(sheet.At(from) / sheet.At(to)) / Math.Log(to / from);
        double[] slopes = [Slope(2, 10), Slope(10, 30), Slope(30, 60), Slope(60, 480)];
        Assert.Equal(slopes.Order(), slopes);
        Assert.InRange(slopes[0], 0.8, 1);
        Assert.InRange(slopes[3], 1.1, 1.6);
    }

    [Fact]
    public void A_day_that_repeats_leaves_no_less_than_the_first_one()
    {
        var first = Piece.Figures;
        var settled = (Piece with { Start = "settled-daily" }).Figures;
        foreach (double minutes in FigureCatalogue.Minutes)
        {
            string at = FigureCatalogue.AtMinutes("afterglow.luminance_mcd_m2", minutes);
            Assert.True(settled[at] >= first[at], at);
        }
        Assert.True(
            settled["afterglow.luminance_mcd_m2", 480] > 1.02 * first["afterglow.luminance_mcd_m2", 480]
        );
        Assert.True(
            settled["afterglow.capacity_filled_percent"] > first["afterglow.capacity_filled_percent"]
        );
    }

    [Fact]
    public void A_stronger_or_longer_light_leaves_no_less()
    {
        double Glow(double lx, double minutes) =>
            (Piece with { Steps = TestRecipe.Lamp("daylight-d65", lx, minutes) }).At(60);
        Assert.True(Glow(300, 20) > Glow(100, 20));
        Assert.True(Glow(300, 60) > Glow(300, 20));
    }

    [Fact]
    public void Own_LEDs_with_a_lamp_leave_no_less_than_either()
    {
        const string with = "      with: led-4000\n      illuminance_lx: 500\n";
        var both = Piece with { Steps = TestRecipe.OwnLeds(30, with) };
        var own = Piece with { Steps = TestRecipe.OwnLeds(30) };
        var lamp = Piece with { Steps = TestRecipe.Lamp("led-4000", 500, 30) };
        Assert.All(
            FigureCatalogue.Minutes,
            m => Assert.True(both.At(m) >= Math.Max(own.At(m), lamp.At(m)), $"at {m} min")
        );
    }

    [Fact]
    public void Charge_minutes_to_90_percent_charge_to_90_percent()
    {
        double needed = Piece.Figures["afterglow.charge_minutes_to_90_percent"]!.Value;
        double there = (
            Piece with
            {
                Steps = TestRecipe.Lamp("daylight-d65", 300, Math.Round(needed, 6)),
            }
        ).At(10);
        double endless = (Piece with { Steps = TestRecipe.Lamp("daylight-d65", 300, 500_000) }).At(10);
        Assert.Equal(0.9, there / endless, tolerance: 1e-5);
    }

    [Fact]
    public void Two_pigments_add_up()
    {
        // A pigment and its twin under another name: two ladders, two sets of traps, one answer.
        string layers = TestRecipe.Glow(1.2, 20) + TestRecipe.Clear(0.4);
        var same = Piece with { Layers = layers + TestRecipe.Glow(0.9, 10) };
        var twins = Piece with { Layers = layers + TestRecipe.Glow(0.9, 10, "green-twin") };
        foreach (
            var figure in FigureCatalogue.All.Where(f =>
                f.Name.StartsWith("afterglow", StringComparison.Ordinal)
            )
        )
        {
            double expected = same.Figures[figure]!.Value;
            Assert.Equal(expected, twins.Figures[figure]!.Value, tolerance: 1e-9 * expected);
        }
    }

    [Fact]
    public void Two_pigments_glow_between_their_colours()
    {
        double X(string layers) => (Piece with { Layers = layers }).Figures["afterglow.x"]!.Value;
        double green = X(TestRecipe.Glow(2.5, 20));
        double blue = X(TestRecipe.Glow(2.5, 20, "blue-green-aluminate"));
        double both = X(TestRecipe.Glow(1.2, 20) + TestRecipe.Glow(1.3, 20, "blue-green-aluminate"));
        Assert.InRange(both, Math.Min(green, blue), Math.Max(green, blue));
    }

    [Fact]
    public void A_glow_of_shorter_waves_looks_brighter_to_the_eye_in_the_dark()
    {
        var figures = Piece.Figures;
        foreach (double minutes in FigureCatalogue.Minutes)
        {
            double photopic = figures["afterglow.luminance_mcd_m2", minutes]!.Value;
            double mesopic = figures["afterglow.mesopic_luminance_mcd_m2", minutes]!.Value;
            double scotopic = figures["afterglow.scotopic_luminance_mcd_m2", minutes]!.Value;
            Assert.True(photopic < mesopic || photopic > 5000);
            Assert.True(mesopic <= scotopic + 1e-12);
            Assert.InRange(scotopic / photopic, 2, 3.2);
        }
    }

    [Fact]
    public void Darkness_after_the_last_light_is_part_of_the_decay()
    {
        var later = Piece with { Steps = Piece.Steps + TestRecipe.Dark(30) };
        Assert.Equal(Piece.At(60), later.At(60), tolerance: 1e-9 * Piece.At(60));
    }

    private static double Minutes(TestRecipe recipe, string to) =>
        recipe.Figures[$"afterglow.minutes_to_{to}"]!.Value;
}
