using GlowMix.Colour;
using GlowMix.Documents;
using GlowMix.Spectra;

namespace GlowMix.Materials;

/// <summary>Reads a file of data/lamps: a CIE illuminant by name, a table over nm, or one Gaussian band.</summary>
internal static class LampReader
{
    private const string Key = "spectrum";

    public static Lamp? Read(MaterialReader reader, MaterialHead head)
    {
        double startsAtNm = WavelengthGrid.FirstNm;
        var spectrum = reader.Entry<Spectrum>(
            Key,
            null,
            isOptional: false,
            entry =>
            {
                var (text, table, relative) = ReadSpectrum(entry);
                var doubt = MaterialReader.ReadDoubt(entry, Key);
                var note = MaterialReader.Note(entry, Key);
                if (relative is null || note is null)
                {
                    return null;
                }
                if (!relative.Samples.ContainsAnyExceptInRange(0, 0))
                {
                    reader.Keys.Error(Key, MaterialProblemTexts.NoLight);
                    return null;
                }
                startsAtNm = table?.FirstNm ?? WavelengthGrid.FirstNm;
                return reader.Remember(Key, text, new Sourced<Spectrum>(relative, note.Value, doubt));
            }
        );
        string? below = reader.Keys.OneOf("below_start", "unknown", "nothing");
        return spectrum is null || below is null
            ? null
            : new()
            {
                Name = head.Name,
                Title = head.Title,
                Cautions = head.Cautions,
                Origin = head.Origin,
                RelativeSpectrum = spectrum,
                StartsAtNm = startsAtNm,
                IsUnknownBelowStart = below == "unknown",
            };
    }

    private static (string Text, TabulatedSpectrum? Table, Spectrum? Relative) ReadSpectrum(
        MappingReader entry
    )
    {
        if (entry.Has("peak_nm"))
        {
            double? peak = entry.Number(
                "peak_nm",
                NumberRange.Between(WavelengthGrid.FirstNm, WavelengthGrid.LastNm)
            );
            double? fwhm = entry.Number("fwhm_nm", NumberRange.Between(5, 300));
            return peak is { } p && fwhm is { } w
                ? ($"band at {NumberText.Write(p)} nm", null, GaussianBand.PerNm(p, w))
                : default;
        }
        if (entry.Has("at_nm"))
        {
            var points = MaterialReader.Points(
                entry,
                "at_nm",
                $"{Key} at_nm",
                MaterialRanges.Nm,
                NumberRange.Between(0, 1e9),
                least: 2
            );
            if (points is null)
            {
                return default;
            }
            double[] nm = [.. points.Points.Select(p => p.At)];
            double[] values = [.. points.Points.Select(p => p.Value)];
            var own = TabulatedSpectrum.From(nm, values);
            return ("table", own, ResampledSpectrum.From(own).Spectrum);
        }
        if (entry.OneOf("cie_illuminant", StandardIlluminants.Names) is not { } illuminant)
        {
            return default;
        }
        var table = StandardIlluminants.Named(illuminant);
        return ($"CIE illuminant {illuminant}", table, ResampledSpectrum.From(table).Spectrum);
    }
}
