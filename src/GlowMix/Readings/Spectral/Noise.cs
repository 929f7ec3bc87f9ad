using GlowMix.Colour;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Readings.Spectral;

/// <summary>Noise of a reading, from its own samples, and what it makes of the CCT.</summary>
internal static class Noise
{
    // Coarser tables are smooth from one sample to the next only where the light is.
    private const double CoarsestStepNm = 2.5;
    private const int LeastSamples = 50;
    private const double LeastShareOfCct = 2e-3;

    /// <summary>
    /// Standard deviation of one sample: the fourth differences of a smooth spectrum are noise alone, with a variance of 70 σ²;
    /// by their median, so that lines do not count.
    /// </summary>
    /// <returns>Null for coarse or short tables.</returns>
    public static double? Of(TabulatedSpectrum table)
    {
        if (table.Count < LeastSamples || (table.LastNm - table.FirstNm) / (table.Count - 1) > CoarsestStepNm)
        {
            return null;
        }
        ReadOnlySpan<double> v = table.Values;
        var differences = new double[v.Length - 4];
        for (int i = 0; i < differences.Length; i++)
        {
            differences[i] = Math.Abs(v[i] - (4 * v[i + 1]) + (6 * v[i + 2]) - (4 * v[i + 3]) + v[i + 4]);
        }
        Array.Sort(differences, Ascending.Order);
        // 0.6745 is the median of |x| for a normal distribution of deviation 1.
        return differences[differences.Length / 2] / 0.6745 / Math.Sqrt(70);
    }

    /// <summary>The warning, or null.</summary>
    public static Warning? Check(ReadingFigures figures)
    {
        if (Of(figures.Visible) is not { } noise || figures.Colour.CctK is not { } cctK)
        {
            return null;
        }
        double deviationK = noise * DeviationOfCct(figures, cctK);
        double most = 0;
        foreach (double value in figures.Visible.Values)
        {
            most = Math.Max(most, value);
        }
        return 2 * deviationK >= LeastShareOfCct * cctK
            ? new(
                "noise",
                "cct_k",
                ReadingTexts.Invariant(
                    $"noise of {100 * noise / most:0.##} % of the peak in each value; it makes the CCT uncertain by ± {2 * deviationK:0} K (two standard deviations), read longer or average more scans"
                )
            )
            : null;
    }

    // Of the CCT, for noise of 1: slopes in X, Y, Z by small changes.
    private static double DeviationOfCct(ReadingFigures figures, double cctK)
    {
        Tristimulus all = figures.Colour.Tristimulus;
        double step = 1e-4 * all.Y;
        return figures.Weights.DeviationOf(
            Slope(all with { X = all.X + step }),
            Slope(all with { Y = all.Y + step }),
            Slope(all with { Z = all.Z + step })
        );

        double Slope(Tristimulus moved) =>
            moved.Chromaticity is { } point && CorrelatedColourTemperature.Of(point) is { } white
                ? (white.CctK - cctK) / step
                : 0;
    }
}
