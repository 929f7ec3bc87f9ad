using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Console.Tests;

/// <summary>Predictions made by hand, all numbers invented: what the console makes of them is tested, not the model.</summary>
internal static class SamplePredictions
{
    public static Prediction StairEdge { get; } =
        new()
        {
            Recipe = "recipes/stair-edge.yaml",
            Title = "Stair edge, warm white",
            Figures = Figures(StairEdgeValues).Build(),
            Bands =
            [
                Banded("lit.cct_k", 3612.3, 3804.4, 3988.1),
                Banded("afterglow.luminance_mcd_m2[2]", 54.9, 111.2, 224),
                Banded("afterglow.luminance_mcd_m2[10]", 15.04, 31, 66),
                Banded("afterglow.luminance_mcd_m2[30]", 4.96, 9.97, 21),
                Banded("afterglow.luminance_mcd_m2[60]", 1.94, 4.4, 9.7),
                Banded("afterglow.minutes_to_0_3_mcd_m2", 251, 498, 1032),
                Banded("afterglow.minutes_to_limit", 58.2, 104, 221),
            ],
            Warnings = [new("depth_band", "lit.cct_k", "The pour runs out by 0.4 mm.")],
            TakenAs = ["LEDs at rated current"],
            Assumptions = [new("grain absorption of green-aluminate", "15 per mm at 365 nm, doubt factor 2")],
            Spectra = new(
                Spectrum.FromNm(nm => Peak(nm, 450, 12) + (0.8 * Peak(nm, 600, 60))),
                Spectrum.FromNm(nm => (0.6 * Peak(nm, 450, 12)) + (0.9 * Peak(nm, 570, 60))),
                Spectrum.FromNm(nm => 0.2 * Peak(nm, 520, 35)),
                Spectrum.FromNm(nm => Peak(nm, 520, 35))
            ),
            Decay = Decay(260),
            LimitMcdPerM2 = 2,
            DepthOverBoardMm = 3,
            DepthOverPackagesMm = 2.3,
            HasCount = true,
            ChargedBy = "8 h by its own LEDs, from empty traps",
            LimitedBy = "the charge: the traps are a third full when the light goes off",
            RaMeaningful = false,
            Loadings = [new("glow", "green-aluminate", 2.5, 20, 25, 7.06)],
        };

    /// <summary>Without pigment.</summary>
    public static Prediction Clear { get; } =
        StairEdge with
        {
            Recipe = "recipes/clear.yaml",
            Title = "Clear sign",
            Figures = Figures(ClearValues).Build(),
            Bands = [],
            Warnings = [],
            Spectra = StairEdge.Spectra with { PigmentWPerNm = Spectrum.Zero, GlowShape = null },
            Decay = null,
            LimitedBy = null,
            RaMeaningful = true,
            Loadings = [],
        };

    public static Prediction WithFigure(this Prediction prediction, string name, double? value)
    {
        var builder = new FigureValues.Builder();
        foreach (var figure in FigureCatalogue.All)
        {
            builder.Set(figure.Name, figure.Name == name ? value : prediction.Figures[figure]);
        }
        return prediction with { Figures = builder.Build() };
    }

    public static Prediction WithBand(this Prediction prediction, string name, Band band) =>
        (
            prediction with
            {
                Bands = [.. prediction.Bands.Where(b => b.Key.Name != name), Pair(name, band)],
            }
        ).WithFigure(name, band.Likely);

    private static (string, double)[] ClearValues =>
        [
            ("bare.cct_k", 3000),
            ("bare.duv", -0.0012),
            ("bare.ra", 82.3),
            ("bare.flux_lm", 1350),
            ("lit.cct_k", 3304.4),
            ("lit.duv", 0.0034),
            ("lit.x", 0.41),
            ("lit.y", 0.392),
            ("lit.ra", 77.6),
            ("lit.r9", -3.2),
            ("lit.flux_lm", 1214),
            ("lit.flux_kept_percent", 89.9),
            ("lit.shift_k", 304.4),
            ("lit.blue_absorbed_by_pigment_percent", 0),
            ("lit.blue_absorbed_by_resin_percent", 0.3),
            ("lit.blue_absorbed_by_board_percent", 11.6),
            ("lit.blue_taken_back_by_package_percent", 8.7),
            ("lit.blue_escaped_percent", 79.4),
            ("casting.mix_volume_ml", 15.8),
            ("casting.part_a_g", 11.62),
            ("casting.part_b_g", 5.81),
        ];

    private static (string, double)[] StairEdgeValues =>
        [
            .. ClearValues,
            ("lit.cct_k", 3804.4),
            ("lit.duv", 0.0211),
            ("lit.flux_kept_percent", 81.6),
            ("lit.flux_lm", 1101.6),
            ("lit.green_share_percent", 18.4),
            ("lit.shift_k", 804.4),
            ("lit.blue_absorbed_by_pigment_percent", 38.2),
            ("lit.blue_escaped_percent", 41.2),
            ("lit.shift_by_cause_k.index_matching", 690),
            ("lit.shift_by_cause_u_prime.index_matching", -0.0123),
            ("lit.shift_by_cause_v_prime.index_matching", -0.0051),
            ("lit.shift_by_cause_u_prime.pigment_emission", -0.0088),
            ("lit.shift_by_cause_v_prime.pigment_emission", 0.0094),
            ("afterglow.luminance_mcd_m2[0.5]", 260.25),
            ("afterglow.luminance_mcd_m2[2]", 111.2),
            ("afterglow.luminance_mcd_m2[10]", 31),
            ("afterglow.luminance_mcd_m2[30]", 9.97),
            ("afterglow.luminance_mcd_m2[60]", 4.4),
            ("afterglow.minutes_to_0_3_mcd_m2", 498),
            ("afterglow.minutes_to_limit", 104),
            ("afterglow.capacity_filled_percent", 34.2),
            ("afterglow.capacity_filled_bottom_percent", 61.4),
            ("afterglow.capacity_filled_surface_percent", 12.1),
            ("afterglow.charge_minutes_to_90_percent", 41),
            ("afterglow.x", 0.25),
            ("afterglow.y", 0.56),
            ("casting.pigment_g", 4.36),
            ("casting.viscosity_mpa_s", 1284),
            ("casting.settled_mm", 0.312),
            ("casting.degas_window_min", 24.7),
        ];

    private static FigureValues.Builder Figures((string Name, double Value)[] values)
    {
        var builder = new FigureValues.Builder();
        foreach (var (name, value) in values)
        {
            builder.Set(name, value);
        }
        return builder;
    }

    private static DecayCurve Decay(double first)
    {
        double[] minutes = [.. Enumerable.Range(0, 31).Select(i => 0.5 * Math.Pow(10, i / 10.0))];
        double[] likely = [.. minutes.Select(m => first * 0.5 / m)];
        return new(minutes, [.. likely.Select(l => l / 2)], likely, [.. likely.Select(l => l * 2)]);
    }

    private static double Peak(double nm, double at, double width) =>
        0.001 * Math.Exp(-0.5 * Math.Pow((nm - at) / width, 2));

    private static KeyValuePair<Figure, Band> Banded(string name, double low, double likely, double high) =>
        Pair(name, new(low, likely, high));

    private static KeyValuePair<Figure, Band> Pair(string name, Band band) =>
        new(FigureCatalogue.Find(name)!, band);
}
