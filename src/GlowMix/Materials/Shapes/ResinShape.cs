using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Documents.Shapes;
using static GlowMix.Materials.Shapes.ShapeParts;

namespace GlowMix.Materials.Shapes;

/// <summary>What the file of a resin may hold.</summary>
internal static class ResinShape
{
    /// <summary>The keys, in canonical order.</summary>
    public static ImmutableArray<KeyShape> Keys()
    {
        var minutes = NumberRange.Above(0, 20000);
        var hours = NumberRange.Above(0, 2000);
        var part = new NumberShape(NumberRange.Above(0, 1000));
        return
        [
            .. Index(),
            Table(
                "absorption_per_mm",
                "at_nm",
                NumberRange.Above(0, 100),
                "Absorption coefficient of the cured resin per mm (natural logarithm), at wavelengths in nm."
            ),
            Number("density_mix_g_cm3", MaterialRanges.DensityGPerCm3, "Density of the mix, g/cm³."),
            Number("density_part_a_g_cm3", MaterialRanges.DensityGPerCm3, "Density of part A, g/cm³."),
            Number("density_part_b_g_cm3", MaterialRanges.DensityGPerCm3, "Density of part B, g/cm³."),
            Entry(
                "mix_ratio",
                "Part A to part B.",
                [
                    new(
                        "by",
                        new TextShape { Only = ["mass", "volume"] },
                        "What the ratio counts.",
                        IsNeeded: true
                    ),
                    new("part_a", part, "Parts of A.", IsNeeded: true),
                    new("part_b", part, "Parts of B.", IsNeeded: true),
                    Source,
                ]
            ),
            Rows(
                "viscosity",
                "Viscosity of the fresh mix, a row a temperature.",
                new("mpa_s", new NumberShape(NumberRange.Above(0, 1e6)), "mPa·s.", IsNeeded: true),
                new(
                    "temperature_c",
                    new NumberShape(MaterialRanges.TemperatureC),
                    "At this temperature, °C.",
                    IsNeeded: true
                )
            ),
            Rows(
                "pot_life",
                "Pot life, a row a mass.",
                new("minutes", new NumberShape(minutes), "Minutes.", IsNeeded: true),
                new(
                    "mass_g",
                    new NumberShape(NumberRange.Above(0, 100000)),
                    "Of so many grams.",
                    IsNeeded: true
                ),
                new(
                    "temperature_c",
                    new NumberShape(MaterialRanges.TemperatureC),
                    "At this temperature, °C.",
                    IsNeeded: true
                )
            ),
            Number(
                "gel_time_min",
                minutes,
                "Minutes until the mix no longer flows, at the mass and temperature of the first pot life."
            ),
            Number(
                "max_pour_depth_mm",
                NumberRange.Above(0, 1000),
                "The deepest layer the sheet allows in one pour, mm.",
                isNeeded: false
            ),
            Number("cure_to_touch_h", hours, "Hours until it can be touched.", isNeeded: false),
            Number("cure_full_h", hours, "Hours until it is fully cured.", isNeeded: false),
        ];
    }
}
