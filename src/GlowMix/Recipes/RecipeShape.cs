using System.Collections.Immutable;
using GlowMix.Documents.Shapes;
using GlowMix.Materials;

namespace GlowMix.Recipes;

/// <summary>What a recipe may hold, worked out of <see cref="RecipeKeys"/>.</summary>
public static class RecipeShape
{
    private const int MostLayers = LayersReader.MostLayers;

    private static readonly ImmutableArray<string> Needed =
    [
        "format",
        "resin",
        "led",
        "layers",
        "layers.*.depth_mm",
        "charge.steps.*.light",
        "charge.steps.*.minutes",
        "targets.*.figure",
        "balance.choices.*.key",
    ];

    /// <summary>The whole recipe.</summary>
    public static MappingShape Whole { get; } = Section("");

    private static MappingShape Section(string section)
    {
        var keys = ImmutableArray.CreateBuilder<KeyShape>();
        foreach (string name in RecipeKeys.NamesIn(section))
        {
            string path = section.Length == 0 ? name : $"{section}.{name}";
            keys.Add(new(name, Of(path), RecipeKeyWords.Of(path), Needed.Contains(path)));
        }
        return new(keys.ToImmutable())
        {
            OneNeededOf = section switch
            {
                "led" =>
                [
                    ["material", "spectrum", "cct_k"],
                ],
                "targets.*" =>
                [
                    ["at_least", "at_most"],
                ],
                _ => [],
            },
            Exclusive = section switch
            {
                "led" => [("material", "spectrum"), ("material", "cct_k"), ("spectrum", "cct_k")],
                "layers.*" =>
                [
                    ("loading_percent", "loading_g_per_100g_resin"),
                    ("grain_median_um", "grain_from_um"),
                ],
                "charge.steps.*" => [("illuminance_lx", "irradiance_w_m2")],
                "balance.choices.*" => [("any_of", "from"), ("any_of", "to")],
                _ => [],
            },
        };
    }

    private static Shape Of(string path) =>
        RecipeKeys.NamesIn(path) switch
        {
            ["*"] => new ListShape(
                Section(path + ".*"),
                path == "targets" ? 0 : 1,
                path == "layers" ? MostLayers : null
            ),
            { Count: > 0 } => Section(path),
            _ => Of(RecipeKeys.Find(path)!),
        };

    private static Shape Of(RecipeKey key) =>
        key.Kind switch
        {
            RecipeKeyKind.Number => new NumberShape(key.Range),
            RecipeKeyKind.WholeNumber => new NumberShape(key.Range, IsWhole: true),
            RecipeKeyKind.Minutes => new NumberShape(key.Range) { Only = [.. DecayMinutes.All] },
            RecipeKeyKind.Word => new TextShape { Only = key.Words },
            RecipeKeyKind.Material => new TextShape { Known = Shelf.ShippedNames(KindOf(key.Path)) },
            RecipeKeyKind.List when key.Path == "criteria" => new ListShape(
                new TextShape { Known = Shelf.ShippedNames(MaterialKind.Criterion) },
                Least: 0
            ),
            RecipeKeyKind.List => new ListShape(
                new EitherShape([new NumberShape(Documents.NumberRange.Any), new TextShape()])
            ),
            _ => new TextShape { Known = KnownTexts(key.Path) },
        };

    private static MaterialKind KindOf(string path) =>
        path switch
        {
            "resin" => MaterialKind.Resin,
            "led.material" => MaterialKind.Led,
            "board.material" => MaterialKind.Board,
            _ => MaterialKind.Pigment,
        };

    private static ImmutableArray<string> KnownTexts(string path) =>
        path switch
        {
            "charge.steps.*.light" => ["own-leds", "dark", .. Shelf.ShippedNames(MaterialKind.Lamp)],
            "charge.steps.*.with" => Shelf.ShippedNames(MaterialKind.Lamp),
            _ => [],
        };
}
