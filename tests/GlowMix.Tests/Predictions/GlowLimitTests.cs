namespace GlowMix.Tests.Predictions;

/// <summary>The one reason that a prediction names for its glow, in pieces made to have it.</summary>
public class GlowLimitTests
{
    private static readonly TestRecipe OverPackages = new()
    {
        Led = "flat-warm-white-3000",
        Layers = TestRecipe.Glow(0.3, 10),
    };

    [Fact]
    public void A_short_charge_is_told_with_the_time_it_needs() =>
        Assert.Matches(
            @"^the charge of 1 min by 1000 lx of daylight-d65; \d+(\.\d)? min would bring 90 % of all it can$",
            (OverPackages with { Steps = TestRecipe.Lamp("daylight-d65", 1000, 1) }).Predicted.LimitedBy
        );

    [Fact]
    public void Long_weak_light_limits_by_its_strength() =>
        Starts("the light's strength", OverPackages with { Steps = TestRecipe.Lamp("fl11", 5, 10_000) });

    [Fact]
    public void A_deep_loaded_pour_shades_itself() =>
        Starts("shade", OverPackages with { Layers = TestRecipe.Glow(20, 40) });

    [Fact]
    public void Pigment_between_the_packages_gets_what_comes_down_beside_them() =>
        Starts(
            "the light's strength",
            OverPackages with
            {
                Led = "warm-white-3000",
                Layers = TestRecipe.Glow(1, 10),
            }
        );

    [Fact]
    public void A_thin_pour_over_bright_LEDs_wants_more_pigment() =>
        Starts("the amount of pigment", OverPackages);

    [Fact]
    public void Packages_in_air_light_no_pigment() =>
        Starts(
            "no light reaches the pigment",
            OverPackages with
            {
                Led = "warm-white-3000",
                Layers = TestRecipe.Glow(0.7, 10),
            }
        );

    private static void Starts(string reason, TestRecipe recipe) =>
        Assert.StartsWith(reason, recipe.Predicted.LimitedBy, StringComparison.Ordinal);
}
