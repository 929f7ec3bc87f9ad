using GlowMix.Recipes;

namespace GlowMix.Tests.Recipes;

public class BalanceReaderTests
{
    [Fact]
    public void Choices_are_ranges_and_values_under_full_paths()
    {
        var choices = Read(
            "key: loading_percent, from: 5, to: 40",
            "key: layers.layer-1.pigment, any_of: [green-aluminate, shelf/blue.yaml]",
            "key: grain_median_um, any_of: [20, 4e1]",
            "key: board.material, any_of: [white-mask]"
        ).Recipe!.Balance.Choices;
        Assert.Equal(
            [
                "layers.layer-1.loading_percent",
                "layers.layer-1.pigment",
                "layers.layer-1.grain_median_um",
                "board.material",
            ],
            choices.Select(c => c.KeyPath)
        );
        Assert.Equal((5, 40), (choices[0].From, choices[0].To));
        Assert.Equal(["green-aluminate", "shelf/blue.yaml"], choices[1].AnyOf);
        Assert.Equal(["20", "40"], choices[2].AnyOf);
    }

    [Theory]
    [InlineData("key: loading_percent, from: -5, to: 40", "from is -5; allowed: 0 to 80")]
    [InlineData("key: loading_percent, from: 5, to: 5", "to is 5; needed: more than from, 5")]
    [InlineData(
        "key: loading_percent, from: 5",
        "the choice of layers.layer-1.loading_percent needs 'from' and 'to', or 'any_of'"
    )]
    [InlineData(
        "key: loading_percent, from: 5, to: 9, any_of: [3]",
        "any_of and from exclude each other; write one of them"
    )]
    [InlineData("key: grain_median_um, any_of: [20, 900]", "any_of is 900; allowed: 0.5 to 300")]
    [InlineData(
        "key: pigment, from: 5, to: 9",
        "layers.layer-1.pigment has no numbers; write 'any_of' instead of 'from'"
    )]
    [InlineData("key: pigment", "the choice of layers.layer-1.pigment needs 'any_of'")]
    [InlineData("key: pigment, any_of: [a, a]", "any_of lists 'a' twice")]
    [InlineData("key: pigment, any_of: []", "any_of has 0 items; allowed: 1 to 30")]
    [InlineData(
        "key: layers.glow.pigment, any_of: [a]",
        "the recipe has no key 'layers.glow.pigment'; did you mean 'layers.layer-1.pigment'?"
    )]
    public void A_choice_that_offers_nothing_sensible_is_refused(string choice, string problem) =>
        Assert.Equal([problem], Read(choice).Problems.Select(p => p.Text));

    [Fact]
    public void What_the_search_cannot_turn_is_refused() =>
        Assert.Equal(
            [RecipeTexts.NotChoosable("title")],
            Read("key: title, any_of: [a]").Problems.Select(p => p.Text)
        );

    [Fact]
    public void The_same_choice_twice_is_refused() =>
        Assert.Equal(
            [RecipeTexts.ListedTwice("choices", "layers.layer-1.depth_mm")],
            Read("key: depth_mm, from: 1, to: 2", "key: layers.layer-1.depth_mm, any_of: [1]")
                .Problems.Select(p => p.Text)
        );

    [Fact]
    public void A_clear_layer_has_no_loading_to_choose() =>
        Assert.Equal(
            [RecipeTexts.ChoiceIsNotWritten("layers.layer-1.loading_percent", "layers.layer-1.pigment")],
            Sample
                .Read(
                    "format: 1\nresin: r\nled: {material: l}\nlayers: [{depth_mm: 1}]\nbalance:\n  choices: [{key: loading_percent, from: 1, to: 2}]\n"
                )
                .Problems.Select(p => p.Text)
        );

    [Fact]
    public void The_glow_is_judged_at_minutes_of_the_decay_table() =>
        Assert.Equal(
            [RecipeTexts.NotDecayMinutes("glow_at_minutes", 61)],
            Sample.With("balance:\n  glow_at_minutes: 61\n").Problems.Select(p => p.Text)
        );

    private static RecipeDocument Read(params string[] choices) =>
        Sample.With("balance:\n  choices:\n" + string.Concat(choices.Select(s => $"    - {{{s}}}\n")));
}
