using System.Collections.Immutable;
using GlowMix.Casting;
using GlowMix.Documents;
using GlowMix.Documents.Shapes;
using GlowMix.Recipes;

namespace GlowMix.Readings.Sets;

/// <summary>What a set of readings may hold; the words and ranges are those that its reader takes.</summary>
public static class ReadingsSetShape
{
    internal const int MostReadings = 100;

    internal static readonly ImmutableArray<string> Corrected = ["yes", "no"];
    internal static readonly ImmutableArray<(string Word, ReadingState State)> States =
    [
        ("bare", ReadingState.Bare),
        ("level", ReadingState.Level),
        ("potted", ReadingState.Potted),
        ("pigmented", ReadingState.Pigmented),
        ("decay", ReadingState.Decay),
    ];
    internal static readonly ImmutableArray<string> Geometries = ["contact", "contact-mask", "disc-at"];

    internal static readonly NumberRange Percent = NumberRange.Above(0, 100);
    internal static readonly NumberRange Millimetres = NumberRange.Above(0, 10_000);
    internal static readonly NumberRange DistanceMm = NumberRange.Between(0, 100_000);
    internal static readonly NumberRange DepthMm = NumberRange.Between(0.01, 200);
    internal static readonly NumberRange LoadingPercent = NumberRange.Above(0, 80);
    internal static readonly NumberRange TileNumber = NumberRange.Between(1, TestTiles.Factors.Length);
    internal static readonly NumberRange TemperatureC = NumberRange.Between(-40, 80);
    internal static readonly NumberRange DisplayStep = NumberRange.Between(0, 1e6);

    /// <summary>The whole file.</summary>
    public static MappingShape Whole { get; } =
        new([
            new(
                ReadingsSetFile.FormatKey,
                new NumberShape(
                    NumberRange.Between(ReadingsSetFile.Format, ReadingsSetFile.Format),
                    IsWhole: true
                ),
                "Number of the format; the first key.",
                IsNeeded: true
            ),
            new(
                "corrected",
                new TextShape { Only = Corrected },
                "Whether the spectrometer's numbers are corrected for its response; as the files tell if left out."
            ),
            new(
                "comparable_percent",
                new NumberShape(Percent),
                "How well the levels of lit readings compare, standard deviation in %; not at all if left out."
            ),
            new(
                "readings",
                new ListShape(Reading(), Most: MostReadings),
                "The readings, each with what it is of.",
                IsNeeded: true
            ),
        ]);

    private static MappingShape Reading() =>
        new([
            new("file", new TextShape(), "The instrument's file, relative to this one.", IsNeeded: true),
            new(
                "state",
                new TextShape { Only = [.. States.Select(s => s.Word)] },
                "What was read: the bare board; clear resin level with the packages, or over them; the recipe's layers; their glow.",
                IsNeeded: true
            ),
            new(
                "tile",
                new NumberShape(TileNumber, IsWhole: true),
                "Test tile: 1, 2, 3 for half, once, one and a half times the recipe's loading."
            ),
            new(
                "depth_mm",
                new NumberShape(DepthMm),
                "Depth over the board, mm, where it is not the recipe's."
            ),
            new(
                "loading_percent",
                new NumberShape(LoadingPercent),
                "Pigment's share of the mix by mass, %, where it is not the recipe's."
            ),
            new(
                "charge",
                RecipeShape.Whole.Find("charge")!.Shape,
                "Light before this decay, where it is not the recipe's."
            ),
            new(
                "darkness_temperature_c",
                new NumberShape(TemperatureC),
                "Temperature of the darkness, °C, where it is not the recipe's."
            ),
            new("noise_percent", new NumberShape(Percent), "Noise of the meter, standard deviation in %."),
            new(
                "display_step",
                new NumberShape(DisplayStep),
                "Step of the meter's display, in the file's unit."
            ),
            new(
                "dark_from_min",
                new NumberShape(NumberRange.Any),
                "When the light went off, in minutes of the file's clock."
            ),
            new("geometry", new TextShape { Only = Geometries }, "How a lux meter looked at the glow."),
            new("hole_mm", new NumberShape(Millimetres), "Diameter of the hole in the mask, mm."),
            new("sensor_mm", new NumberShape(Millimetres), "Diameter of the sensor behind it, mm."),
            new("disc_mm", new NumberShape(Millimetres), "Diameter of the glowing disc, mm."),
            new("distance_mm", new NumberShape(DistanceMm), "From the disc to the sensor, mm."),
        ])
        {
            Exclusive = [("loading_percent", "tile")],
        };
}
