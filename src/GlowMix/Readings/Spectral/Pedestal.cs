using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Readings.Spectral;

/// <summary>A level under the whole spectrum that is no light: dark left in, taken off twice, or noise cut to zero.</summary>
internal static class Pedestal
{
    // A white LED may begin from 385 nm on; the longest of these that is flat counts.
    private static readonly double[] FlatBelowNm = [400, 390, 380];
    private const double LeastOfPeak = 0.002;
    private const double MostOfPeak = 0.06;
    private const double LeastSpanNm = 10;
    private const int LeastSamples = 6;

    /// <summary>
    /// A flat level below 400 nm, where a white LED has no light. A light that has some there slopes.
    /// </summary>
    public static Warning? Check(ReadingFigures figures)
    {
        foreach (double belowNm in FlatBelowNm)
        {
            if (Check(figures, belowNm) is { } warning)
            {
                return warning;
            }
        }
        return null;
    }

    private static Warning? Check(ReadingFigures figures, double belowNm)
    {
        TabulatedSpectrum table = figures.Reading.Spectrum;
        double peak = Peak(figures.Visible);
        int end = table.IndexAtOrAfter(belowNm);
        int first = table.IndexAtOrAfter(300);
        if (
            end - first < LeastSamples
            || table.WavelengthsNm[end - 1] - table.WavelengthsNm[first] < LeastSpanNm
        )
        {
            return null;
        }
        double[] nm = table.WavelengthsNm[first..end].ToArray();
        double[] values = table.Values[first..end].ToArray();
        var (intercept, slope) = MathNet.Numerics.Fit.Line(nm, values);
        double rise = slope * (nm[^1] - nm[0]);
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < nm.Length; i++)
        {
            double off = values[i] - intercept - (slope * nm[i]);
            sum += values[i];
            squares += off * off;
        }
        double mean = sum / nm.Length;
        double noise = Math.Sqrt(squares / (nm.Length - 2));
        // Standard error of the rise over the window is near √12 σ/√n for even samples.
        double doubt = 3 * Math.Sqrt(12) * noise / Math.Sqrt(nm.Length);
        bool isFlat =
            Math.Abs(rise) <= Math.Max(doubt, 1e-6 * peak)
            && Math.Abs(mean) > 3 * noise / Math.Sqrt(nm.Length);
        if (!isFlat || Math.Abs(mean) < LeastOfPeak * peak || Math.Abs(mean) > MostOfPeak * peak)
        {
            return null;
        }
        ColourEffect effect = ColourEffect.Between(
            figures,
            OtherGrid.Changed(figures.Visible, (_, value) => value - mean)
        );
        return effect.IsWorthTelling
            ? new(
                "pedestal",
                "cct_k",
                ReadingTexts.Invariant(
                    $"a flat level of {100 * mean / peak:0.#} % of the peak from {nm[0]:0.#} to {nm[^1]:0.#} nm; if it is dark {(mean > 0 ? "left in" : "taken off twice")}, the CCT moves by about {effect.InWords} without it: --dark FILE or --dark-window {nm[0]:0}-{nm[^1]:0}"
                )
            )
            : null;
    }

    /// <summary>Noise whose negative half was cut to zero: zeros and small values in turn where there is no light.</summary>
    public static Warning? CheckCut(ReadingFigures figures)
    {
        double peak = Peak(figures.Visible);
        int zeros = 0;
        int count = 0;
        int turns = 0;
        double sum = 0;
        bool before = false;
        foreach (double value in figures.Visible.Values)
        {
            if (value < 0)
            {
                return null;
            }
            if (value > 0.01 * peak)
            {
                continue;
            }
            bool isZero = value == 0;
            turns += count > 0 && isZero != before ? 1 : 0;
            zeros += isZero ? 1 : 0;
            sum += value;
            before = isZero;
            count++;
        }
        if (count < 20 || zeros < 0.25 * count || zeros > 0.75 * count || turns < 0.25 * count)
        {
            return null;
        }
        ColourEffect effect = ColourEffect.Between(
            figures,
            OtherGrid.Changed(figures.Visible, (_, value) => value - (sum / count))
        );
        return effect.IsWorthTelling
            ? new(
                "noise_cut",
                "cct_k",
                $"noise below zero seems cut to zero, which leaves a level; without it the CCT moves by about {effect.InWords}, export the negative values too"
            )
            : null;
    }

    private static double Peak(TabulatedSpectrum table)
    {
        double most = 0;
        foreach (double value in table.Values)
        {
            most = Math.Max(most, value);
        }
        return most;
    }
}
