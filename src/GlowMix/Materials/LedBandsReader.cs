using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Spectra;

namespace GlowMix.Materials;

/// <summary>
/// Reads what an LED's bands are: peaks, widths and shares; or 'white' with the label's colour temperature; or 'spectrum', a
/// measured table over nm. The last two are worked out as for an LED that a recipe tells of itself.
/// </summary>
internal static class LedBandsReader
{
    private const string White = "white";
    private const string Measured = "spectrum";
    private static readonly NumberRange Width = NumberRange.Between(5, 300);

    /// <summary>Colour temperatures of a label that bands can give, K.</summary>
    public static NumberRange CctK { get; } = NumberRange.Between(1800, 12_000);

    /// <summary>Colour rendering indices of a label, likewise.</summary>
    public static NumberRange Rendering { get; } = NumberRange.Between(50, 100);

    /// <returns>Die, green and red, and why they are a stand-in; null and a problem if they cannot be had.</returns>
    public static (ImmutableArray<LedBand> Bands, string? StandInNote)? Read(
        MaterialReader reader,
        MaterialHead head,
        Func<ImmutableArray<Led>> shipped
    )
    {
        bool hasWhite = reader.Keys.Has(White);
        bool hasSpectrum = reader.Keys.Has(Measured);
        if (!hasWhite && !hasSpectrum)
        {
            return OwnBands(reader) is { } own ? (own, null) : null;
        }
        if (reader.Keys.NotBoth(White, Measured))
        {
            reader.Keys.Take(White);
            reader.Keys.Take(Measured);
            return null;
        }
        var found = hasWhite
            ? reader.Entry(White, null, isOptional: false, entry => OfLabel(reader, entry, head, shipped()))
            : reader.Entry(
                Measured,
                null,
                isOptional: false,
                entry => OfTable(reader, entry, head, shipped())
            );
        return found is null ? null : (found.Value.Bands, found.Value.StandInNote);
    }

    private static ImmutableArray<LedBand>? OwnBands(MaterialReader reader)
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
        return
        [
            new(GaussianBand.PerNm(diePeak.Value, dieWidth.Value), diePeak.Value, dieShare),
            new(
                GaussianBand.PerNm(greenPeak.Value, greenShort.Value, greenLong.Value),
                greenPeak.Value,
                greenShare
            ),
            new(GaussianBand.PerNm(redPeak.Value, redShort.Value, redLong.Value), redPeak.Value, redShare),
        ];
    }

    private static Sourced<Led>? OfLabel(
        MaterialReader reader,
        MappingReader entry,
        MaterialHead head,
        ImmutableArray<Led> shipped
    )
    {
        double? cctK = entry.Number("cct_k", CctK);
        double? ra = entry.OptionalNumber("ra", Rendering);
        var note = MaterialReader.Note(entry, White);
        return cctK is { } k && note is { } source
            ? Told(
                reader,
                White,
                $"{NumberText.Write(k)} K",
                source,
                LedFromLabel.Of(k, ra, AnyRatings, shipped, head.Name)
            )
            : null;
    }

    private static Sourced<Led>? OfTable(
        MaterialReader reader,
        MappingReader entry,
        MaterialHead head,
        ImmutableArray<Led> shipped
    )
    {
        var table = MaterialReader.Points(
            entry,
            "at_nm",
            $"{Measured} at_nm",
            MaterialRanges.Nm,
            NumberRange.Between(0, 1e9),
            least: 10
        );
        var note = MaterialReader.Note(entry, Measured);
        if (table is null || note is not { } source)
        {
            return null;
        }
        var relative = ResampledSpectrum
            .From(
                TabulatedSpectrum.From(
                    [.. table.Points.Select(p => p.At)],
                    [.. table.Points.Select(p => p.Value)]
                )
            )
            .Spectrum;
        return Told(
            reader,
            Measured,
            "table",
            source,
            LedFromSpectrum.Of(relative, AnyRatings, shipped, head.Name)
        );
    }

    // Only the bands are taken: flux, currents and size stand in the file.
    private static PackageRatings AnyRatings => new() { FluxLm = 1, AtMa = 1 };

    private static Sourced<Led>? Told(
        MaterialReader reader,
        string key,
        string text,
        SourceNote source,
        WorkedOutLed led
    )
    {
        if (led.Led is { } found)
        {
            return reader.Remember(key, text, new Sourced<Led>(found, source));
        }
        reader.Keys.Error(key, led.Problem!);
        return null;
    }
}
