using System.Collections.Immutable;
using System.Collections.ObjectModel;
using GlowMix.Documents;

namespace GlowMix.Recipes;

/// <summary>
/// Every key a recipe may hold, in canonical order, with what its value may be. The reader, the insertion of a key, the
/// search for a balance and the schema all take it from here. Ranges are wide: what pours, not what is wise.
/// </summary>
public static class RecipeKeys
{
    private static readonly NumberRange Millimetres = NumberRange.Above(0, 100_000);
    private static readonly NumberRange ToleranceMm = NumberRange.Between(0, 100);
    private static readonly NumberRange ToleranceShare = NumberRange.Between(0, 100);
    private static readonly NumberRange Milliamperes = NumberRange.Above(0, 20_000);
    private static readonly NumberRange GrainUm = NumberRange.Between(0.5, 300);
    private static readonly NumberRange WhiteK = NumberRange.Between(1500, 20_000);
    private static readonly NumberRange SurroundingsC = NumberRange.Between(-40, 80);
    private static readonly NumberRange Price = NumberRange.Between(0, 1_000_000);

    /// <summary>In canonical order: the order a tidy recipe has.</summary>
    public static ImmutableArray<RecipeKey> All { get; } =
    [
        Whole("format", 1, 1),
        Text("title"),
        Material("resin", choosable: true),
        Text("calibration"),
        Material("led.material", choosable: true),
        Text("led.spectrum"),
        Number("led.cct_k", NumberRange.Between(1800, 12_000)),
        Number("led.ra", NumberRange.Between(50, 100)),
        Number("led.flux_lm", NumberRange.Above(0, 10_000)),
        Number("led.flux_tolerance_percent", ToleranceShare),
        Number("led.at_ma", Milliamperes),
        Number("led.max_ma", Milliamperes),
        Number("led.window_radius_mm", NumberRange.Above(0, 20)),
        Number("led.package_height_mm", NumberRange.Between(0, 20)),
        Number("led.package_length_mm", NumberRange.Above(0, 50)),
        Number("led.package_width_mm", NumberRange.Above(0, 50)),
        Whole("led.count", 1, 100_000),
        Number("led.drive_ma", Milliamperes, choosable: true),
        Number("led.drive_tolerance_percent", ToleranceShare),
        Material("board.material", choosable: true),
        Number("pour.length_mm", Millimetres),
        Number("pour.length_tolerance_mm", ToleranceMm),
        Number("pour.width_mm", Millimetres),
        Number("pour.width_tolerance_mm", ToleranceMm),
        Number("pour.runs_out_mm", NumberRange.Between(0, 100)),
        Word("pour.face", "up", "down"),
        Text("layers.*.name"),
        Number("layers.*.depth_mm", NumberRange.Between(0.01, 200), choosable: true),
        Number("layers.*.depth_tolerance_mm", ToleranceMm),
        Material("layers.*.pigment", choosable: true),
        Number("layers.*.grain_median_um", GrainUm, choosable: true),
        Number("layers.*.grain_tolerance_factor", NumberRange.Between(1, 10)),
        Number("layers.*.grain_gsd", NumberRange.Between(1, 4)),
        Number("layers.*.grain_from_um", GrainUm),
        Number("layers.*.grain_to_um", GrainUm),
        Number("layers.*.loading_percent", NumberRange.Between(0, 80), choosable: true),
        Number("layers.*.loading_g_per_100g_resin", NumberRange.Between(0, 400), choosable: true),
        Number("layers.*.loading_tolerance_points", NumberRange.Between(0, 40)),
        Number("mixing.temperature_c", NumberRange.Between(0, 80)),
        Number("mixing.temperature_tolerance_c", NumberRange.Between(0, 20)),
        Number("mixing.waste_percent", NumberRange.Between(0, 500)),
        Number("mixing.vacuum_min", NumberRange.Between(0, 600)),
        Number("mixing.scale_step_g", NumberRange.Between(0.0001, 1000)),
        Word("charge.start", "empty", "settled-daily"),
        Text("charge.steps.*.light"),
        Text("charge.steps.*.with"),
        Number("charge.steps.*.illuminance_lx", NumberRange.Above(0, 200_000)),
        Number("charge.steps.*.illuminance_tolerance_percent", ToleranceShare),
        Number("charge.steps.*.irradiance_w_m2", NumberRange.Above(0, 10_000)),
        Number("charge.steps.*.irradiance_tolerance_percent", ToleranceShare),
        Number("charge.steps.*.minutes", NumberRange.Above(0, 525_600)),
        Number("charge.steps.*.temperature_c", SurroundingsC),
        Number("darkness.temperature_c", SurroundingsC),
        Number("darkness.limit_mcd_m2", NumberRange.Between(0.001, 10_000)),
        Text("targets.*.figure"),
        Minutes("targets.*.at_minutes"),
        Number("targets.*.at_least", NumberRange.Any),
        Number("targets.*.at_most", NumberRange.Any),
        Number("balance.white_cct_k", WhiteK),
        Minutes("balance.glow_at_minutes"),
        Text("balance.choices.*.key"),
        Number("balance.choices.*.from", NumberRange.Any),
        Number("balance.choices.*.to", NumberRange.Any),
        List("balance.choices.*.any_of"),
        List("criteria"),
        Number("prices.resin_per_kg", Price),
        Number("prices.pigment_per_kg", Price),
    ];

