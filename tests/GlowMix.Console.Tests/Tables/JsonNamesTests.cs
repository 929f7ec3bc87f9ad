using System.Text.Json;

namespace GlowMix.Console.Tests.Tables;

/// <summary>The names that other programs rely on, typed here by hand: a name that changes in the catalogue fails here.</summary>
public sealed class JsonNamesTests : IDisposable
{
    private static readonly string[] minutes =
    [
        "0.5",
        "1",
        "2",
        "5",
        "10",
        "20",
        "30",
        "60",
        "90",
        "120",
        "240",
        "480",
    ];

    private static readonly string[] causes =
    [
        "index_matching",
        "resin_absorption",
        "pigment_absorption",
        "pigment_emission",
    ];

    private static readonly string[] states = ["met", "missed", "too_close", "not_judged"];

    private readonly CommandLine line = new();

    public void Dispose() => line.Dispose();

    [Fact]
    public void A_shipped_recipe_has_every_name_and_no_other()
    {
        using var json = Predicted("stair-edge.yaml");
        var root = json.RootElement;
        Names(
            root,
            "recipe bare lit along along_largest_step_u_prime_v_prime afterglow casting bands targets warnings"
        );
        Names(root.GetProperty("bare"), "cct_k duv x y ra r9 flux_lm");
        var lit = root.GetProperty("lit");
        Names(
            lit,
            "cct_k duv x y u_prime v_prime ra r9 flux_lm flux_kept_percent luminous_efficacy_lm_w "
                + "scotopic_photopic_ratio green_share_percent shift_k shift_u_prime_v_prime "
                + "blue_absorbed_by_pigment_percent blue_absorbed_by_resin_percent blue_absorbed_by_board_percent "
                + "blue_taken_back_by_package_percent blue_escaped_percent "
                + "shift_by_cause_k shift_by_cause_u_prime shift_by_cause_v_prime"
        );
        foreach (
            string shift in new[] { "shift_by_cause_k", "shift_by_cause_u_prime", "shift_by_cause_v_prime" }
        )
        {
            Assert.Equal(causes, NamesOf(lit.GetProperty(shift)));
        }
        var afterglow = root.GetProperty("afterglow");
        Names(
            afterglow,
            "luminance_mcd_m2 scotopic_luminance_mcd_m2 mesopic_luminance_mcd_m2 minutes_to_0_3_mcd_m2 "
                + "minutes_to_limit capacity_filled_percent capacity_filled_bottom_percent "
                + "capacity_filled_surface_percent charge_minutes_to_90_percent x y"
        );
        foreach (string sight in new[] { "", "scotopic_", "mesopic_" })
        {
            Assert.Equal(minutes, NamesOf(afterglow.GetProperty($"{sight}luminance_mcd_m2")));
        }
        Names(
            root.GetProperty("casting"),
            "mix_volume_ml part_a_g part_b_g pigment_g pigment_g_per_100g_resin pigment_volume_percent "
                + "viscosity_mpa_s settled_mm degas_window_min cost"
        );
    }

    [Fact]
    public void The_lists_name_what_is_in_them()
    {
        using var json = Predicted("stair-edge.yaml");
        var root = json.RootElement;
        foreach (var place in root.GetProperty("along").EnumerateArray())
        {
            Names(place, "place depth_mm cct_k duv flux_lm luminance_10_min_mcd_m2");
        }
        Assert.Equal(
            ["shallow", "nominal", "deep"],
            root.GetProperty("along").EnumerateArray().Select(p => p.GetProperty("place").GetString()!)
        );
        var bands = root.GetProperty("bands");
        Names(bands.GetProperty("lit.cct_k"), "low likely high");
        Names(bands.GetProperty("afterglow.luminance_mcd_m2[0.5]"), "low likely high");
        Assert.Equal(2, root.GetProperty("targets").GetArrayLength());
        foreach (var target in root.GetProperty("targets").EnumerateArray())
        {
            Assert.Equal(
                "figure at_minutes at_least at_most value state share_of_draws margin",
                string.Join(' ', NamesOf(target).Take(8))
            );
            Assert.Contains(target.GetProperty("state").GetString(), states);
        }
        foreach (var warning in root.GetProperty("warnings").EnumerateArray())
        {
            Names(warning, "code figure text");
        }
    }

    [Theory]
    [InlineData("clear-tread.yaml")]
    [InlineData("shortest.yaml")]
    public void What_does_not_exist_is_null_under_its_name(string recipe)
    {
        using var full = Predicted("stair-edge.yaml");
        using var json = Predicted(recipe);
        foreach (string part in new[] { "bare", "lit", "afterglow", "casting" })
        {
            Assert.Equal(
                NamesOf(full.RootElement.GetProperty(part)),
                NamesOf(json.RootElement.GetProperty(part))
            );
        }
        bool isClear = recipe == "clear-tread.yaml";
        Assert.Equal(
            isClear ? JsonValueKind.Null : JsonValueKind.Number,
            json.RootElement.GetProperty("afterglow").GetProperty("minutes_to_0_3_mcd_m2").ValueKind
        );
        Assert.Equal(
            isClear ? JsonValueKind.Number : JsonValueKind.Null,
            json.RootElement.GetProperty("casting").GetProperty("mix_volume_ml").ValueKind
        );
    }

    private JsonDocument Predicted(string recipe)
    {
        string path = Path.Combine(TopFolder.Path, "recipes", recipe);
        Assert.Equal(ExitCode.Done, line.Run("predict", path, "--quick", "--json"));
        return JsonDocument.Parse(line.Out);
    }

    private static void Names(JsonElement element, string names) =>
        Assert.Equal(names, string.Join(' ', NamesOf(element)));

    private static IEnumerable<string> NamesOf(JsonElement element) =>
        element.EnumerateObject().Select(p => p.Name);
}
