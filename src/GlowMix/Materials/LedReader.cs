using GlowMix.Documents;

namespace GlowMix.Materials;

/// <summary>Reads a file of data/leds.</summary>
internal static class LedReader
{
    private static readonly NumberRange Width = NumberRange.Between(5, 300);
    private static readonly NumberRange Ma = NumberRange.Above(0, 10000);

    public static Led? Read(MaterialReader reader, MaterialHead head)
    {
        var keys = reader.Keys;
        var diePeak = reader.Number("die_peak_nm", NumberRange.Between(400, 490));
        var dieWidth = reader.Number("die_fwhm_nm", Width);
        var greenPeak = reader.Number("green_peak_nm", NumberRange.Between(480, 600));
        var greenShort = reader.Number("green_short_fwhm_nm", Width);
        var greenLong = reader.Number("green_long_fwhm_nm", Width);
        var redPeak = reader.Number("red_peak_nm", NumberRange.Between(560, 700));
        var redShort = reader.Number("red_short_fwhm_nm", Width);
        var redLong = reader.Number("red_long_fwhm_nm", Width);
        var dieShare = reader.Number("die_share", MaterialRanges.Share);
        var greenShare = reader.Number("green_share", MaterialRanges.Share);
        var redShare = reader.Number("red_share", MaterialRanges.Share);
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
            diePeak is null
            || dieWidth is null
            || greenPeak is null
            || greenShort is null
            || greenLong is null
            || redPeak is null
            || redShort is null
            || redLong is null
            || dieShare is null
            || greenShare is null
            || redShare is null
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
        double sum = dieShare.Value + greenShare.Value + redShare.Value;
        if (Math.Abs(sum - 1) > 1e-4)
        {
            keys.Error("die_share", MaterialProblemTexts.SharesDoNotAddUp(sum));
        }
        if (!(diePeak.Value < greenPeak.Value && greenPeak.Value < redPeak.Value))
        {
            keys.Error("green_peak_nm", MaterialProblemTexts.BandsOutOfOrder);
        }
        if (maxMa.Value < atMa.Value)
        {
            keys.Error("max_ma", MaterialProblemTexts.RatedAboveMost(atMa.Value, maxMa.Value));
        }
        return new()
        {
            Name = head.Name,
            Title = head.Title,
            Cautions = head.Cautions,
            Origin = head.Origin,
            Die = new(GaussianBand.PerNm(diePeak.Value, dieWidth.Value), diePeak.Value, dieShare),
            Green = new(
                GaussianBand.PerNm(greenPeak.Value, greenShort.Value, greenLong.Value),
                greenPeak.Value,
                greenShare
            ),
            Red = new(
                GaussianBand.PerNm(redPeak.Value, redShort.Value, redLong.Value),
                redPeak.Value,
                redShare
            ),
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
        double?[] values = [.. into.Select(key => shares.Number(key, MaterialRanges.Share))];
        shares.Finish();
        double sum = values.Sum(value => value ?? 0);
        if (sum > 1 + 1e-9)
        {
            entry.Error(column, MaterialProblemTexts.ColumnAboveOne(column, sum));
            return [];
        }
        return values;
    }
}
