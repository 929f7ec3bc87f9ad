using GlowMix.Documents;
using GlowMix.Spectra;

namespace GlowMix.Materials;

/// <summary>Reads a table over nm onto the model's wavelengths.</summary>
internal static class SpectrumReader
{
    /// <param name="reader">The file.</param>
    /// <param name="key">The entry, with 'at_nm' in it.</param>
    /// <param name="allowed">What a value may be.</param>
    /// <param name="onGrid">How to read between the points.</param>
    /// <param name="like">Taken where the entry is not written.</param>
    public static Sourced<Spectrum>? Read(
        MaterialReader reader,
        string key,
        NumberRange allowed,
        Func<PointTable, Spectrum> onGrid,
        Sourced<Spectrum>? like = null
    )
    {
        if (!reader.Keys.Has(key) && like is not null)
        {
            reader.Keys.Take(key);
            reader.Borrow(key);
            return like;
        }
        if (reader.Table(key, "at_nm", MaterialRanges.Nm, allowed) is not { } table)
        {
            return null;
        }
        double firstNm = table.Value.Points[0].At;
        double lastNm = table.Value.Points[^1].At;
        if (firstNm > WavelengthGrid.FirstNm || lastNm < WavelengthGrid.LastNm)
        {
            reader.Keys.Warning(key, MaterialProblemTexts.TableHeld(key, firstNm, lastNm));
        }
        return table.Select(onGrid);
    }
}
