using MathNet.Numerics.LinearAlgebra;

namespace GlowMix.Materials.Calibrations;

/// <summary>Correlations of some numbers as a matrix that errors can have.</summary>
internal static class CorrelationMatrix
{
    // What is left of the least eigenvalue; and how far below 0 the rounding of a file may push it.
    private const double LeastLeft = 1e-6;
    private const double RoundedBelow = 0.01;

    /// <summary>Whether errors can go together so, but for rounding.</summary>
    public static bool IsPossible(
        IReadOnlyList<string> keys,
        IReadOnlyCollection<CalibratedCorrelation> correlations
    ) => keys.Count == 0 || LeastEigenvalue(Written(keys, correlations)) > -RoundedBelow;

    /// <summary>
    /// The lower triangle whose product with its transpose is the matrix: independent deviates times it are deviates that go
    /// together so. Where rounding made the matrix impossible, all correlations are weakened until it is possible.
    /// </summary>
    /// <param name="keys">The numbers, 1 or more.</param>
    /// <param name="correlations">Of two that are not both among the numbers it says nothing.</param>
    public static Matrix<double> RootOf(
        IReadOnlyList<string> keys,
        IReadOnlyCollection<CalibratedCorrelation> correlations
    )
    {
        var written = Written(keys, correlations);
        double least = LeastEigenvalue(written);
        double kept = least < LeastLeft ? (1 - LeastLeft) / (1 - least) : 1;
        var one = Matrix<double>.Build.DenseIdentity(keys.Count);
        return (one + (kept * (written - one))).Cholesky().Factor;
    }

    private static Matrix<double> Written(
        IReadOnlyList<string> keys,
        IReadOnlyCollection<CalibratedCorrelation> correlations
    ) =>
        Matrix<double>.Build.Dense(
            keys.Count,
            keys.Count,
            (i, j) =>
                i == j
                    ? 1
                    : correlations
                        .FirstOrDefault(c =>
                            (c.Of == keys[i] && c.With == keys[j]) || (c.Of == keys[j] && c.With == keys[i])
                        )
                        .Value
        );

    private static double LeastEigenvalue(Matrix<double> matrix) =>
        matrix.Evd(Symmetricity.Symmetric).EigenValues.Min(v => v.Real);
}
