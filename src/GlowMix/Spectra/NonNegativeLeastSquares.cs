using MathNet.Numerics.LinearAlgebra;

namespace GlowMix.Spectra;

/// <summary>
/// The x ≥ 0 that makes ‖A x − b‖ least: weights of shapes that can be added but not taken away, such as the bands of a
/// light source or the rungs of a trap ladder.
/// </summary>
/// <remarks>
/// Lawson &amp; Hanson (1974), Solving Least Squares Problems, chapter 23, algorithm NNLS. The passive set is solved by QR
/// afresh each time, not by updates: the problems here have a few dozen rows and at most some twenty columns.
/// </remarks>
public static class NonNegativeLeastSquares
{
    // A gradient this small against ‖column‖ ‖b‖ is rounding: a column that could lower the misfit no further.
    private const double GradientTolerance = 1e-12;

    /// <summary>Solves the problem.</summary>
    /// <param name="a">The columns to combine, rows × columns; columns may depend on each other.</param>
    /// <param name="b">What they are to add up to, one number a row.</param>
    /// <returns>One weight a column, each ≥ 0; exactly 0 for a column that is not used.</returns>
    /// <exception cref="ArgumentException">No rows or columns, lengths that differ, or a number that is not finite.</exception>
    /// <exception cref="InvalidOperationException">No solution after many more steps than such a problem takes.</exception>
    public static double[] Solve(double[,] a, double[] b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        Check(a, b);

        // Columns of unit length, so that one tolerance fits all of them; undone at the end.
        Matrix<double> matrix = Matrix<double>.Build.DenseOfArray(a);
        double[] lengths = [.. matrix.EnumerateColumns().Select(column => column.L2Norm())];
        for (int j = 0; j < lengths.Length; j++)
        {
            if (lengths[j] > 0)
            {
                matrix.SetColumn(j, matrix.Column(j) / lengths[j]);
            }
        }
        Vector<double> target = Vector<double>.Build.DenseOfArray(b);
        double[] x = SolveScaled(matrix, target, GradientTolerance * target.L2Norm());
        for (int j = 0; j < x.Length; j++)
        {
            x[j] = x[j] > 0 ? x[j] / lengths[j] : 0;
        }
        return x;
    }

    private static double[] SolveScaled(Matrix<double> a, Vector<double> b, double tolerance)
    {
        var x = new double[a.ColumnCount];
        var passive = new bool[a.ColumnCount];
        var rejected = new bool[a.ColumnCount];
        int stepsLeft = 30 * (a.ColumnCount + 1);

        while (NextColumn(a, b, x, passive, rejected, tolerance) is int entering)
        {
            passive[entering] = true;
            double[]? trial = Unconstrained(a, b, passive);

            // A column that depends on those already in, or whose weight comes out negative by rounding, would be thrown
            // out at once and let in again for ever: leave it until x has changed.
            if (trial is null || trial[entering] <= 0)
            {
                passive[entering] = false;
                rejected[entering] = true;
                continue;
            }
            while (trial is not null && Blocking(x, trial, passive) is { } block)
            {
                if (stepsLeft-- == 0)
                {
                    throw new InvalidOperationException(
                        "Non-negative least squares found no end; the columns are too alike."
                    );
                }
                MoveTowards(x, trial, block, passive);
                trial = Unconstrained(a, b, passive);
            }
            x = trial ?? x;
            Array.Clear(rejected);
            if (stepsLeft-- == 0)
            {
                throw new InvalidOperationException(
                    "Non-negative least squares found no end; the columns are too alike."
                );
            }
        }
        return x;
    }

    // The unused column along which the misfit falls fastest; null where it falls along none.
    private static int? NextColumn(
        Matrix<double> a,
        Vector<double> b,
        double[] x,
        bool[] passive,
        bool[] rejected,
        double tolerance
    )
    {
        Vector<double> gradient = a.TransposeThisAndMultiply(b - (a * Vector<double>.Build.Dense(x)));
        int? best = null;
        for (int j = 0; j < x.Length; j++)
        {
            if (!passive[j] && !rejected[j] && gradient[j] > (best is int k ? gradient[k] : tolerance))
            {
                best = j;
            }
        }
        return best;
    }

    // Least squares in the passive columns alone, the others zero; null where those columns depend on each other.
    private static double[]? Unconstrained(Matrix<double> a, Vector<double> b, bool[] passive)
    {
        int[] columns = [.. Enumerable.Range(0, passive.Length).Where(j => passive[j])];
        var z = new double[passive.Length];
        if (columns.Length == 0)
        {
            return z;
        }
        if (columns.Length > a.RowCount)
        {
            return null;
        }
        var part = new double[a.RowCount, columns.Length];
        for (int i = 0; i < a.RowCount; i++)
        {
            for (int j = 0; j < columns.Length; j++)
            {
                part[i, j] = a[i, columns[j]];
            }
        }
        if (HouseholderLeastSquares.Solve(part, b.ToArray(), GradientTolerance) is not { } weights)
        {
            return null;
        }
        for (int i = 0; i < columns.Length; i++)
        {
            z[columns[i]] = weights[i];
        }
        return z;
    }

    // The passive column that reaches zero first on the way from x to the trial, and how far along that is, 0 to 1.
    private static (int Column, double Share)? Blocking(double[] x, double[] trial, bool[] passive)
    {
        (int Column, double Share)? first = null;
        for (int j = 0; j < x.Length; j++)
        {
            if (passive[j] && trial[j] <= 0)
            {
                double share = x[j] / (x[j] - trial[j]);
                if (double.IsNaN(share))
                {
                    share = 0;
                }
                if (first is null || share < first.Value.Share)
                {
                    first = (j, share);
                }
            }
        }
        return first;
    }

    private static void MoveTowards(
        double[] x,
        double[] trial,
        (int Column, double Share) block,
        bool[] passive
    )
    {
        for (int j = 0; j < x.Length; j++)
        {
            if (passive[j])
            {
                x[j] += block.Share * (trial[j] - x[j]);
                if (j == block.Column || x[j] <= 0)
                {
                    x[j] = 0;
                    passive[j] = false;
                }
            }
        }
    }

    private static void Check(double[,] a, double[] b)
    {
        int rows = a.GetLength(0);
        if (rows == 0 || a.GetLength(1) == 0 || rows != b.Length)
        {
            throw new ArgumentException(
                $"The matrix is {rows} × {a.GetLength(1)} and the right side has {b.Length} numbers; "
                    + "allowed: at least one row and column, and as many numbers as rows."
            );
        }
        if (!a.Cast<double>().All(double.IsFinite) || !b.All(double.IsFinite))
        {
            throw new ArgumentException("Every number of the matrix and the right side must be finite.");
        }
    }
}
