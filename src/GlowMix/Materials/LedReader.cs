using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Materials;

/// <summary>Reads a file of data/leds.</summary>
internal static class LedReader
{
    private static readonly NumberRange Ma = NumberRange.Above(0, 10000);

    public static Led? Read(MaterialReader reader, MaterialHead head, Func<ImmutableArray<Led>> shipped)
    {
        var bands = LedBandsReader.Read(reader, head, shipped);
        var flux = reader.Number("flux_lm", NumberRange.Above(0, 100000));
        var atMa = reader.Number("at_ma", Ma);
        var maxMa = reader.Number("max_ma", Ma);
        var relativeFlux = reader.Table(
            "relative_flux",
            "at_ma",
            NumberRange.Between(0, 10000),
            NumberRange.Between(0, 100),
            least: 2,
            isOptional: true
        );
        var window = reader.Number("window_radius_mm", NumberRange.Between(0.1, 50));
        var height = reader.Number("package_height_mm", NumberRange.Between(0, 20));
        var length = reader.Number("package_length_mm", NumberRange.Between(0.5, 100));
        var width = reader.Number("package_width_mm", NumberRange.Between(0.5, 100));
        var filling = reader.Number("filling_index", NumberRange.Between(1, 2));
        var matrix = reader.Entry("return_matrix", null, isOptional: false, e => ReadMatrix(reader, e));
        if (
            bands is not { } white
            || flux is null
            || atMa is null
            || maxMa is null
            || window is null
            || height is null
            || length is null
            || width is null
            || filling is null
            || matrix is null
        )
        {
            return null;
        }
        if (maxMa.Value < atMa.Value)
        {
            reader.Keys.Error("max_ma", MaterialProblemTexts.RatedAboveMost(atMa.Value, maxMa.Value));
        }
        return new()
        {
            Name = head.Name,
            Title = head.Title,
            Cautions = head.Cautions,
            Origin = head.Origin,
            StandInNote = white.StandInNote,
            Die = white.Bands[0],
            Green = white.Bands[1],
            Red = white.Bands[2],
            ReturnMatrix = matrix,
            FluxLm = flux,
            AtMa = atMa,
            MaxMa = maxMa,
            RelativeFlux = relativeFlux,
            WindowRadiusMm = window,
            PackageHeightMm = height,
            PackageLengthMm = length,
            PackageWidthMm = width,
            FillingIndex = filling,
        };
    }

    private static Sourced<ReturnMatrix>? ReadMatrix(MaterialReader reader, MappingReader entry)
    {
        const string Key = "return_matrix";
        double?[] die = Column(entry, "from_die", "into_die", "into_green", "into_red");
        double?[] green = Column(entry, "from_green", "into_green", "into_red");
        double?[] red = Column(entry, "from_red", "into_red");
        var doubt = MaterialReader.ReadDoubt(entry, Key);
        var note = MaterialReader.Note(entry, Key);
        double?[] all = [.. die, .. green, .. red];
        if (note is null || all.Length < 6 || all.Any(share => share is null))
        {
            return null;
        }
        return reader.Remember(
            Key,
            "matrix",
            new Sourced<ReturnMatrix>(
                Materials.ReturnMatrix.From(
                    all[0]!.Value,
                    all[1]!.Value,
                    all[2]!.Value,
                    all[3]!.Value,
                    all[4]!.Value,
                    all[5]!.Value
                ),
                note.Value,
                doubt
            )
        );
    }

    private static double?[] Column(MappingReader entry, string column, params string[] into)
    {
        if (entry.Mapping(column) is not { } shares)
        {
            return [];
        }
        var values = Array.ConvertAll(into, key => shares.Number(key, MaterialRanges.Share));
        shares.Finish();
        double sum = 0;
        foreach (double? value in values)
        {
            sum += value ?? 0;
        }
        if (sum > 1 + 1e-9)
        {
            entry.Error(column, MaterialProblemTexts.ColumnAboveOne(column, sum));
            return [];
        }
        return values;
    }
}
