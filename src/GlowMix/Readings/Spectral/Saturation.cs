using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Readings.Spectral;

/// <summary>Tops that were cut off because the converter was full.</summary>
internal static class Saturation
{
    // A top rounded to few digits is flat too, but its shoulders point hardly higher.
    private const double LeastExcess = 0.015;
    private const int Shoulder = 2;

    /// <summary>The warning, or null.</summary>
    public static Warning? Check(ReadingFigures figures)
    {
        TabulatedSpectrum table = figures.Reading.Spectrum;
        double[] mended = table.Values.ToArray();
        bool isCut = false;
        bool isUnknown = false;
        double fromNm = 0;
        double toNm = 0;
        foreach (WavelengthRange flat in figures.Reading.FlatTops)
        {
            int first = table.IndexAtOrAfter(flat.FromNm - 1e-6);
            int end = table.IndexAtOrAfter(flat.ToNm + 1e-6);
            if (end <= first || !WavelengthRange.Visible.Contains(flat.FromNm))
            {
                continue;
            }
            var (top, isKnown) = Mend(table, first, end, mended);
            // At an end of the table there is one shoulder: believed of counts only.
            if (!isKnown && figures.Reading.Unit != SpectralUnit.Counts || isKnown && top < (1 + LeastExcess) * table.Values[first])
            {
                continue;
            }
            fromNm = isCut ? fromNm : flat.FromNm;
            toNm = flat.ToNm;
            isUnknown |= !isKnown;
            isCut = true;
        }
        if (!isCut)
        {
            return null;
        }
        TabulatedSpectrum without = TabulatedSpectrum
            .From(table.WavelengthsNm, mended)
            .Between(WavelengthRange.Visible.FromNm, WavelengthRange.Visible.ToNm);
        string effect = isUnknown
            ? "what is cut off cannot be told"
            : $"with tops drawn through their shoulders the CCT moves by about {ColourEffect.Between(figures, without).InWords}";
        return new(
            "saturated",
            "cct_k",
            ReadingTexts.Invariant(
                $"saturated from {fromNm:0.#} to {toNm:0.#} nm; {effect}, read again with a shorter exposure"
            )
        );
    }

    // A parabola in the logarithm, which is a bell, through two samples at each side.
    private static (double Top, bool IsKnown) Mend(
        TabulatedSpectrum table,
        int first,
        int end,
        double[] mended
    )
    {
        if (first < Shoulder || end + Shoulder > table.Count)
        {
            return (0, false);
        }
        double centre = (table.WavelengthsNm[first] + table.WavelengthsNm[end - 1]) / 2;
        int[] sides = [first - 2, first - 1, end, end + 1];
        double[] nm = [.. sides.Select(i => table.WavelengthsNm[i] - centre)];
        double[] values = [.. sides.Select(i => table.Values[i])];
        if (values.Any(v => v <= 0))
        {
            return (0, false);
        }
        double[] bell = MathNet.Numerics.Fit.Polynomial(nm, [.. values.Select(v => Math.Log(v))], 2);
        if (bell[2] >= 0)
        {
            return (0, false);
        }
        double top = 0;
        for (int i = first; i < end; i++)
        {
            double x = table.WavelengthsNm[i] - centre;
            double value = Math.Exp(bell[0] + (bell[1] * x) + (bell[2] * x * x));
            mended[i] = Math.Max(mended[i], value);
            top = Math.Max(top, value);
        }
        return (top, true);
    }
}
