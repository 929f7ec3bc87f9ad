using GlowMix.Colour;
using GlowMix.Spectra;
using MathNet.Numerics.LinearAlgebra;

namespace GlowMix.Materials;

/// <summary>The shares of three bands that mix to a white of given temperature.</summary>
internal static class WhiteShares
{
    /// <summary>Shares in watts that put the mix on the Planckian locus.</summary>
    /// <param name="shapesPerNm">Three bands of integral 1.</param>
    /// <param name="cctK">Colour temperature, K.</param>
    /// <returns>Three shares that add up to 1; null where one would be negative or the bands cannot be told apart.</returns>
    /// <remarks>X, Y and Z add up, so the watts solve three linear equations for the white's X, Y, Z.</remarks>
    public static double[]? Of(IReadOnlyList<Spectrum> shapesPerNm, double cctK)
    {
        var columns = Matrix<double>.Build.Dense(3, 3);
        for (int j = 0; j < 3; j++)
        {
            var xyz = ObserverWeights.ModelGrid.TristimulusOf(shapesPerNm[j].Samples);
            columns.SetColumn(j, [xyz.X, xyz.Y, xyz.Z]);
        }
        var white = PlanckianLocus.AtK(cctK);
        var target = Vector<double>.Build.DenseOfArray([white.X, white.Y, 1 - white.X - white.Y]);
        double[] watts = columns.Solve(target).ToArray();
        double sum = watts.Sum();
        return watts.All(w => double.IsFinite(w) && w >= 0) && sum > 0
            ? [.. watts.Select(w => w / sum)]
            : null;
    }
}
