using System.Collections.ObjectModel;
using System.Globalization;
using GlowMix.Recipes;

namespace GlowMix.Predictions;

/// <summary>All figures of a prediction, in the order in which they are written.</summary>
public static class FigureCatalogue
{
    /// <summary>Minutes after the last light at which luminance is given.</summary>
    public static IReadOnlyList<double> Minutes { get; } = DecayMinutes.All;

    /// <summary>Causes of the shift, in the order in which they are switched on.</summary>
    public static IReadOnlyList<string> Causes { get; } =
    ["index_matching", "resin_absorption", "pigment_absorption", "pigment_emission"];

    /// <summary>The figure that stands behind the places along the pour.</summary>
    public const string AlongLargestStep = "along_largest_step_u_prime_v_prime";

    /// <summary>Every figure, in order.</summary>
    public static IReadOnlyList<Figure> All { get; } = Build();

    private static readonly ReadOnlyDictionary<string, Figure> ByName = All.ToDictionary(f => f.Name)
        .AsReadOnly();

    /// <summary>A figure by its full name, or null.</summary>
    public static Figure? Find(string name) => ByName.GetValueOrDefault(name);

    /// <summary>A figure by its name and, for a figure of a decay, its minutes; null where there is none.</summary>
    public static Figure? Find(string family, double? atMinutes) =>
        Find(atMinutes is double minutes ? AtMinutes(family, minutes) : family);

    /// <summary>The full name of a figure at stated minutes.</summary>
    public static string AtMinutes(string family, double minutes) => $"{family}[{MinutesKey(minutes)}]";

    /// <summary>How minutes are written as a key: '0.5', '1', '10'.</summary>
    public static string MinutesKey(double minutes) => minutes.ToString(CultureInfo.InvariantCulture);

    private static Figure[] Build()
    {
        var all = new List<Figure>();
        void Add(string name, string unit, double? at = null) =>
            all.Add(new Figure(name, unit, all.Count, at));

        foreach (var (name, unit) in White("bare"))
        {
            Add(name, unit);
        }
        Add("bare.flux_lm", "lm");

        Add("lit.cct_k", "K");
        Add("lit.duv", "");
        Add("lit.x", "");
        Add("lit.y", "");
        Add("lit.u_prime", "");
        Add("lit.v_prime", "");
        Add("lit.ra", "");
        Add("lit.r9", "");
        Add("lit.flux_lm", "lm");
        Add("lit.flux_kept_percent", "%");
        Add("lit.luminous_efficacy_lm_w", "lm/W");
        Add("lit.scotopic_photopic_ratio", "");
        Add("lit.green_share_percent", "%");
        Add("lit.shift_k", "K");
        Add("lit.shift_u_prime_v_prime", "");
        Add("lit.blue_absorbed_by_pigment_percent", "%");
        Add("lit.blue_absorbed_by_resin_percent", "%");
        Add("lit.blue_absorbed_by_board_percent", "%");
        Add("lit.blue_taken_back_by_package_percent", "%");
        Add("lit.blue_escaped_percent", "%");
        foreach (var (family, unit) in new[] { ("k", "K"), ("u_prime", ""), ("v_prime", "") })
        {
            foreach (string cause in Causes)
            {
                Add($"lit.shift_by_cause_{family}.{cause}", unit);
            }
        }
        Add(AlongLargestStep, "");

        foreach (string sight in new[] { "", "scotopic_", "mesopic_" })
        {
            foreach (double minutes in Minutes)
            {
                Add(AtMinutes($"afterglow.{sight}luminance_mcd_m2", minutes), "mcd/m²", minutes);
            }
        }
        Add("afterglow.minutes_to_0_3_mcd_m2", "min");
        Add("afterglow.minutes_to_limit", "min");
        Add("afterglow.capacity_filled_percent", "%");
        Add("afterglow.capacity_filled_bottom_percent", "%");
        Add("afterglow.capacity_filled_surface_percent", "%");
        Add("afterglow.charge_minutes_to_90_percent", "min");
        Add("afterglow.x", "");
        Add("afterglow.y", "");

        Add("casting.mix_volume_ml", "ml");
        Add("casting.part_a_g", "g");
        Add("casting.part_b_g", "g");
        Add("casting.pigment_g", "g");
        Add("casting.pigment_g_per_100g_resin", "g per 100 g");
        Add("casting.pigment_volume_percent", "%");
        Add("casting.viscosity_mpa_s", "mPa·s");
        Add("casting.settled_mm", "mm");
        Add("casting.degas_window_min", "min");
        Add("casting.cost", "");
        return [.. all];
    }

    private static (string Name, string Unit)[] White(string part) =>
        [
            ($"{part}.cct_k", "K"),
            ($"{part}.duv", ""),
            ($"{part}.x", ""),
            ($"{part}.y", ""),
            ($"{part}.ra", ""),
            ($"{part}.r9", ""),
        ];
}
