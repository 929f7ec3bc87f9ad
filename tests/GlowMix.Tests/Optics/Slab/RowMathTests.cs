using GlowMix.Optics.Slab;
using MathNet.Numerics.LinearAlgebra;

namespace GlowMix.Tests.Optics.Slab;

/// <summary>Small matrices against the library's.</summary>
public class RowMathTests
{
    private static readonly int[] Sizes = [4, 12, 16, 32];

    public static TheoryData<int> AllSizes() => [.. Sizes];

    [Theory]
    [MemberData(nameof(AllSizes))]
    public void Products_and_transposes(int n)
    {
        var (a, b) = (Rows(n, 1), Rows(n, 2));
        var result = new double[n * n];
        RowMath.MultiplyMatrices(result, a, b, n);
        AssertSame(Of(a, n) * Of(b, n), result, n);
        RowMath.Transpose(result, a, n);
        AssertSame(Of(a, n).Transpose(), result, n);
        RowMath.UpperGram(result, a, n);
        AssertSame(Of(a, n).TransposeThisAndMultiply(Of(a, n)), result, n, upperOnly: true);
        var vector = new double[n];
        RowMath.Multiply(vector, a, b.AsSpan(0, n));
        var expected = Of(a, n) * Vector<double>.Build.DenseOfArray(b[..n]);
        Assert.All(Enumerable.Range(0, n), i => Assert.Equal(expected[i], vector[i], 1e-12));
        RowMath.MultiplyTransposed(vector, a, b.AsSpan(0, n));
        expected = Of(a, n).Transpose() * Vector<double>.Build.DenseOfArray(b[..n]);
        Assert.All(Enumerable.Range(0, n), i => Assert.Equal(expected[i], vector[i], 1e-12));
    }

    [Theory]
    [MemberData(nameof(AllSizes))]
    public void Cholesky_factors_and_its_solves(int n)
    {
        var a = Rows(n, 3);
        var positive = Of(a, n).TransposeThisAndMultiply(Of(a, n)) + Matrix<double>.Build.DenseIdentity(n);
        var upper = new double[n * n];
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                // What lies below the diagonal is not read.
                upper[(i * n) + j] = j < i ? double.NaN : positive[i, j];
            }
        }
        RowMath.Cholesky(upper, n);
        AssertSame(positive.Cholesky().Factor.Transpose(), upper, n);

        var b = Rows(n, 4);
        var rows = (double[])b.Clone();
        RowMath.SolveUpper(rows, upper, n);
        AssertSame(Of(b, n), Flat(Of(upper, n) * Of(rows, n), n), n);
        rows = (double[])b.Clone();
        RowMath.SolveUpperTransposed(rows, upper, n);
        AssertSame(Of(b, n), Flat(Of(upper, n).Transpose() * Of(rows, n), n), n);
    }

    [Fact]
    public void A_matrix_that_is_not_positive_definite_is_refused()
    {
        double[] matrix = [1, 2, 0, 0, 2, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1];
        Assert.Throws<ArithmeticException>(() => RowMath.Cholesky(matrix, 4));
        matrix[0] = double.NaN;
        Assert.Throws<ArithmeticException>(() => RowMath.Cholesky(matrix, 4));
    }

    [Theory]
    [MemberData(nameof(AllSizes))]
    public void Lu_factors_invert(int n)
    {
        // 1 − R Γ with contractions, which is what it is for.
        double[] a = [.. Rows(n, 5).Select(value => value / (2 * n))];
        for (int i = 0; i < n; i++)
        {
            a[(i * n) + i] += 1;
        }
        var factors = (double[])a.Clone();
        RowMath.FactorLu(factors, n);
        var inverse = new double[n * n];
        RowMath.InvertLu(inverse, factors, n);
        AssertSame(Matrix<double>.Build.DenseIdentity(n), Flat(Of(a, n) * Of(inverse, n), n), n);
    }

    private static void AssertSame(Matrix<double> expected, double[] rows, int n, bool upperOnly = false)
    {
        for (int i = 0; i < n; i++)
        {
            for (int j = upperOnly ? i : 0; j < n; j++)
            {
                Assert.Equal(expected[i, j], rows[(i * n) + j], 1e-12 * n);
            }
        }
    }

    private static double[] Rows(int n, int seed) =>
        [.. Enumerable.Range(0, n * n).Select(i => Math.Sin((i + 1) * (seed + 0.7)))];

    private static Matrix<double> Of(double[] rows, int n) =>
        Matrix<double>.Build.Dense(n, n, (i, j) => rows[(i * n) + j]);

    private static double[] Flat(Matrix<double> matrix, int n) =>
        [.. Enumerable.Range(0, n * n).Select(i => matrix[i / n, i % n])];
}
