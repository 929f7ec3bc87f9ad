using System.Collections.Immutable;
using GlowMix.Colour;
using GlowMix.Documents;
using GlowMix.Documents.Shapes;
using GlowMix.Spectra;

namespace GlowMix.Materials;

/// <summary>What a material's file may hold, kind by kind, in canonical order.</summary>
public static class MaterialShapes
{
    private static readonly KeyShape Source = new(
        "source",
        new TextShape(),
        "Where the number comes from: a publication, or 'assumed', 'from memory', 'common practice, no source', 'computed; how', "
            + "'secondary source; what was read', 'own reading', 'label', each with '; note' behind it.",
        IsNeeded: true
    );

    private static readonly KeyShape Factor = new(
        "factor",
        new NumberShape(NumberRange.Above(1, 1000)),
        "Doubt as a factor up and down: two standard deviations of its logarithm."
    );

    private static readonly KeyShape Tolerance = new(
        "tolerance_percent",
        new NumberShape(NumberRange.Above(0, 100)),
        "Doubt in percent of the value: two standard deviations."
    );

    private static readonly ImmutableArray<KeyShape> Ends =
    [
        new("low", new NumberShape(NumberRange.Any), "Low end of the doubt; with high."),
        new("high", new NumberShape(NumberRange.Any), "High end of the doubt; with low."),
    ];

    private static readonly ImmutableArray<(string, string)> OneDoubt =
    [
        ("factor", "tolerance_percent"),
        ("low", "factor"),
        ("low", "tolerance_percent"),
        ("high", "factor"),
        ("high", "tolerance_percent"),
    ];

    /// <summary>The shape of a kind of material.</summary>
    public static MappingShape Of(MaterialKind kind) =>
        new([
            new(
                "material_format",
                new NumberShape(NumberRange.Between(MaterialFile.Format, MaterialFile.Format), IsWhole: true),
                "Number of the format; the first key.",
                IsNeeded: true
            ),
            new("kind", new TextShape { Only = [kind.Word()] }, "What it is.", IsNeeded: true),
            new("title", new TextShape(), "One line for people.", IsNeeded: true),
            new("cautions", new ListShape(new TextShape()), "What can hurt, one sentence or two an item."),
            .. LenderOf(kind),
            .. KeysOf(kind),
        ])
        {
            Lender = kind is MaterialKind.Resin or MaterialKind.Pigment ? "like" : null,
            Exclusive = kind is MaterialKind.Resin or MaterialKind.Pigment
                ? [("refractive_index", "refractive_index_d")]
                : [],
        };

    private static ImmutableArray<KeyShape> LenderOf(MaterialKind kind) =>
        kind is MaterialKind.Resin or MaterialKind.Pigment
            ?
            [
                new(
                    "like",
                    new TextShape { Only = ShippedData.Names(kind) },
                    "A material that travels with the program and lends every entry that is not written here."
                ),
            ]
            : [];

    private static ImmutableArray<KeyShape> KeysOf(MaterialKind kind) =>
        kind switch
        {
            MaterialKind.Led => Led(),
            MaterialKind.Resin => Resin(),
            MaterialKind.Pigment => Pigment(),
            MaterialKind.Board => Board(),
            MaterialKind.Lamp => Lamp(),
            MaterialKind.Criterion => Criterion(),
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };

