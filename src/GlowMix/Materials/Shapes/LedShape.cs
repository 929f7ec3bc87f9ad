using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Documents.Shapes;
using static GlowMix.Materials.Shapes.ShapeParts;

namespace GlowMix.Materials.Shapes;

/// <summary>What the file of an LED may hold.</summary>
internal static class LedShape
{
    private const string White = "white";
    private const string Spectrum = "spectrum";

    /// <summary>Sets of keys of which at least one must be there.</summary>
    public static ImmutableArray<ImmutableArray<string>> OneNeededOf =>
        [.. Bands().Select(band => (ImmutableArray<string>)[band.Name, White, Spectrum])];

    /// <summary>Pairs of keys that exclude each other.</summary>
    public static ImmutableArray<(string, string)> Exclusive =>
        [
            (White, Spectrum),
            .. Bands().SelectMany(band => new[] { (White, band.Name), (Spectrum, band.Name) }),
        ];

    /// <summary>The keys, in canonical order.</summary>
    public static ImmutableArray<KeyShape> Keys()
    {
        var ma = NumberRange.Above(0, 10000);
        var share = new NumberShape(MaterialRanges.Share);
        return
        [
            .. Bands(),
            Entry(
                White,
                "Instead of the bands: the label's white; the bands are then those that give it.",
                [
                    new(
                        "cct_k",
                        new NumberShape(LedBandsReader.CctK),
                        "Colour temperature, K.",
                        IsNeeded: true
                    ),
                    new("ra", new NumberShape(LedBandsReader.Rendering), "Colour rendering index."),
                    Source,
                ],
                isNeeded: false
            ),
            Entry(
                Spectrum,
                "Instead of the bands: the bare LED as measured; it is parted into bands.",
                [
                    new(
                        "at_nm",
                        new TableShape(new(NumberRange.Between(0, 1e9))),
                        "Relative power per nm at wavelengths in nm.",
                        IsNeeded: true
                    ),
                    Source,
                ],
                isNeeded: false
            ),
            Number(
                "flux_lm",
                NumberRange.Above(0, 100000),
                "Luminous flux of one bare package at the rated current, lm."
            ),
            Number("at_ma", ma, "The rated current, mA."),
            Number("max_ma", ma, "The largest current allowed, mA."),
            Table(
                "relative_flux",
                "at_ma",
                NumberRange.Between(0, 100),
                "Flux over the flux at the rated current, at currents in mA.",
                isNeeded: false
            ),
            Number(
                "window_radius_mm",
                NumberRange.Between(0.1, 50),
                "Radius of the light-emitting window, mm."
            ),
            Number("package_height_mm", NumberRange.Between(0, 20), "Height over the board, mm."),
            Number("package_length_mm", NumberRange.Between(0.5, 100), "Length, mm."),
            Number("package_width_mm", NumberRange.Between(0.5, 100), "Width, mm."),
            Number("filling_index", NumberRange.Between(1, 2), "Refractive index of what fills the package."),
            Entry(
                "return_matrix",
                "Of each watt sent back onto the package, watts that leave it again, from band into band; the rest is lost.",
                [
                    Column("from_die", "into_die", "into_green", "into_red"),
                    Column("from_green", "into_green", "into_red"),
                    Column("from_red", "into_red"),
                    Factor,
                    Tolerance,
                    Source,
                ]
            ),
        ];

        KeyShape Column(string name, params ReadOnlySpan<string> into)
        {
            var keys = ImmutableArray.CreateBuilder<KeyShape>();
            foreach (string band in into)
            {
                keys.Add(new(band, share, "Watts per watt.", IsNeeded: true));
            }
            return new(
                name,
                new MappingShape(keys.ToImmutable()),
                "Where light of this band goes.",
                IsNeeded: true
            );
        }
    }

    // Each is needed where neither the label nor a spectrum tells the white.
    private static ImmutableArray<KeyShape> Bands()
    {
        var width = NumberRange.Between(5, 300);
        return
        [
            Number(
                "die_peak_nm",
                NumberRange.Between(400, 490),
                "Peak wavelength of the die's band, nm.",
                isNeeded: false
            ),
            Number("die_fwhm_nm", width, "Its full width at half maximum, nm.", isNeeded: false),
            Number(
                "green_peak_nm",
                NumberRange.Between(480, 600),
                "Peak of the short phosphor band, nm.",
                isNeeded: false
            ),
            Number(
                "green_short_fwhm_nm",
                width,
                "Width of its short side, were both sides alike, nm.",
                isNeeded: false
            ),
            Number(
                "green_long_fwhm_nm",
                width,
                "Width of its long side, were both sides alike, nm.",
                isNeeded: false
            ),
            Number(
                "red_peak_nm",
                NumberRange.Between(560, 700),
                "Peak of the long phosphor band, nm.",
                isNeeded: false
            ),
            Number(
                "red_short_fwhm_nm",
                width,
                "Width of its short side, were both sides alike, nm.",
                isNeeded: false
            ),
            Number(
                "red_long_fwhm_nm",
                width,
                "Width of its long side, were both sides alike, nm.",
                isNeeded: false
            ),
            Number(
                "die_share",
                MaterialRanges.Share,
                "Share of the bare package's optical power in the die's band; the three add up to 1.",
                isNeeded: false
            ),
            Number("green_share", MaterialRanges.Share, "Share in the short phosphor band.", isNeeded: false),
            Number("red_share", MaterialRanges.Share, "Share in the long phosphor band.", isNeeded: false),
        ];
    }
}
