namespace GlowMix.Optics.Slab;

/// <summary>Eigenvalues and eigenvectors of a small symmetric matrix, without allocation.</summary>
/// <remarks>
/// A matrix whose entries fall off from the first row to the last, as 1/μ² over rising cosines, keeps its small eigenvalues to
/// their own digits and not only to those of the largest: the reduction starts with the large rows, the QL steps at the other
/// end. Householder reduction to tridiagonal form, then implicit QL steps (Golub &amp; Van Loan, Matrix Computations, chapter 8,
/// from memory). Kept as rows, so that every rotation runs over neighbours in memory. The library's own decomposition
/// allocates some 10 kB a call, 89 calls a prediction, and takes about twice as long at this size.
/// </remarks>
internal sealed class SymmetricEigen(int size)
{
    private readonly double[] offDiagonal = new double[size];
    private readonly double[] mirrors = new double[size * size];
    private readonly double[] scales = new double[size];
    private readonly double[] image = new double[size];

    /// <summary>Eigenvalues, in no promised order.</summary>
    public double[] Values { get; } = new double[size];

    /// <summary>Row j: the unit eigenvector of <see cref="Values"/>[j].</summary>
    public double[] VectorRows { get; } = new double[size * size];

    /// <summary>Decomposes a matrix, which is overwritten.</summary>
    /// <exception cref="ArithmeticException">The iteration does not come to an end, as with a NaN in the matrix.</exception>
    public void Decompose(Span<double> matrix)
    {
        ReduceToTridiagonal(matrix);
        AccumulateMirrors();
        DiagonaliseTridiagonal();
    }

    private void ReduceToTridiagonal(Span<double> matrix)
    {
        int n = size;
        for (int k = 0; k < n - 2; k++)
        {
            var mirror = mirrors.AsSpan(k * n, n);
            mirror.Clear();
            double norm = 0;
            for (int i = k + 1; i < n; i++)
            {
                mirror[i] = matrix[(i * n) + k];
                norm += mirror[i] * mirror[i];
            }
            double rest = norm - (mirror[k + 1] * mirror[k + 1]);
            Values[n - 1 - k] = matrix[(k * n) + k];
            if (rest == 0)
            {
                scales[k] = 0;
                offDiagonal[n - 2 - k] = mirror[k + 1];
                continue;
            }
            double alpha = -Math.CopySign(Math.Sqrt(norm), mirror[k + 1]);
            offDiagonal[n - 2 - k] = alpha;
            mirror[k + 1] -= alpha;
            double scale = 2 / (rest + (mirror[k + 1] * mirror[k + 1]));
            scales[k] = scale;

            var w = image.AsSpan();
            double half = 0;
            for (int i = 0; i < n; i++)
            {
                w[i] = i <= k ? 0 : scale * RowMath.Dot(matrix.Slice(i * n, n), mirror);
                half += w[i] * mirror[i];
            }
            RowMath.AddScaled(w, mirror, -scale * half / 2);
            for (int i = k + 1; i < n; i++)
            {
                var row = matrix.Slice(i * n, n);
                RowMath.AddScaled(row, w, -mirror[i]);
                RowMath.AddScaled(row, mirror, -w[i]);
            }
        }
        Values[1] = matrix[((n - 2) * n) + n - 2];
        Values[0] = matrix[((n - 1) * n) + n - 1];
        offDiagonal[0] = matrix[((n - 1) * n) + n - 2];
        offDiagonal[n - 1] = 0;
    }

    private void AccumulateMirrors()
    {
        int n = size;
        Array.Clear(VectorRows);
        for (int i = 0; i < n; i++)
        {
            VectorRows[(i * n) + n - 1 - i] = 1;
        }
        for (int k = n - 3; k >= 0; k--)
        {
            if (scales[k] == 0)
            {
                continue;
            }
            var mirror = mirrors.AsSpan(k * n, n);
            // The rows after these still have no part in this mirror.
            for (int r = 0; r < n - 1 - k; r++)
            {
                var row = VectorRows.AsSpan(r * n, n);
                RowMath.AddScaled(row, mirror, -scales[k] * RowMath.Dot(row, mirror));
            }
        }
    }

    private void DiagonaliseTridiagonal()
    {
        const int MostSteps = 60;
        int n = size;
        var d = Values;
        var e = offDiagonal;
        for (int l = 0; l < n; l++)
        {
            for (int step = 0; ; step++)
            {
                int m = l;
                while (
                    m < n - 1
                    // So written that NaN goes on, until the steps run out.
                    && !(Math.Abs(e[m]) <= double.Epsilon + (1.1e-16 * (Math.Abs(d[m]) + Math.Abs(d[m + 1]))))
                )
                {
                    m++;
                }
                if (m == l)
                {
                    break;
                }
                if (step == MostSteps)
                {
                    throw new ArithmeticException("A layer's eigenvalues do not settle.");
                }
                Sweep(l, m);
            }
        }
    }

    /// <summary>One implicit QL step on rows l to m, with Wilkinson's shift.</summary>
    private void Sweep(int l, int m)
    {
        int n = size;
        var d = Values;
        var e = offDiagonal;
        double ratio = (d[l + 1] - d[l]) / (2 * e[l]);
        double g = d[m] - d[l] + (e[l] / (ratio + Math.CopySign(Math.Sqrt((ratio * ratio) + 1), ratio)));
        double sine = 1;
        double cosine = 1;
        double shift = 0;
        for (int i = m - 1; i >= l; i--)
        {
            double f = sine * e[i];
            double b = cosine * e[i];
            double r = Math.Sqrt((f * f) + (g * g));
            e[i + 1] = r;
            if (r == 0)
            {
                d[i + 1] -= shift;
                e[m] = 0;
                return;
            }
            sine = f / r;
            cosine = g / r;
            g = d[i + 1] - shift;
            r = ((d[i] - g) * sine) + (2 * cosine * b);
            shift = sine * r;
            d[i + 1] = g + shift;
            g = (cosine * r) - b;
            RowMath.Rotate(VectorRows.AsSpan(i * n, n), VectorRows.AsSpan((i + 1) * n, n), cosine, sine);
        }
        d[l] -= shift;
        e[l] = g;
        e[m] = 0;
    }
}
