using System.Collections.Immutable;
using GlowMix.Spectra;

namespace GlowMix.Readings.Spectral;

/// <summary>Peaks and bands of a spectrum.</summary>
internal static class SpectrumShape
{
    private const double LeastProminence = 0.05;
    private const double SmoothOverNm = 5;

    /// <summary>Power between two wavelengths, by straight lines between the samples.</summary>
    public static double Integral(TabulatedSpectrum table, WavelengthRange range)
    {
        double fromNm = Math.Max(range.FromNm, table.FirstNm);
        double toNm = Math.Min(range.ToNm, table.LastNm);
        double sum = 0;
        double leftNm = fromNm;
        double left = table.ValueAtNm(fromNm);
        for (int i = table.IndexAtOrAfter(fromNm); i < table.Count && leftNm < toNm; i++)
        {
            double rightNm = Math.Min(table.WavelengthsNm[i], toNm);
            double right = table.ValueAtNm(rightNm);
            sum += (rightNm - leftNm) * (left + right) / 2;
            (leftNm, left) = (rightNm, right);
        }
        return sum;
    }

    /// <summary>What each band holds; empty without light.</summary>
    public static ImmutableArray<BandShare> Bands(TabulatedSpectrum visible)
    {
        double all = Integral(visible, WavelengthRange.Visible);
        return all > 0
            ? [.. SpectralBand.All.Select(b => new BandShare(b, 100 * Integral(visible, b.Range) / all))]
            : [];
    }

    /// <summary>Peaks that stand out by a twentieth of the highest, highest first.</summary>
    public static ImmutableArray<ReadingPeak> Peaks(TabulatedSpectrum visible)
    {
        double[] smooth = Smoothed(visible);
        int top = Array.IndexOf(smooth, smooth.Max());
        double highest = smooth[top];
        if (highest <= 0)
        {
            return [];
        }
        var peaks = new List<ReadingPeak>();
        for (int i = 0; i < smooth.Length; i++)
        {
            bool rises = i == 0 ? smooth.Length > 1 && smooth[1] < smooth[0] : smooth[i] > smooth[i - 1];
            if (
                rises
                && smooth[i] >= LeastProminence * highest
                && IsTop(smooth, i)
                && smooth[i] - HigherSaddle(smooth, i) >= LeastProminence * highest
            )
            {
                peaks.Add(new(TopNm(visible, smooth, i), smooth[i] / highest, WidthNm(visible, smooth, i)));
            }
        }
        return [.. peaks.OrderByDescending(p => p.ShareOfHighest)];
    }

    /// <summary>Mean over 5 nm where samples are finer, so that noise makes no peaks; coarser tables stay as they are.</summary>
    public static double[] Smoothed(TabulatedSpectrum table)
    {
        var smooth = new double[table.Count];
        int first = 0;
        int last = 0;
        double sum = 0;
        for (int i = 0; i < smooth.Length; i++)
        {
            double nm = table.WavelengthsNm[i];
            while (last < table.Count && table.WavelengthsNm[last] < nm + (SmoothOverNm / 2))
            {
                sum += table.Values[last++];
            }
            while (table.WavelengthsNm[first] < nm - (SmoothOverNm / 2))
            {
                sum -= table.Values[first++];
            }
            smooth[i] = sum / (last - first);
        }
        return smooth;
    }

    // No equal neighbour further on is higher.
    private static bool IsTop(double[] values, int at)
    {
        int next = at + 1;
        while (next < values.Length && values[next] == values[at])
        {
            next++;
        }
        return next == values.Length || values[next] < values[at];
    }

    // The higher of the two valleys that must be crossed to get to a higher peak; 0 for the highest.
    private static double HigherSaddle(double[] values, int at)
    {
        double saddle = double.NegativeInfinity;
        foreach (int step in (ReadOnlySpan<int>)[-1, 1])
        {
            double least = values[at];
            for (int i = at + step; i >= 0 && i < values.Length; i += step)
            {
                least = Math.Min(least, values[i]);
                if (values[i] > values[at] || (values[i] == values[at] && step < 0 && least < values[at]))
                {
                    saddle = Math.Max(saddle, least);
                    break;
                }
            }
        }
        return double.IsNegativeInfinity(saddle) ? 0 : saddle;
    }

    // Top of the parabola through the sample and its neighbours.
    private static double TopNm(TabulatedSpectrum table, double[] values, int at)
    {
        if (at == 0 || at == values.Length - 1)
        {
            return table.WavelengthsNm[at];
        }
        double left = table.WavelengthsNm[at - 1];
        double middle = table.WavelengthsNm[at];
        double right = table.WavelengthsNm[at + 1];
        double slopeLeft = (values[at] - values[at - 1]) / (middle - left);
        double slopeRight = (values[at + 1] - values[at]) / (right - middle);
        double turn = slopeLeft - slopeRight;
        double leftMiddle = (left + middle) / 2;
        double rightMiddle = (middle + right) / 2;
        double top = turn > 0 ? leftMiddle + (slopeLeft / turn * (rightMiddle - leftMiddle)) : middle;
        return Math.Clamp(top, left, right);
    }

    private static double? WidthNm(TabulatedSpectrum table, double[] values, int at)
    {
        double half = values[at] / 2;
        return Crossing(-1) is { } left && Crossing(1) is { } right ? right - left : null;

        double? Crossing(int step)
        {
            for (int i = at + step; i >= 0 && i < values.Length; i += step)
            {
                if (values[i] <= half)
                {
                    double share = (values[i - step] - half) / (values[i - step] - values[i]);
                    return table.WavelengthsNm[i - step]
                        + (share * (table.WavelengthsNm[i] - table.WavelengthsNm[i - step]));
                }
                // Up again to another peak: this one has no half of its own.
                if (values[i] > values[at])
                {
                    return null;
                }
            }
            return null;
        }
    }
}