    private static ImmutableArray<KeyShape> Led()
    {
        var width = NumberRange.Between(5, 300);
        var ma = NumberRange.Above(0, 10000);
        var share = new NumberShape(MaterialRanges.Share);
        return
        [
            Number("die_peak_nm", NumberRange.Between(400, 490), "Peak wavelength of the die's band, nm."),
            Number("die_fwhm_nm", width, "Its full width at half maximum, nm."),
            Number("green_peak_nm", NumberRange.Between(480, 600), "Peak of the short phosphor band, nm."),
            Number("green_short_fwhm_nm", width, "Width of its short side, were both sides alike, nm."),
            Number("green_long_fwhm_nm", width, "Width of its long side, were both sides alike, nm."),
            Number("red_peak_nm", NumberRange.Between(560, 700), "Peak of the long phosphor band, nm."),
            Number("red_short_fwhm_nm", width, "Width of its short side, were both sides alike, nm."),
            Number("red_long_fwhm_nm", width, "Width of its long side, were both sides alike, nm."),
            Number(
                "die_share",
                MaterialRanges.Share,
                "Share of the bare package's optical power in the die's band; the three add up to 1."
            ),
            Number("green_share", MaterialRanges.Share, "Share in the short phosphor band."),
            Number("red_share", MaterialRanges.Share, "Share in the long phosphor band."),
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

    private static ImmutableArray<KeyShape> Resin()
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

    private static ImmutableArray<KeyShape> Pigment() =>
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

    private static ImmutableArray<KeyShape> Board() =>
        [
            new(
                "taken",
                new TextShape { Only = ["under resin", "in air"] },
                "How the reflectance was taken.",
                IsNeeded: true
            ),
            Table(
                "reflectance",
                "at_nm",
                MaterialRanges.Share,
                "Diffuse reflectance, 0 to 1, at wavelengths in nm."
            ),
        ];

    private static ImmutableArray<KeyShape> Lamp() =>
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

    private static ImmutableArray<KeyShape> Criterion() =>
        [
            Word("document", "The document with its edition.", []),
            new("clause", new TextShape(), "The clause, or unknown.", IsNeeded: true),
            new(
                "charge",
                new MappingShape([
                    Word("lamp", "A lamp of the shelf, or unknown.", ShippedData.Names(MaterialKind.Lamp)),
                    NumberOrUnknown("illuminance_lx", NumberRange.Above(0, 200000), "lx, or unknown."),
                    NumberOrUnknown("minutes", NumberRange.Above(0, 100000), "Minutes, or unknown."),
                ]),
                "The charge of its test.",
                IsNeeded: true
            ),
            new(
                "limits",
                new MappingShape([
                    new(
                        "value",
                        new TextShape { Only = ["unknown", "none"] },
                        "Where there is no table of limits."
                    ),
                    new(
                        "mcd_m2_at_minutes",
                        new TableShape(new(NumberRange.Above(0, 1e6))),
                        "Least luminance in mcd/m² at minutes in the dark."
                    ),
                    Source,
                ])
                {
                    OneNeededOf =
                    [
                        ["value", "mcd_m2_at_minutes"],
                    ],
                },
                "What it asks for.",
                IsNeeded: true
            ),
            new(
                "asks_also",
                new ListShape(new TextShape()),
                "What else it asks for and this program does not predict."
            ),
        ];

    private static ImmutableArray<KeyShape> Index()
    {
        var allowed = NumberRange.Between(1, 3);
        var any = new NumberShape(NumberRange.Any);
        return
        [
            Entry(
                "refractive_index",
                "Refractive index: one value, a table, or a formula over the wavelength in µm.",
                [
                    new("value", new NumberShape(allowed), "The same at all wavelengths."),
                    new("at_nm", new TableShape(new(allowed)), "At wavelengths in nm."),
                    new(
                        "formula",
                        new TextShape { Only = ["sellmeier", "sellmeier-with-offset", "cauchy"] },
                        "Which formula."
                    ),
                    new("a", any, "Offset, or first coefficient."),
                    new("b_um2", any, "Second coefficient of Cauchy's formula, µm²."),
                    new("c_um4", any, "Third coefficient of Cauchy's formula, µm⁴."),
                    new(
                        "terms",
                        new ListShape(
                            new MappingShape([
                                new("b", any, "B.", IsNeeded: true),
                                new("c_um2", any, "C, µm².", IsNeeded: true),
                            ]),
                            1,
                            5
                        ),
                        "Terms of Sellmeier's formula."
                    ),
                    .. Ends,
                    Factor,
                    Tolerance,
                    Source,
                ],
                isNeeded: false,
                oneNeededOf: ["value", "at_nm", "formula"]
            ),
            Number(
                "refractive_index_d",
                allowed,
                "Refractive index at 587.6 nm; with abbe_number.",
                isNeeded: false
            ),
            Number(
                "abbe_number",
                NumberRange.Between(10, 200),
                "How much the index falls from blue to red.",
                isNeeded: false
            ),
        ];
    }

    private static KeyShape Number(
        string name,
        NumberRange range,
        string description,
        bool isNeeded = true
    ) =>
        Entry(
            name,
            description,
            [
                new("value", new NumberShape(range), "The number.", IsNeeded: true),
                .. Ends,
                Factor,
                Tolerance,
                Source,
            ],
            isNeeded
        );

    private static KeyShape NumberOrUnknown(string name, NumberRange range, string description) =>
        Entry(
            name,
            description,
            [
                new(
                    "value",
                    new EitherShape([new NumberShape(range), new TextShape { Only = ["unknown"] }]),
                    "The number, or unknown.",
                    IsNeeded: true
                ),
                .. Ends,
                Factor,
                Tolerance,
                Source,
            ]
        );

    private static KeyShape Word(string name, string description, ImmutableArray<string> known) =>
        Entry(
            name,
            description,
            [new("value", new TextShape { Known = known }, "The word.", IsNeeded: true), Source]
        );

    private static KeyShape Table(
        string name,
        string axis,
        NumberRange range,
        string description,
        bool isNeeded = true
    ) =>
        Entry(
            name,
            description,
            [new(axis, new TableShape(new(range)), "Ascending.", IsNeeded: true), Factor, Tolerance, Source],
            isNeeded
        );

    private static KeyShape Rows(string name, string description, params ImmutableArray<KeyShape> keys) =>
        new(
            name,
            new ListShape(
                new MappingShape([.. keys, Factor, Tolerance, Source]) { Exclusive = OneDoubt },
                1,
                20
            ),
            description,
            IsNeeded: true
        );

    private static KeyShape Entry(
        string name,
        string description,
        ImmutableArray<KeyShape> keys,
        bool isNeeded = true,
        ImmutableArray<string>? oneNeededOf = null
    ) =>
        new(
            name,
            new MappingShape(keys)
            {
                Exclusive =
                [
                    .. OneDoubt.Where(pair =>
                        keys.Any(k => k.Name == pair.Item1) && keys.Any(k => k.Name == pair.Item2)
                    ),
                ],
                OneNeededOf = oneNeededOf is { } one ? [one] : [],
            },
            description,
            isNeeded
        );
}
