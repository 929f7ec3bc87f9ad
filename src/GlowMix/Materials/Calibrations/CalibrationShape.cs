using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Documents.Shapes;

namespace GlowMix.Materials.Calibrations;

/// <summary>What a calibration may hold, in the order in which it is written; the ranges are those that its reader takes.</summary>
public static class CalibrationShape
{
    internal const int MostReadings = 1000;
    internal const int MostPigments = 12;
    internal const int MostSentences = 200;
    internal const int MostCorrelations = 2000;

    internal static readonly ImmutableArray<string> Bands = ["die", "green", "red"];
    internal static readonly NumberRange Factor = NumberRange.Between(0.001, 1000);
    internal static readonly NumberRange Yield = NumberRange.Between(0, 1);
    internal static readonly NumberRange Error = NumberRange.AtLeast(0);
    internal static readonly NumberRange Conversion = NumberRange.Between(0, 3);
    internal static readonly NumberRange Power = NumberRange.AtLeast(0);
    internal static readonly NumberRange Tilt = NumberRange.Between(-10, 10);
    internal static readonly NumberRange Efficiency = NumberRange.Above(0, 1);
    internal static readonly NumberRange ReadToMin = NumberRange.Above(0, 1e6);
    internal static readonly NumberRange Correlation = NumberRange.Between(-1, 1);

    // A gram of hydrogen has 6e23 atoms, of anything else fewer.
    internal static readonly NumberRange TrapsPerG = NumberRange.Between(0, 1e24);

    private static readonly TextShape text = new();

    private static readonly ImmutableArray<KeyShape> head =
    [
        new("material", text, "Name of the material, as the recipe has it.", IsNeeded: true),
        new("material_sha256", text, "SHA-256 of the material's file at the time."),
    ];

    /// <summary>The whole file.</summary>
    public static MappingShape Whole { get; } =
        new([
            new(
                CalibrationFile.FormatKey,
                new NumberShape(
                    NumberRange.Between(CalibrationFile.Format, CalibrationFile.Format),
                    IsWhole: true
                ),
                "Number of the format; the first key.",
                IsNeeded: true
            ),
            new("date", text, "The day it was fitted, year-month-day.", IsNeeded: true),
            new("recipe", text, "The recipe it was fitted for.", IsNeeded: true),
            new(
                "readings",
                new ListShape(
                    new MappingShape([
                        new("file", text, "The reading's file, relative to this one.", IsNeeded: true),
                        new("state", text, "What was read, in words.", IsNeeded: true),
                        new("sha256", text, "SHA-256 of the file.", IsNeeded: true),
                    ]),
                    Most: MostReadings
                ),
                "The readings it rests on.",
                IsNeeded: true
            ),
            new("led", Led(), "What they told of the LED."),
            new(
                "resin",
                new MappingShape([
                    .. head,
                    Number("absorption_factor", Factor, "Absorption over that of the resin's file.", true),
                ]),
                "What they told of the resin."
            ),
            new("pigments", new ListShape(Pigment(), Most: MostPigments), "What they told of pigments."),
            new(
                "correlations",
                new ListShape(
                    new MappingShape([
                        new("of", text, "A number above, such as resin.absorption_factor.", IsNeeded: true),
                        new("with", text, "Another.", IsNeeded: true),
                        new(
                            "value",
                            new NumberShape(Correlation),
                            "Correlation of their errors.",
                            IsNeeded: true
                        ),
                    ]),
                    Least: 0,
                    MostCorrelations
                ),
                "How the errors go together; draws take them so."
            ),
            new(
                "held",
                new ListShape(text, Least: 0, MostSentences),
                "What the readings could not tell, a sentence each."
            ),
            new(
                "misfit",
                new ListShape(text, Least: 0, MostSentences),
                "Where the model does not follow the readings, a sentence each."
            ),
        ]);

    private static MappingShape Led() =>
        new([
            .. head,
            new(
                "shares",
                new MappingShape([
                    .. Bands.Select(band => Number(band, Yield, "Share of the bare package's watts.", true)),
                ]),
                "How die, green and red share the bare package's watts."
            ),
            new(
                "return_matrix",
                new MappingShape([
                    .. CalibratedLed.EntryKeys.Select(key =>
                        Number(key, Yield, "Watts out per watt sent back onto the package.", true)
                    ),
                ]),
                "Which light leaves the package for light sent back onto it."
            ),
            Number(
                "conversion",
                Conversion,
                "Sum of the matrix's entries from one band into another; with it."
            ),
            new(
                "bare_spectrum",
                new MappingShape([
                    new(
                        "at_nm",
                        new TableShape(new(Power)),
                        "Relative power per nm at wavelengths in nm.",
                        IsNeeded: true
                    ),
                ]),
                "The bare spectrum read."
            ),
        ]);

    private static MappingShape Pigment() =>
        new([
            .. head,
            Number("absorption_factor", Factor, "Absorption of its grains over that of its file."),
            Number("photoluminescence_yield", Yield, "Photons emitted per photon absorbed."),
            new(
                "traps",
                new MappingShape([
                    Number("level", Factor, "All traps over those behind its sheet.", true),
                    Number("tilt", Tilt, "Decades by which slow traps are fuller than the sheet's.", true),
                    Number(
                        "trapping_factor",
                        Factor,
                        "Trapping efficiency over that behind the sheet.",
                        true
                    ),
                    new(
                        "trapping_efficiency",
                        new NumberShape(Efficiency),
                        "Traps filled per photon absorbed while all are empty, at 20 °C.",
                        IsNeeded: true
                    ),
                    new(
                        "read_to_min",
                        new NumberShape(ReadToMin),
                        "Last time of darkness that a reading told, min.",
                        IsNeeded: true
                    ),
                    new(
                        "tilt_at_min",
                        new NumberShape(ReadToMin),
                        "Time of darkness whose traps the tilt leaves as they are, min."
                    ),
                    new(
                        "per_g",
                        new ListShape(
                            new NumberShape(TrapsPerG),
                            MeasuredTraps.RungCount,
                            MeasuredTraps.RungCount
                        ),
                        "Traps per gram that empty at 1 /s, 10^-0.5 /s … 10^-6 /s at 20 °C.",
                        IsNeeded: true
                    ),
                ]),
                "Its trap ladder."
            ),
        ]);

    private static KeyShape Number(
        string name,
        NumberRange range,
        string description,
        bool isNeeded = false
    ) =>
        new(
            name,
            new MappingShape([
                new("value", new NumberShape(range), "The number.", IsNeeded: true),
                new(
                    "standard_error",
                    new NumberShape(Error),
                    "One standard deviation; left out where the number was held."
                ),
            ]),
            description,
            isNeeded
        );
}
