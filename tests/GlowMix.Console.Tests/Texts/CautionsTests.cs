using GlowMix.Console.Texts;
using GlowMix.Materials;
using GlowMix.Pieces;
using GlowMix.Recipes;

namespace GlowMix.Console.Tests.Texts;

public sealed class CautionsTests
{
    [Theory]
    [InlineData("safety sheets come first")]
    [InlineData("sensitise skin and lungs")]
    [InlineData("Never sand, heat or spray")]
    [InlineData("isocyanate")]
    [InlineData("dust of sanding or drilling the cured piece")]
    [InlineData("heats itself")]
    [InlineData("made for vacuum")]
    [InlineData("LEDs run warmer")]
    [InlineData("mains")]
    [InlineData("slippery")]
    [InlineData("nosing rules are not judged")]
    [InlineData("reaction-to-fire rules of escape routes are not judged")]
    public void What_holds_for_every_piece_is_always_there(string words) =>
        Assert.Contains(words, string.Join('\n', Cautions.Of(PieceOf())), StringComparison.Ordinal);

    [Theory]
    [InlineData("polyurethane-clear", "green-aluminate", "fl11", "Part B holds isocyanate")]
    [InlineData("epoxy-clear-slow", "green-sulfide", "fl11", "hydrogen sulphide, which is poisonous")]
    [InlineData("epoxy-clear-slow", "green-aluminate", "uv-365", "Do not look into it")]
    public void What_a_material_calls_for_comes_from_its_file(
        string resin,
        string pigment,
        string lamp,
        string words
    )
    {
        Assert.Contains(
            words,
            string.Join('\n', Cautions.Of(PieceOf(resin, pigment, lamp))),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain(
            words,
            string.Join('\n', Cautions.Of(PieceOf("silicone-clear"))),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void No_vacuum_no_vessel() =>
        Assert.DoesNotContain(
            "vacuum",
            string.Join('\n', Cautions.Of(PieceOf() with { VacuumMin = 0 })),
            StringComparison.Ordinal
        );

    [Fact]
    public void Whoever_lives_with_a_piece_reads_of_use_and_not_of_the_bench()
    {
        string words = string.Join('\n', Cautions.OfUse(PieceOf(lamp: "uv-365")));
        Assert.All(
            (string[])
                [
                    "LEDs run warmer",
                    "mains",
                    "slippery",
                    "reaction-to-fire",
                    "drilling",
                    "Do not look into it",
                ],
            told => Assert.Contains(told, words, StringComparison.OrdinalIgnoreCase)
        );
        Assert.All(
            (string[])["Uncured", "vacuum", "hardener", "stir", "heats itself"],
            bench => Assert.DoesNotContain(bench, words, StringComparison.OrdinalIgnoreCase)
        );
    }

    private static Piece PieceOf(
        string resin = "epoxy-clear-slow",
        string pigment = "green-aluminate",
        string lamp = "fl11"
    )
    {
        string strength = lamp.StartsWith("uv", StringComparison.Ordinal)
            ? "irradiance_w_m2: 10"
            : "illuminance_lx: 100";
        var document = RecipeDocument.Read(
            $"""
            format: 1
            resin: {resin}
            led:
              material: warm-white-3000
            layers:
              - depth_mm: 2
                pigment: {pigment}
                loading_percent: 10
            charge:
              steps:
                - light: {lamp}
                  {strength}
                  minutes: 5

            """,
            "a.yaml"
        );
        return PieceAssembly.Of(document, new Shelf()).Piece!;
    }
}
