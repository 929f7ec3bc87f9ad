namespace GlowMix.Spectra;

/// <summary>The x that makes ‖A x − b‖ least, for a few dozen rows and more rows than columns.</summary>
/// <remarks>
/// Golub &amp; Van Loan, Matrix Computations, chapter 5 (chapter from memory). On 16 × 13 the library's QR allocates 22 times as
/// much and, on cores that other work keeps busy, took some 40 times as long: it shares small problems out over threads.
/// </remarks>
internal static class HouseholderLeastSquares
{
    /// <summary>Solves in place.</summary>
    /// <param name="a">Rows × columns; overwritten.</param>
    /// <param name="b">One number a row; overwritten.</param>
    /// <param name="least">Length that a column must have beside those before it; 0 lets all but none at all pass.</param>
    /// <returns>One number a column; null where the columns depend on each other.</returns>
    internal static double[]? Solve(double[,] a, double[] b, double least = 0)
    {
        int rows = a.GetLength(0);
        int columns = a.GetLength(1);
        for (int k = 0; k < columns; k++)
        {
            double norm = 0;
            for (int i = k; i < rows; i++)
            {
                norm = Math.Max(norm, Math.Abs(a[i, k]));
            }
            if (norm == 0)
            {
                return null;
            }
            double squares = 0;
            for (int i = k; i < rows; i++)
            {
                double share = a[i, k] / norm;
                squares += share * share;
            }

            // The reflection takes the column to −sign(first) · length, so that nothing cancels in the vector.
            double diagonal = -Math.CopySign(norm * Math.Sqrt(squares), a[k, k]);
            if (Math.Abs(diagonal) < least)
            {
                return null;
            }
            a[k, k] -= diagonal;
            double half = -diagonal * a[k, k]; // half the vector's own square
            for (int j = k + 1; j < columns; j++)
            {
                double along = 0;
                for (int i = k; i < rows; i++)
                {
                    along += a[i, k] * a[i, j];
                }
                along /= half;
                for (int i = k; i < rows; i++)
                {
                    a[i, j] -= along * a[i, k];
                }
            }
            double ofTarget = 0;
            for (int i = k; i < rows; i++)
            {
                ofTarget += a[i, k] * b[i];
            }
            ofTarget /= half;
            for (int i = k; i < rows; i++)
            {
                b[i] -= ofTarget * a[i, k];
            }
            a[k, k] = diagonal;
        }

        var x = new double[columns];
        for (int k = columns - 1; k >= 0; k--)
        {
            double rest = b[k];
            for (int j = k + 1; j < columns; j++)
            {
                rest -= a[k, j] * x[j];
            }
            x[k] = rest / a[k, k];
        }
        return x;
    }
}