    private static readonly ReadOnlyDictionary<string, RecipeKey> byPath = All.ToDictionary(k => k.Path)
        .AsReadOnly();

    // Names of the keys and sections that may stand in a section, in canonical order.
    private static readonly ReadOnlyDictionary<string, List<string>> namesIn = NamesOfSections().AsReadOnly();

    /// <summary>Pairs of keys of which one replaces the other.</summary>
    internal static ImmutableArray<(string Key, string Other)> Alternatives { get; } =
    [("loading_percent", "loading_g_per_100g_resin"), ("illuminance_lx", "irradiance_w_m2")];

    /// <summary>The key of a path with stars, or null if there is none.</summary>
    public static RecipeKey? Find(string path) => byPath.GetValueOrDefault(path);

    /// <summary>The names that may stand in a section ('' is the top), in canonical order.</summary>
    internal static IReadOnlyList<string> NamesIn(string section) =>
        namesIn.TryGetValue(section, out var names) ? names : [];

    private static RecipeKey Number(string path, NumberRange range, bool choosable = false) =>
        new(path, RecipeKeyKind.Number, range, [], choosable);

    private static RecipeKey Whole(string path, int least, int most) =>
        new(path, RecipeKeyKind.WholeNumber, NumberRange.Between(least, most), [], IsChoosable: false);

    private static RecipeKey Minutes(string path) =>
        new(
            path,
            RecipeKeyKind.Minutes,
            NumberRange.Between(DecayMinutes.All[0], DecayMinutes.All[^1]),
            [],
            false
        );

    private static RecipeKey Word(string path, params ImmutableArray<string> words) =>
        new(path, RecipeKeyKind.Word, NumberRange.Any, words, IsChoosable: false);

    private static RecipeKey Material(string path, bool choosable) =>
        new(path, RecipeKeyKind.Material, NumberRange.Any, [], choosable);

    private static RecipeKey Text(string path) =>
        new(path, RecipeKeyKind.Text, NumberRange.Any, [], IsChoosable: false);

    private static RecipeKey List(string path) =>
        new(path, RecipeKeyKind.List, NumberRange.Any, [], IsChoosable: false);

    private static Dictionary<string, List<string>> NamesOfSections()
    {
        var names = new Dictionary<string, List<string>>();
        foreach (var key in All)
        {
            var words = key.Path.Split('.');
            for (int i = 0; i < words.Length; i++)
            {
                string section = string.Join('.', words[..i]);
                names.TryAdd(section, []);
                if (!names[section].Contains(words[i]))
                {
                    names[section].Add(words[i]);
                }
            }
        }
        return names;
    }
}
