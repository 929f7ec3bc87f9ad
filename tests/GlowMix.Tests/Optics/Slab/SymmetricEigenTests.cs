using GlowMix.Optics.Slab;

namespace GlowMix.Tests.Optics.Slab;

public class SymmetricEigenTests
{
    /// <summary>Second differences: 2 − 2 cos(π j / (n + 1)), vectors of sines (Golub &amp; Van Loan, Matrix Computations; from memory).</summary>
    [Theory]
    [InlineData(4)]
    [InlineData(12)]
    [InlineData(32)]
    public void Second_differences_have_eigenvalues_of_cosines(int n)
    {
        var matrix = new double[n * n];
        for (int i = 0; i < n; i++)
        {
            matrix[(i * n) + i] = 2;
            if (i > 0)
            {
                matrix[(i * n) + i - 1] = -1;
                matrix[((i - 1) * n) + i] = -1;
            }
        }
        var eigen = new SymmetricEigen(n);
        eigen.Decompose(matrix);
        double[] values = [.. eigen.Values.Order()];
        for (int j = 0; j < n; j++)
        {
            Assert.Equal(2 - (2 * Math.Cos(Math.PI * (j + 1) / (n + 1))), values[j], 1e-14 * n);
        }
    }

    /// <summary>Full, diagonal, zero, of two equal values, and graded over twelve decades.</summary>
    [Theory]
    [InlineData("full")]
    [InlineData("diagonal")]
    [InlineData("zero")]
    [InlineData("equal")]
    [InlineData("graded")]
    public void Vectors_are_orthonormal_and_give_the_matrix_back(string kind)
    {
        const int N = 16;
        var matrix = Matrix(kind, N);
        var eigen = new SymmetricEigen(N);
        eigen.Decompose((double[])matrix.Clone());
        for (int i = 0; i < N; i++)
        {
            for (int j = 0; j < N; j++)
            {
                double product = 0;
                double back = 0;
                for (int k = 0; k < N; k++)
                {
                    product += eigen.VectorRows[(i * N) + k] * eigen.VectorRows[(j * N) + k];
                    back += eigen.Values[k] * eigen.VectorRows[(k * N) + i] * eigen.VectorRows[(k * N) + j];
                }
                Assert.Equal(i == j ? 1 : 0, product, 1e-14);
                double size = Math.Sqrt(Math.Abs(matrix[(i * N) + i] * matrix[(j * N) + j]));
                Assert.Equal(matrix[(i * N) + j], back, 1e-13 * Math.Max(size, kind == "graded" ? 0 : 1));
            }
        }
    }

    [Fact]
    public void Small_eigenvalues_of_a_graded_matrix_keep_their_own_digits()
    {
        // The same matrix twice, once times powers of two from both sides: the determinant follows to the last digit.
        const int N = 8;
        var plain = Matrix("full", N);
        var graded = new double[N * N];
        for (int i = 0; i < N; i++)
        {
            for (int j = 0; j < N; j++)
            {
                graded[(i * N) + j] = plain[(i * N) + j] * Math.Pow(2, -3 * (i + j));
            }
        }
        var eigen = new SymmetricEigen(N);
        eigen.Decompose(plain);
        double expected = eigen.Values.Aggregate(1.0, (product, value) => product * value);
        eigen.Decompose(graded);
        double found = eigen.Values.Aggregate(1.0, (product, value) => product * value);
        Assert.Equal(1, found / expected / Math.Pow(2, -3 * N * (N - 1)), 1e-12);
    }

    [Fact]
    public void A_matrix_with_NaN_is_refused()
    {
        var matrix = Matrix("full", 8);
        matrix[3] = double.NaN;
        matrix[24] = double.NaN;
        Assert.Throws<ArithmeticException>(() => new SymmetricEigen(8).Decompose(matrix));
    }

    private static double[] Matrix(string kind, int n)
    {
        var matrix = new double[n * n];
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                double full = (i == j ? 3 : 0) + Math.Sin((i + 1.0) * (j + 1.0));
                matrix[(i * n) + j] = kind switch
                {
                    "full" => full,
                    "diagonal" => i == j ? n - i : 0,
                    "equal" => (i == j ? 1 : 0) + 1,
                    "graded" => ((i == j ? 10 : 0) + Math.Sin((i + 1.0) * (j + 1.0)))
                        * Math.Pow(10, -0.4 * (i + j)),
                    _ => 0,
                };
            }
        }
        return matrix;
    }
}
