using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Readings.Decay;
using GlowMix.Recipes;
using static GlowMix.Readings.Sets.ReadingsSetShape;

namespace GlowMix.Readings.Sets;

/// <summary>Reads a set of readings; what it returns is good only if the list of problems has no error.</summary>
internal static class ReadingsSetReader
{
    public static ReadingsSet? Read(MappingNode root, string name, ProblemList problems)
    {
        var keys = new MappingReader(root, problems);
        if (root.Entries is [] || root.Entries[0].Key.Value != ReadingsSetFile.FormatKey)
        {
            problems.Error(root.Place, SetTexts.FirstKey);
            return null;
        }
        if (
            keys.WholeNumber(ReadingsSetFile.FormatKey, ReadingsSetFile.Format, ReadingsSetFile.Format)
            is null
        )
        {
            return null;
        }
        bool? corrected = keys.OptionalOneOf("corrected", Corrected) switch
        {
            "yes" => true,
            "no" => false,
            _ => null,
        };
        double? comparable = keys.OptionalNumber("comparable_percent", Percent);
        var readings = ImmutableArray.CreateBuilder<SetReading>();
        if (keys.List("readings", 1, MostReadings) is { } list)
        {
            for (int i = 0; i < list.Count; i++)
            {
                if (list.Mapping(i) is { } item && ReadingOf(item) is { } reading)
                {
                    readings.Add(reading);
                }
            }
        }
        keys.Finish();
        var set = new ReadingsSet
        {
            Name = name,
            IsCorrected = corrected,
            ComparablePercent = comparable,
            Readings = readings.ToImmutable(),
        };
        if (!problems.HasErrors)
        {
            foreach (var (place, text) in WrongWith(set))
            {
                problems.Error(place, text);
            }
        }
        return set;
    }

    /// <summary>What readings cannot be together.</summary>
    public static IEnumerable<(Place? Place, string Text)> WrongWith(ReadingsSet set)
    {
        var bare = set.Readings.Where(r => r.State == ReadingState.Bare).ToArray();
        var lit = set.Readings.Where(r => r.State is not (ReadingState.Bare or ReadingState.Decay)).ToArray();
        if (bare.Length > 1)
        {
            yield return (bare[1].Place, SetTexts.SecondBare);
        }
        if (bare.Length == 0 && lit.Length > 0)
        {
            yield return (lit[0].Place, SetTexts.NoBare);
        }
        if (lit.Length == 0 && set.Readings.All(r => r.State != ReadingState.Decay))
        {
            yield return (null, SetTexts.NothingToFit);
        }
    }

    private static SetReading? ReadingOf(MappingReader keys)
    {
        string? file = keys.Text("file");
        string? word = keys.OneOf("state", [.. States.Select(s => s.Word)]);
        if (file is null || word is null)
        {
            return null;
        }
        var state = States.First(s => s.Word == word).State;
        bool hasDepth = state is ReadingState.Potted or ReadingState.Pigmented or ReadingState.Decay;
        bool hasLoading = state is ReadingState.Pigmented or ReadingState.Decay;
        bool isDecay = state == ReadingState.Decay;
        keys.NotBoth("loading_percent", "tile");
        var reading = new SetReading(file, state)
        {
            DepthMm = hasDepth ? keys.OptionalNumber("depth_mm", DepthMm) : null,
            LoadingPercent = hasLoading ? keys.OptionalNumber("loading_percent", LoadingPercent) : null,
            Tile = hasLoading
                ? keys.OptionalWholeNumber("tile", (int)TileNumber.Least, (int)TileNumber.Most)
                : null,
            Charge = isDecay && keys.Has("charge") ? ChargeReader.Read(keys) : null,
            DarknessTemperatureC = isDecay
                ? keys.OptionalNumber("darkness_temperature_c", TemperatureC)
                : null,
            NoisePercent = isDecay ? keys.OptionalNumber("noise_percent", Percent) : null,
            DisplayStep = isDecay ? keys.OptionalNumber("display_step", DisplayStep) : null,
            DarkFromMinutes = isDecay ? keys.OptionalNumber("dark_from_min", NumberRange.Any) : null,
            Geometry = isDecay ? GeometryOf(keys) : null,
            Place = keys.Node.Place,
        };
        keys.Finish();
        return reading;
    }

    private static MeterGeometry? GeometryOf(MappingReader keys)
    {
        string? word = keys.OptionalOneOf("geometry", Geometries);
        switch (word)
        {
            case "contact":
                return MeterGeometry.Contact;
            case "contact-mask":
            {
                double? hole = keys.Number("hole_mm", Millimetres);
                double? sensor = keys.Number("sensor_mm", Millimetres);
                if (hole > sensor)
                {
                    keys.Error("hole_mm", SetTexts.HoleOverSensor);
                    return null;
                }
                return hole is double h && sensor is double s ? MeterGeometry.ContactMask(h, s) : null;
            }
            case "disc-at":
            {
                double? disc = keys.Number("disc_mm", Millimetres);
                double? distance = keys.Number("distance_mm", DistanceMm);
                return disc is double r && distance is double d ? MeterGeometry.DiscAt(r, d) : null;
            }
            default:
                return null;
        }
    }
}
