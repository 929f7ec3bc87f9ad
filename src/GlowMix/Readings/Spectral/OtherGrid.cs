using GlowMix.Spectra;

namespace GlowMix.Readings.Spectral;

/// <summary>Two tables on different wavelengths: brought onto those of the first, as far as the second reaches.</summary>
internal static class OtherGrid
{
    // Wavelengths are written with a few decimals; closer than this they are the same.
    private const double SamePlaceNm = 0.011;

    /// <summary>
    /// The first table where the second one reaches, and the second on those wavelengths, by straight lines where they differ.
    /// </summary>
    /// <returns>Null where fewer than two wavelengths are shared.</returns>
    public static (TabulatedSpectrum First, double[] Second, bool IsInterpolated)? Of(
        TabulatedSpectrum first,
        TabulatedSpectrum second
    )
    {
        if (AreSame(first, second))
        {
            return (first, second.Values.ToArray(), false);
        }
        double fromNm = second.FirstNm - SamePlaceNm;
        double toNm = second.LastNm + SamePlaceNm;
        int shared = 0;
        foreach (double nm in first.WavelengthsNm)
        {
            shared += nm >= fromNm && nm <= toNm ? 1 : 0;
        }
        if (shared < 2)
        {
            return null;
        }
        TabulatedSpectrum within = first.Between(fromNm, toNm);
        var values = new double[within.Count];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = second.ValueAtNm(Math.Clamp(within.WavelengthsNm[i], second.FirstNm, second.LastNm));
        }
        return (within, values, true);
    }

    /// <summary>A table with each value changed.</summary>
    /// <param name="table">The table.</param>
    /// <param name="change">From index and value to the new value.</param>
    public static TabulatedSpectrum Changed(TabulatedSpectrum table, Func<int, double, double> change)
    {
        var values = new double[table.Count];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = change(i, table.Values[i]);
        }
        return TabulatedSpectrum.From(table.WavelengthsNm, values);
    }

    private static bool AreSame(TabulatedSpectrum a, TabulatedSpectrum b)
    {
        if (a.Count != b.Count)
        {
            return false;
        }
        for (int i = 0; i < a.Count; i++)
        {
            if (Math.Abs(a.WavelengthsNm[i] - b.WavelengthsNm[i]) > SamePlaceNm)
            {
                return false;
            }
        }
        return true;
    }
}
