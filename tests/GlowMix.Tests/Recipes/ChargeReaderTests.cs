using GlowMix.Documents;
using GlowMix.Recipes;

namespace GlowMix.Tests.Recipes;

public class ChargeReaderTests
{
    [Fact]
    public void Own_LEDs_lamps_and_darkness_are_told_apart()
    {
        var charge = Read(
            "light: own-leds, with: led-4000, illuminance_lx: 50, minutes: 480",
            "light: dark, minutes: 60",
            "light: uv-365, irradiance_w_m2: 10, minutes: 1"
        ).Recipe!.Charge;
        Assert.Equal(
            [(true, "led-4000"), (false, null), (false, "uv-365")],
            charge.Steps.Select(s => (s.OwnLeds, s.LampName))
        );
        Assert.Equal([false, true, false], charge.Steps.Select(s => s.IsDark));
        Assert.Equal(10, charge.Steps[2].IrradianceWPerM2);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("-1")]
    public void A_step_takes_time(string minutes) =>
        AssertProblem(
            $"light: own-leds, minutes: {minutes}",
            $"minutes is {minutes}; allowed: above 0, up to 525600"
        );

    [Fact]
    public void A_lamp_needs_its_strength() =>
        AssertProblem("light: fl11, minutes: 1", RecipeTexts.LampNeedsStrength("fl11"));

    [Fact]
    public void A_second_light_needs_its_strength() =>
        AssertProblem("light: own-leds, with: fl11, minutes: 1", RecipeTexts.LampNeedsStrength("fl11"));

    [Fact]
    public void Lux_and_watts_exclude_each_other() =>
        AssertProblem(
            "light: fl11, illuminance_lx: 5, irradiance_w_m2: 5, minutes: 1",
            ProblemTexts.NotBoth("irradiance_w_m2", "illuminance_lx")
        );

    [Fact]
    public void Own_LEDs_have_no_illuminance() =>
        AssertProblem(
            "light: own-leds, illuminance_lx: 5, minutes: 1",
            RecipeTexts.StrengthWithoutLamp("illuminance_lx", "own-leds")
        );

    [Fact]
    public void A_second_light_stands_beside_own_LEDs_only() =>
        AssertProblem(
            "light: fl11, with: fl2, illuminance_lx: 5, minutes: 1",
            RecipeTexts.WithNeedsOwnLeds("fl11")
        );

    [Fact]
    public void A_charge_is_not_all_dark() => AssertProblem("light: dark, minutes: 1", RecipeTexts.NoLitStep);

    [Fact]
    public void A_dark_step_at_the_end_is_warned_about()
    {
        var document = Read("light: own-leds, minutes: 1", "light: dark, minutes: 1");
        Assert.NotNull(document.Recipe);
        Assert.Equal(
            [new Problem("a.yaml", new(12, 7), RecipeTexts.DarkAtTheEnd, Severity.Warning)],
            document.Problems
        );
    }

    [Fact]
    public void A_settled_day_has_24_hours() =>
        RecipeReaderTests.AssertProblems(
            Sample.OneLayer
                + "charge:\n  start: settled-daily\n  steps:\n    - {light: own-leds, minutes: 1441}\n",
            "a.yaml:10:10: " + RecipeTexts.LongerThanADay(1441)
        );

    [Fact]
    public void Hours_are_refused_with_the_minutes_to_write()
    {
        var document = Read("light: own-leds, hours: 8");
        Assert.Equal(
            [ProblemTexts.Missing("minutes", "charge.steps.1"), "unknown key 'hours'; write minutes: 480"],
            document.Problems.Select(p => p.Text)
        );
    }

    private static RecipeDocument Read(params string[] steps) =>
        Sample.With("charge:\n  steps:\n" + string.Concat(steps.Select(s => $"    - {{{s}}}\n")));

    private static void AssertProblem(string step, string problem) =>
        Assert.Equal([problem], Read(step).Problems.Select(p => p.Text));
}
