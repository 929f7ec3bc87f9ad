using System.Collections.Frozen;

namespace GlowMix.Recipes;

/// <summary>What each key and section of a recipe is for, in one line.</summary>
public static class RecipeKeyWords
{
    private static readonly FrozenDictionary<string, string> Words = new Dictionary<string, string>
    {
        [""] = "A piece to pour: LEDs on a board, potted in clear resin, perhaps with afterglow pigment.",
        ["format"] = "Number of the format; the first key.",
        ["title"] = "One line for people.",
        ["resin"] = "The casting resin, one a piece: a name of the shelf, or the path of a file.",
        ["calibration"] = "A file of what readings of cured pieces taught, NAME.calibration.yaml.",
        ["led"] =
            "The white LED: of the shelf, from its label (cct_k, ra, flux_lm, at_ma), or from a spectrum.",
        ["led.material"] = "An LED of the shelf, or the path of a file.",
        ["led.spectrum"] = "A file with the bare LED's spectrum: a wavelength in nm and a power a line.",
        ["led.cct_k"] = "Correlated colour temperature on the label, K.",
        ["led.ra"] = "Colour rendering index Ra on the label.",
        ["led.flux_lm"] = "Luminous flux of one bare package at at_ma, lm.",
        ["led.flux_tolerance_percent"] = "Two standard deviations of the flux, %.",
        ["led.at_ma"] = "The current at which the flux is stated, mA.",
        ["led.max_ma"] = "The largest current allowed, mA.",
        ["led.window_radius_mm"] = "Radius of the light-emitting window, mm.",
        ["led.package_height_mm"] = "Height of the package over the board, mm.",
        ["led.package_length_mm"] = "Length of the package, mm.",
        ["led.package_width_mm"] = "Width of the package, mm.",
        ["led.count"] = "Number of packages in the piece.",
        ["led.drive_ma"] = "Current through each package, steady, mA; the rated one if left out.",
        ["led.drive_tolerance_percent"] = "Two standard deviations of the current, %.",
        ["board"] = "What the LEDs sit on.",
        ["board.material"] = "A board of the shelf, or the path of a file.",
        ["pour"] = "The channel, inside.",
        ["pour.length_mm"] = "Length, mm.",
        ["pour.length_tolerance_mm"] = "Two standard deviations of the length, mm.",
        ["pour.width_mm"] = "Width, mm.",
        ["pour.width_tolerance_mm"] = "Two standard deviations of the width, mm.",
        ["pour.runs_out_mm"] =
            "Deep end minus shallow end, in the top layer, mm; its stated depth is at mid-length.",
        ["pour.face"] = "Where the side that the viewer sees points while the resin gels.",
        ["layers"] = "From the board upwards, each one pour of its own.",
        ["layers.*.name"] = "The layer's name: small letters, digits and hyphens.",
        ["layers.*.depth_mm"] = "Depth, mm; the first layer is measured from the board.",
        ["layers.*.depth_tolerance_mm"] = "Two standard deviations of the depth, mm.",
        ["layers.*.pigment"] = "A pigment of the shelf, or the path of a file; left out for a clear layer.",
        ["layers.*.grain_median_um"] = "Median grain diameter by mass, µm; the pigment's own if left out.",
        ["layers.*.grain_tolerance_factor"] = "Two standard deviations of the median as a factor.",
        ["layers.*.grain_gsd"] = "Geometric standard deviation of the diameter; 1 is all alike.",
        ["layers.*.grain_from_um"] =
            "Instead of median and spread: small end of the grain (10 % of the mass, assumed), µm.",
        ["layers.*.grain_to_um"] = "Large end of the grain (90 % of the mass, assumed), µm.",
        ["layers.*.loading_percent"] = "Pigment by mass of the whole mix, %.",
        ["layers.*.loading_g_per_100g_resin"] =
            "Instead of loading_percent: grams of pigment to 100 g of resin, A and B together.",
        ["layers.*.loading_tolerance_points"] =
            "Two standard deviations of the loading, in points of percent.",
        ["mixing"] = "At the bench.",
        ["mixing.temperature_c"] = "Temperature while mixing and pouring, °C.",
        ["mixing.temperature_tolerance_c"] = "Two standard deviations of the temperature, °C.",
        ["mixing.waste_percent"] = "Mix made over and above what the pour takes, %.",
        ["mixing.vacuum_min"] = "Time under vacuum, min.",
        ["mixing.scale_step_g"] = "The smallest step of the scale, g.",
        ["charge"] = "What charges the pigment; the glow's clock starts when the last light goes off.",
        ["charge.start"] =
            "How full the traps are at first: empty, or as the same day again and again leaves them.",
        ["charge.steps"] = "In order.",
        ["charge.steps.*.light"] = "own-leds, dark, a lamp of the shelf, or the path of a file.",
        ["charge.steps.*.with"] = "A lamp at the same time as own-leds.",
        ["charge.steps.*.illuminance_lx"] = "Illuminance by the lamp at the surface, lx.",
        ["charge.steps.*.illuminance_tolerance_percent"] = "Two standard deviations of it, %.",
        ["charge.steps.*.irradiance_w_m2"] =
            "Instead of illuminance_lx, for an ultraviolet lamp: irradiance, W/m².",
        ["charge.steps.*.irradiance_tolerance_percent"] = "Two standard deviations of it, %.",
        ["charge.steps.*.minutes"] = "How long, min.",
        ["charge.steps.*.temperature_c"] = "Temperature of the piece, °C.",
        ["darkness"] = "After the charge.",
        ["darkness.temperature_c"] = "Temperature of the piece in the dark, °C.",
        ["darkness.limit_mcd_m2"] = "Your own limit of visibility, mcd/m².",
        ["targets"] = "What the piece is to reach.",
        ["targets.*.figure"] = "The name of a figure.",
        ["targets.*.at_minutes"] = "For a figure of the decay: minutes in the dark.",
        ["targets.*.at_least"] = "Lower bound, in the figure's unit.",
        ["targets.*.at_most"] = "Upper bound, in the figure's unit.",
        ["balance"] = "What the search for a balance of white and glow may turn.",
        ["balance.white_cct_k"] = "The white it aims at, K; the bare board's if left out.",
        ["balance.glow_at_minutes"] = "Minutes in the dark at which the glow counts.",
        ["balance.choices"] = "The keys it may turn; loading and depth of each pigmented layer if left out.",
        ["balance.choices.*.key"] = "A key's path, layers by name: layers.glow.loading_percent.",
        ["balance.choices.*.from"] = "Least of a number.",
        ["balance.choices.*.to"] = "Most of a number.",
        ["balance.choices.*.any_of"] = "Instead of from and to: the values to choose from.",
        ["criteria"] = "Published criteria to put the glow beside; an estimate is no test.",
        ["prices"] = "In your own currency.",
        ["prices.resin_per_kg"] = "Of the resin.",
        ["prices.pigment_per_kg"] = "Of the pigment.",
    }.ToFrozenDictionary();

    /// <summary>The line of a key's path with stars, or of a section's; '' is the whole recipe.</summary>
    /// <exception cref="ArgumentException">There is no such key.</exception>
    public static string Of(string path) =>
        Words.TryGetValue(path, out string? words)
            ? words
            : throw new ArgumentException($"No key is called '{path}'.", nameof(path));
}
