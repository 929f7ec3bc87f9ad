using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Documents.Shapes;
using static GlowMix.Materials.Shapes.ShapeParts;

namespace GlowMix.Materials.Shapes;

/// <summary>What the file of a pigment may hold.</summary>
internal static class PigmentShape
{
    /// <summary>The keys, in canonical order.</summary>
    public static ImmutableArray<KeyShape> Keys() =>
        [
            Number("density_g_cm3", MaterialRanges.DensityGPerCm3, "Density of a grain, g/cm³."),
            .. Index(),
            Table(
                "absorption_per_mm",
                "at_nm",
                NumberRange.Between(0, 1000),
                "Absorption coefficient of solid grain per mm (natural logarithm), at wavelengths in nm."
            ),
            Number("emission_peak_nm", NumberRange.Between(380, 740), "Peak of its glow, nm."),
            Number(
                "emission_fwhm_nm",
                NumberRange.Between(10, 200),
                "Full width of its glow at half maximum, nm."
            ),
            Number(
                "photoluminescence_yield",
                NumberRange.Above(0, 1),
                "Photons emitted per photon absorbed, in balance."
            ),
            Number("grain_median_um", NumberRange.Between(0.5, 500), "Median grain diameter by mass, µm."),
            Number(
                "grain_gsd",
                NumberRange.Between(1, 3),
                "Geometric standard deviation of the diameter; 1 is all alike."
            ),
            Table(
                "fine_grain_efficiency",
                "at_um",
                NumberRange.Above(0, 1),
                "Factor on the yield at grain diameters in µm."
            ),
            Number("trap_capacity_per_g", NumberRange.Between(1e12, 1e21), "Traps a gram."),
            Number(
                "trap_frequency_factor_per_s",
                NumberRange.Between(1e6, 1e15),
                "Frequency factor of detrapping, per s."
            ),
            Number(
                "trap_capture_activation_ev",
                NumberRange.Between(0, 1),
                "Activation energy of capture, eV."
            ),
            Number(
                "trap_weight_exponent",
                NumberRange.Between(-1, 1),
                "p of weights that fall as lifetime to the power -p."
            ),
            Number(
                "trap_emptying_by_light",
                NumberRange.Between(0, 100),
                "Rate at which absorbed light empties a trap over that at which it fills one."
            ),
            Number(
                "sheet_loading_percent",
                NumberRange.Above(0, 90),
                "The sheet's sample: pigment by mass of the mix, %."
            ),
            Number("sheet_depth_mm", NumberRange.Above(0, 50), "Its depth, mm."),
            Word("sheet_backing", "What it lies on, a board.", ShippedData.Names(MaterialKind.Board)),
            Word("sheet_resin", "What the pigment is in, a resin.", ShippedData.Names(MaterialKind.Resin)),
            Word("sheet_lamp", "What charges it, a lamp.", ShippedData.Names(MaterialKind.Lamp)),
            Number("sheet_illuminance_lx", NumberRange.Above(0, 200000), "Illuminance on it, lx."),
            Number("sheet_minutes", NumberRange.Above(0, 10000), "Minutes of charge."),
            Number(
                "sheet_temperature_c",
                MaterialRanges.TemperatureC,
                "Temperature of charge and decay, °C."
            ),
            Table(
                "sheet_points",
                "mcd_m2_at_minutes",
                NumberRange.Above(0, 1e6),
                "Luminance in mcd/m² at minutes in the dark, two points or more."
            ),
        ];
}
