using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Readings.Spectral;

/// <summary>Tops that were cut off because the converter was full.</summary>
internal static class Saturation
{
    // A top rounded to few digits is flat too, but its shoulders point hardly higher.
    private const double LeastExcess = 0.015;
    private const double ShoulderNm = 6;
    private const int LeastShoulder = 2;

    /// <summary>The warning, or null.</summary>
    public static Warning? Check(ReadingFigures figures)
    {
        TabulatedSpectrum table = figures.Reading.Spectrum;
        double[] mended = table.Values.ToArray();
        var cut = new List<WavelengthRange>();
        bool isUnknown = false;
        foreach (WavelengthRange flat in Joined(figures.Reading.FlatTops))
        {
            int first = table.IndexAtOrAfter(flat.FromNm - 1e-6);
            int end = table.IndexAtOrAfter(flat.ToNm + 1e-6);
            if (end <= first || !WavelengthRange.Visible.Contains(flat.FromNm))
            {
                continue;
            }
            var (top, isKnown) = Mend(table, first, end, mended);
            // At an end of the table there is one shoulder: believed of counts only.
            if (
                isKnown
                    ? top >= (1 + LeastExcess) * table.Values[first]
                    : figures.Reading.Unit == SpectralUnit.Counts
            )
            {
                isUnknown |= !isKnown;
                cut.Add(flat);
            }
        }
        if (cut.Count == 0)
        {
            return null;
        }
        TabulatedSpectrum without = TabulatedSpectrum
            .From(table.WavelengthsNm, mended)
            .Between(WavelengthRange.Visible.FromNm, WavelengthRange.Visible.ToNm);
        string effect = isUnknown
            ? "what is cut off cannot be told"
            : $"with tops drawn through their shoulders the CCT moves by about {ColourEffect.Between(figures, without).InWords}";
        string where = string.Join(
            " and ",
            cut.Select(c => ReadingTexts.Invariant($"from {c.FromNm:0.#} to {c.ToNm:0.#} nm"))
        );
        return new("saturated", "cct_k", $"saturated {where}; {effect}, read again with a shorter exposure");
    }

    // Noise breaks a top into several.
    private static List<WavelengthRange> Joined(IEnumerable<WavelengthRange> flats)
    {
        var joined = new List<WavelengthRange>();
        foreach (WavelengthRange flat in flats.OrderBy(f => f.FromNm))
        {
            if (joined.Count > 0 && flat.FromNm - joined[^1].ToNm < ShoulderNm)
            {
                joined[^1] = joined[^1] with { ToNm = flat.ToNm };
            }
            else
            {
                joined.Add(flat);
            }
        }
        return joined;
    }

    // A parabola in the logarithm, which is a bell, through the samples of a few nm at each side.
    private static (double Top, bool IsKnown) Mend(
        TabulatedSpectrum table,
        int first,
        int end,
        double[] mended
    )
    {
        double centre = (table.WavelengthsNm[first] + table.WavelengthsNm[end - 1]) / 2;
        var nm = new List<double>();
        var logs = new List<double>();
        int left = Gather(first - 1, -1);
        int right = Gather(end, 1);
        if (left < LeastShoulder || right < LeastShoulder)
        {
            return (0, false);
        }
        double[] bell = MathNet.Numerics.Fit.Polynomial([.. nm], [.. logs], 2);
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

        int Gather(int start, int step)
        {
            int count = 0;
            for (int i = start; i >= 0 && i < table.Count && table.Values[i] > 0; i += step)
            {
                if (
                    count >= LeastShoulder
                    && Math.Abs(table.WavelengthsNm[i] - table.WavelengthsNm[start]) > ShoulderNm
                )
                {
                    break;
                }
                nm.Add(table.WavelengthsNm[i] - centre);
                logs.Add(Math.Log(table.Values[i]));
                count++;
            }
            return count;
        }
    }
}
