using System.Collections.Immutable;
using GlowMix.Spectra;
using MathNet.Numerics.LinearAlgebra;

namespace GlowMix.Choosing.Draws;

/// <summary>
/// How one set of grain numbers stands to another, without what the finite number of sizes leaves in both: each ratio is replaced
/// by the parabola through its neighbours in wavelength, least squares (Savitzky &amp; Golay 1964).
/// </summary>
/// <remarks>
/// Narrow resonances of single sizes make averages over 40 of them ring by some 0.2 %, at random from one wavelength to the next and
/// from one index to the next. True averages are as smooth as the two materials' dispersion.
/// </remarks>
internal static class SmoothRatio
{
    /// <summary>Samples either side: 50 nm, and a third of the ringing is left.</summary>
    private const int Reach = 10;

    private static readonly ImmutableArray<(int First, double[] Weights)> Windows =
    [
        .. Enumerable.Range(0, WavelengthGrid.Count).Select(WindowAt),
    ];

    /// <summary>A row times the smoothed ratio of another to it.</summary>
    /// <param name="own">Class by class and wavelength by wavelength, as <see cref="GrainNumbers"/> has them.</param>
    /// <param name="other">The same numbers of other grains.</param>
    /// <param name="width">Numbers at one wavelength.</param>
    public static double[] Of(double[] own, double[] other, int width)
    {
        var row = new double[own.Length];
        var ratios = new double[WavelengthGrid.Count];
        for (int first = 0; first < own.Length; first += WavelengthGrid.Count * width)
        {
            for (int q = first; q < first + width; q++)
            {
                for (int i = 0; i < ratios.Length; i++)
                {
                    int at = q + (i * width);
                    ratios[i] = own[at] > 0 ? other[at] / own[at] : 1;
                }
                for (int i = 0; i < ratios.Length; i++)
                {
                    var (from, weights) = Windows[i];
                    double ratio = 0;
                    for (int w = 0; w < weights.Length; w++)
                    {
                        ratio += weights[w] * ratios[from + w];
                    }
                    int at = q + (i * width);
                    row[at] = own[at] > 0 ? own[at] * Math.Max(0, ratio) : other[at];
                }
            }
        }
        return row;
    }

    private static (int First, double[] Weights) WindowAt(int sample)
    {
        int first = Math.Max(0, sample - Reach);
        int count = Math.Min(WavelengthGrid.Count - 1, sample + Reach) - first + 1;
        var powers = Matrix<double>.Build.Dense(
            count,
            3,
            (row, column) => Math.Pow((first + row - sample) / (double)Reach, column)
        );
        // The parabola's value at the sample itself is its constant term.
        return (first, powers.QR().Solve(Matrix<double>.Build.DenseIdentity(count)).Row(0).ToArray());
    }
}
