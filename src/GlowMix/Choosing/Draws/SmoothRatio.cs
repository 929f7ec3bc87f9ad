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
    /// <summary>The other grains are known at every second wavelength.</summary>
    private const int Every = 2;

    /// <summary>Wavelengths either side: 50 nm, and less than half of the ringing is left.</summary>
    private const int Reach = 10;

    private static readonly ImmutableArray<(int First, double[] Weights)> Smoothing =
    [
        .. Enumerable.Range(0, WavelengthGrid.Count).Select(WindowAt),
    ];

    private static readonly ImmutableArray<(int First, double[] Weights)> Joining =
    [
        .. Enumerable.Range(0, WavelengthGrid.Count).Select(CubicAt),
    ];

    /// <summary>A row times the ratio of another to it.</summary>
    /// <param name="own">Class by class and wavelength by wavelength, as <see cref="GrainNumbers"/> has them.</param>
    /// <param name="other">The same numbers of other grains, of which those at every second wavelength are read.</param>
    /// <param name="width">Numbers at one wavelength.</param>
    /// <param name="isSmooth">False takes the ratio as it is where it is known, and a cubic between.</param>
    public static double[] Of(double[] own, double[] other, int width, bool isSmooth = true)
    {
        var windows = isSmooth ? Smoothing : Joining;
        var row = new double[own.Length];
        var ratios = new double[((WavelengthGrid.Count - 1) / Every) + 1];
        for (int first = 0; first < own.Length; first += WavelengthGrid.Count * width)
        {
            for (int q = first; q < first + width; q++)
            {
                for (int i = 0; i < ratios.Length; i++)
                {
                    int at = q + (Every * i * width);
                    ratios[i] = own[at] > 0 ? other[at] / own[at] : 1;
                }
                for (int i = 0; i < WavelengthGrid.Count; i++)
                {
                    var (from, weights) = windows[i];
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
        int first = (Math.Max(0, sample - Reach) + Every - 1) / Every;
        int last = Math.Min(WavelengthGrid.Count - 1, sample + Reach) / Every;
        var powers = Matrix<double>.Build.Dense(
            last - first + 1,
            3,
            (row, column) => Math.Pow(((Every * (first + row)) - sample) / (double)Reach, column)
        );
        // The parabola's value at the sample itself is its constant term.
        return (
            first,
            powers.QR().Solve(Matrix<double>.Build.DenseIdentity(powers.RowCount)).Row(0).ToArray()
        );
    }

    private static (int First, double[] Weights) CubicAt(int sample)
    {
        if (sample % Every == 0)
        {
            return (sample / Every, [1]);
        }
        const int Points = 4;
        int count = ((WavelengthGrid.Count - 1) / Every) + 1;
        int first = Math.Clamp((sample / Every) - 1, 0, count - Points);
        double[] nodes = [.. Enumerable.Range(first, Points).Select(n => (double)(Every * n))];
        var weights = new double[Points];
        Lagrange.Weights(nodes, sample, weights);
        return (first, weights);
    }
}
