using System.Collections.Immutable;
using GlowMix.Colour;
using GlowMix.Documents;
using GlowMix.Documents.Shapes;
using GlowMix.Spectra;
using static GlowMix.Materials.Shapes.ShapeParts;

namespace GlowMix.Materials.Shapes;

/// <summary>What the file of a lamp may hold.</summary>
internal static class LampShape
{
    /// <summary>The keys, in canonical order.</summary>
    public static ImmutableArray<KeyShape> Keys() =>
        [
            new(
                "spectrum",
                new MappingShape([
                    new(
                        "peak_nm",
                        new NumberShape(NumberRange.Between(WavelengthGrid.FirstNm, WavelengthGrid.LastNm)),
                        "Peak of a Gaussian band, nm."
                    ),
                    new(
                        "fwhm_nm",
                        new NumberShape(NumberRange.Between(5, 300)),
                        "Its full width at half maximum, nm."
                    ),
                    new(
                        "at_nm",
                        new TableShape(new(NumberRange.Between(0, 1e9))),
                        "Relative power per nm at wavelengths in nm."
                    ),
                    new(
                        "cie_illuminant",
                        new TextShape { Only = [.. StandardIlluminants.Names] },
                        "A standard illuminant of the CIE."
                    ),
                    Factor,
                    Tolerance,
                    Source,
                ])
                {
                    OneNeededOf =
                    [
                        ["peak_nm", "at_nm", "cie_illuminant"],
                    ],
                    Exclusive = OneDoubt,
                },
                "Its relative spectrum.",
                IsNeeded: true
            ),
            new(
                "below_start",
                new TextShape { Only = ["unknown", "nothing"] },
                "What it emits below its first wavelength.",
                IsNeeded: true
            ),
        ];
}
