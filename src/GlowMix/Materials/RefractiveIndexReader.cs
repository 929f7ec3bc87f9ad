using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Spectra;

namespace GlowMix.Materials;

/// <summary>
/// Reads a refractive index: one value, a table over nm, or a formula; or refractive_index_d with abbe_number. The doubt is
/// that of the index at 587.6 nm.
/// </summary>
internal static class RefractiveIndexReader
{
    private static readonly NumberRange Allowed = NumberRange.Between(1, 3);

    /// <returns>The index at any wavelength in nm; null and a problem if it cannot be had.</returns>
    public static Sourced<Spectrum>? Read(MaterialReader reader, Sourced<Spectrum>? like)
    {
        var keys = reader.Keys;
        if (keys.NotBoth("refractive_index", "refractive_index_d"))
        {
            keys.Take("refractive_index");
            keys.Take("refractive_index_d");
            keys.Take("abbe_number");
            return null;
        }
        if (keys.Has("refractive_index_d") || keys.Has("abbe_number"))
        {
            return FromAbbeNumber(reader);
        }
        if (!keys.Has("refractive_index") && like is not null)
        {
            reader.Borrow("refractive_index_d");
            reader.Borrow("abbe_number");
        }
        return reader.Entry("refractive_index", like, isOptional: false, entry => FromEntry(reader, entry));
    }

    private static Sourced<Spectrum>? FromAbbeNumber(MaterialReader reader)
    {
        var index = reader.Number("refractive_index_d", Allowed);
        var abbe = reader.Number("abbe_number", NumberRange.Between(10, 200));
        if (index is null || abbe is null)
        {
            return null;
        }
        var spectrum = Checked(
            reader,
            "refractive_index_d",
            nm => Dispersion.Abbe(nm / 1000, index.Value, abbe.Value)
        );
        return spectrum is null ? null : index.Select(_ => spectrum);
    }

    private static Sourced<Spectrum>? FromEntry(MaterialReader reader, MappingReader entry)
    {
        const string Key = "refractive_index";
        Func<double, double>? indexAtNm = null;
        double? value = null;
        string text = "formula";
        if (entry.Has("value"))
        {
            value = entry.Number("value", Allowed);
            indexAtNm = value is { } constant ? _ => constant : null;
            text = value is { } number ? NumberText.Write(number) : "";
        }
        else if (entry.Has("at_nm"))
        {
            var table = MaterialReader.Points(
                entry,
                "at_nm",
                $"{Key} at_nm",
                MaterialRanges.Nm,
                Allowed,
                least: 1
            );
            indexAtNm = table is null ? null : table.Linear;
            text = "table";
        }
        else
        {
            indexAtNm = FromFormula(entry);
        }
        // A formula or a table may be off as a whole: the ends are those of the index at 587.6 nm.
        double? atLineD = value ?? indexAtNm?.Invoke(Dispersion.LineDUm * 1000);
        var doubt = MaterialReader.ReadDoubt(entry, Key, atLineD, mayHaveEnds: true);
        var note = MaterialReader.Note(entry, Key);
        var spectrum = indexAtNm is null ? null : Checked(reader, Key, indexAtNm);
        return spectrum is not null && note is not null
            ? reader.Remember(Key, text, new Sourced<Spectrum>(spectrum, note.Value, doubt))
            : null;
    }

    private static Func<double, double>? FromFormula(MappingReader entry)
    {
        switch (entry.OneOf("formula", "sellmeier", "sellmeier-with-offset", "cauchy"))
        {
            case "sellmeier" when Terms(entry) is { IsDefault: false } terms:
                return nm => Dispersion.Sellmeier(nm / 1000, terms);
            case "sellmeier-with-offset":
                double? offset = entry.Number("a", NumberRange.Above(0, 100));
                var sum = Terms(entry);
                return offset is { } o && !sum.IsDefault
                    ? nm => Dispersion.SellmeierWithOffset(nm / 1000, o, sum)
                    : null;
            case "cauchy":
                double? a = entry.Number("a", Allowed);
                double? b = entry.Number("b_um2", NumberRange.Between(-1, 1));
                double? c = entry.Number("c_um4", NumberRange.Between(-1, 1));
                return a is { } ca && b is { } cb && c is { } cc
                    ? nm => Dispersion.Cauchy(nm / 1000, ca, cb, cc)
                    : null;
            default:
                return null;
        }
    }

    private static ImmutableArray<(double B, double C)> Terms(MappingReader entry)
    {
        if (entry.List("terms", 1, 5) is not { } list)
        {
            return default;
        }
        var terms = ImmutableArray.CreateBuilder<(double, double)>();
        for (int i = 0; i < list.Count; i++)
        {
            if (list.Mapping(i) is not { } term)
            {
                continue;
            }
            double? b = term.Number("b", NumberRange.Between(-1e5, 1e5));
            double? c = term.Number("c_um2", NumberRange.Between(0, 1e5));
            term.Finish();
            if (b is { } bValue && c is { } cValue)
            {
                terms.Add((bValue, cValue));
            }
        }
        return terms.Count == list.Count ? terms.ToImmutable() : default;
    }

    private static Spectrum? Checked(MaterialReader reader, string key, Func<double, double> indexAtNm)
    {
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            double nm = WavelengthGrid.NmAt(i);
            double index = indexAtNm(nm);
            if (!Allowed.Contains(index))
            {
                reader.Keys.Error(key, MaterialProblemTexts.IndexOutOfRange(nm, index));
                return null;
            }
        }
        return Spectrum.FromNm(indexAtNm);
    }
}
