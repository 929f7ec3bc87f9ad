using GlowMix.Spectra;
using MathNet.Numerics.Interpolation;

namespace GlowMix.Readings.Fit;

/// <summary>
/// Logarithm of a lit reading over a bare one on the model's grid, where both have light. Divided where they were read, and averaged
/// over a step of the grid only then: on the flank of the die both change much faster than their ratio.
/// </summary>
internal static class LogRatio
{
    private const int FirstNm = 380;
    private const double LeastShareOfPeak = 0.01;
    private const double HalfStepNm = WavelengthGrid.StepNm / 2.0;

    /// <summary>Indices on the grid, and the logarithms there.</summary>
    /// <param name="lit">The lit reading.</param>
    /// <param name="bare">The bare one.</param>
    /// <param name="isMean">Each is a mean over a step of the grid; false where the readings are on the grid themselves.</param>
    public static (int[] Samples, double[] Logs) Of(
        TabulatedSpectrum lit,
        TabulatedSpectrum bare,
        out bool isMean
    )
    {
        isMean = !IsOnGrid(lit.WavelengthsNm);
        double[] unlit = At(bare, lit.WavelengthsNm);
        double litPeak = Peak(lit.Values);
        double barePeak = Peak(bare.Values);
        var logs = new double[lit.Count];
        var isStrong = new bool[lit.Count];
        for (int i = 0; i < logs.Length; i++)
        {
            isStrong[i] =
                lit.Values[i] > LeastShareOfPeak * litPeak && unlit[i] > LeastShareOfPeak * barePeak;
            logs[i] = isStrong[i] ? Math.Log(lit.Values[i] / unlit[i]) : 0;
        }
        var onGrid = ResampledSpectrum.From(TabulatedSpectrum.From(lit.WavelengthsNm, logs)).Spectrum;
        int[] samples =
        [
            .. Enumerable
                .Range(0, WavelengthGrid.Count)
                .Where(i => WavelengthGrid.NmAt(i) >= FirstNm && IsStrongAround(WavelengthGrid.NmAt(i))),
        ];
        return (samples, [.. samples.Select(i => onGrid[i])]);

        // All samples that the mean over a step rests on, the next beyond each end with them.
        bool IsStrongAround(double nm)
        {
            int from = lit.IndexAtOrAfter(nm - HalfStepNm) - 1;
            int to = lit.IndexAtOrAfter(nm + HalfStepNm);
            if (from < 0 || to >= isStrong.Length)
            {
                return false;
            }
            for (int i = from; i <= to; i++)
            {
                if (!isStrong[i])
                {
                    return false;
                }
            }
            return true;
        }
    }

    /// <summary>What a mean over a step of the grid is, of logarithms at the grid's samples: by the curvature between three.</summary>
    public static double[] Means(double[] logs) =>
        [
            .. logs.Select(
                (v, i) =>
                    i == 0 || i == logs.Length - 1 ? v : v + ((logs[i - 1] - (2 * v) + logs[i + 1]) / 24)
            ),
        ];

    private static bool IsOnGrid(ReadOnlySpan<double> wavelengthsNm)
    {
        const double samePlaceNm = 1e-6;
        for (int i = 0; i < wavelengthsNm.Length; i++)
        {
            double step = i == 0 ? WavelengthGrid.StepNm : wavelengthsNm[i] - wavelengthsNm[i - 1];
            double off =
                wavelengthsNm[i]
                - (WavelengthGrid.StepNm * Math.Round(wavelengthsNm[i] / WavelengthGrid.StepNm));
            if (Math.Abs(off) > samePlaceNm || Math.Abs(step - WavelengthGrid.StepNm) > samePlaceNm)
            {
                return false;
            }
        }
        return true;
    }

    // Mostly one spectrometer reads both at the same wavelengths; else a curve through the bare one, straight lines being too low on
    // its peaks.
    private static double[] At(TabulatedSpectrum table, ReadOnlySpan<double> wavelengthsNm)
    {
        if (table.WavelengthsNm.SequenceEqual(wavelengthsNm))
        {
            return table.Values.ToArray();
        }
        var curve = CubicSpline.InterpolateAkimaSorted(table.WavelengthsNm.ToArray(), table.Values.ToArray());
        var values = new double[wavelengthsNm.Length];
        for (int i = 0; i < values.Length; i++)
        {
            double nm = wavelengthsNm[i];
            values[i] = nm >= table.FirstNm && nm <= table.LastNm ? curve.Interpolate(nm) : 0;
        }
        return values;
    }

    private static double Peak(ReadOnlySpan<double> values)
    {
        double peak = 0;
        foreach (double v in values)
        {
            peak = Math.Max(peak, v);
        }
        return peak;
    }
}
