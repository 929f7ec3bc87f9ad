using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace GlowMix.Optics.Slab;

/// <summary>
/// The inner loops of the slab: rows of small square matrices, stored one after the other, four numbers at a time.
/// A general library's matrices of this size cost two to three times as much, most of it in allocation and call overhead.
/// </summary>
internal static class RowMath
{
    /// <summary>Where the four that a column belongs to begin: rows are worked on in fours, also beside the diagonal.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static int DownToFour(int column) => column & ~3;

    /// <summary>a·b + c, rounded once where the processor can.</summary>
    /// <remarks>The framework's MultiplyAddEstimate would do, but ahead-of-time compilation leaves it a call, ten times slower.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> MultiplyAdd(
        Vector256<double> a,
        Vector256<double> b,
        Vector256<double> c
    ) => Fma.IsSupported ? Fma.MultiplyAdd(a, b, c) : (a * b) + c;

    /// <summary>target += factor × source.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void AddScaled(Span<double> target, ReadOnlySpan<double> source, double factor)
    {
        ref double t = ref MemoryMarshal.GetReference(target);
        ref double s = ref MemoryMarshal.GetReference(source);
        var by = Vector256.Create(factor);
        for (nuint i = 0; i < (nuint)target.Length; i += 4)
        {
            MultiplyAdd(Vector256.LoadUnsafe(ref s, i), by, Vector256.LoadUnsafe(ref t, i))
                .StoreUnsafe(ref t, i);
        }
    }

    /// <summary>target = factor × source.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void SetScaled(Span<double> target, ReadOnlySpan<double> source, double factor)
    {
        ref double t = ref MemoryMarshal.GetReference(target);
        ref double s = ref MemoryMarshal.GetReference(source);
        var by = Vector256.Create(factor);
        for (nuint i = 0; i < (nuint)target.Length; i += 4)
        {
            (Vector256.LoadUnsafe(ref s, i) * by).StoreUnsafe(ref t, i);
        }
    }

    /// <summary>Σ a·b.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        ref double x = ref MemoryMarshal.GetReference(a);
        ref double y = ref MemoryMarshal.GetReference(b);
        var sum = Vector256<double>.Zero;
        for (nuint i = 0; i < (nuint)a.Length; i += 4)
        {
            sum = MultiplyAdd(Vector256.LoadUnsafe(ref x, i), Vector256.LoadUnsafe(ref y, i), sum);
        }
        return Vector256.Sum(sum);
    }

    /// <summary>Turns two rows into each other: a ← c a − s b, b ← s a + c b.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Rotate(Span<double> a, Span<double> b, double cosine, double sine)
    {
        ref double x = ref MemoryMarshal.GetReference(a);
        ref double y = ref MemoryMarshal.GetReference(b);
        var c = Vector256.Create(cosine);
        var s = Vector256.Create(sine);
        for (nuint i = 0; i < (nuint)a.Length; i += 4)
        {
            var first = Vector256.LoadUnsafe(ref x, i);
            var second = Vector256.LoadUnsafe(ref y, i);
            ((c * first) - (s * second)).StoreUnsafe(ref x, i);
            ((s * first) + (c * second)).StoreUnsafe(ref y, i);
        }
    }

    /// <summary>result = matrix × vector, row by row.</summary>
    public static void Multiply(Span<double> result, ReadOnlySpan<double> matrix, ReadOnlySpan<double> vector)
    {
        int n = vector.Length;
        for (int i = 0; i < n; i++)
        {
            result[i] = Dot(matrix.Slice(i * n, n), vector);
        }
    }

    /// <summary>
    /// result = matrixᵀ × vector; of a symmetric matrix the quicker product, since nothing is summed within a vector.
    /// </summary>
    /// <param name="result">Not the vector itself.</param>
    /// <param name="matrix">Rows.</param>
    /// <param name="vector">One number a row.</param>
    public static void MultiplyTransposed(
        Span<double> result,
        ReadOnlySpan<double> matrix,
        ReadOnlySpan<double> vector
    )
    {
        nuint n = (nuint)vector.Length;
        ref double rows = ref MemoryMarshal.GetReference(matrix);
        ref double by = ref MemoryMarshal.GetReference(vector);
        ref double to = ref MemoryMarshal.GetReference(result);
        for (nuint j = 0; j < n; j += 4)
        {
            // Even and odd rows apart: two sums that need not wait for each other.
            var even = Vector256<double>.Zero;
            var odd = even;
            for (nuint k = 0; k < n; k += 2)
            {
                ref double row = ref Unsafe.Add(ref rows, (k * n) + j);
                even = MultiplyAdd(
                    Vector256.Create(Unsafe.Add(ref by, k)),
                    Vector256.LoadUnsafe(ref row),
                    even
                );
                odd = MultiplyAdd(
                    Vector256.Create(Unsafe.Add(ref by, k + 1)),
                    Vector256.LoadUnsafe(ref row, n),
                    odd
                );
            }
            (even + odd).StoreUnsafe(ref to, j);
        }
    }

    /// <summary>result = left × right, square of size n.</summary>
    /// <param name="result">Neither of the two.</param>
    /// <param name="left">Rows.</param>
    /// <param name="right">Rows.</param>
    /// <param name="n">A multiple of four.</param>
    public static void MultiplyMatrices(
        Span<double> result,
        ReadOnlySpan<double> left,
        ReadOnlySpan<double> right,
        int n
    )
    {
        nuint size = (nuint)n;
        ref double first = ref MemoryMarshal.GetReference(left);
        ref double second = ref MemoryMarshal.GetReference(right);
        ref double to = ref MemoryMarshal.GetReference(result);
        // Four by four numbers of the result at a time, kept in registers.
        for (nuint i = 0; i < size; i += 4)
        {
            for (nuint j = 0; j < size; j += 4)
            {
                var a = Vector256<double>.Zero;
                var b = a;
                var c = a;
                var d = a;
                for (nuint k = 0; k < size; k++)
                {
                    var row = Vector256.LoadUnsafe(ref second, (k * size) + j);
                    ref double by = ref Unsafe.Add(ref first, (i * size) + k);
                    a = MultiplyAdd(Vector256.Create(by), row, a);
                    b = MultiplyAdd(Vector256.Create(Unsafe.Add(ref by, size)), row, b);
                    c = MultiplyAdd(Vector256.Create(Unsafe.Add(ref by, 2 * size)), row, c);
                    d = MultiplyAdd(Vector256.Create(Unsafe.Add(ref by, 3 * size)), row, d);
                }
                nuint corner = (i * size) + j;
                a.StoreUnsafe(ref to, corner);
                b.StoreUnsafe(ref to, corner + size);
                c.StoreUnsafe(ref to, corner + (2 * size));
                d.StoreUnsafe(ref to, corner + (3 * size));
            }
        }
    }

    /// <summary>
    /// result = Σ over rows r of r rᵀ, the Gram matrix of a matrix's columns, on and above its diagonal; below is not to be read.
    /// </summary>
    public static void UpperGram(Span<double> result, ReadOnlySpan<double> rows, int n)
    {
        ref double from = ref MemoryMarshal.GetReference(rows);
        ref double to = ref MemoryMarshal.GetReference(result);
        // Four by four numbers of the result at a time, kept in registers.
        for (nuint i = 0; i < (nuint)n; i += 4)
        {
            for (nuint j = i; j < (nuint)n; j += 4)
            {
                var a = Vector256<double>.Zero;
                var b = a;
                var c = a;
                var d = a;
                for (nuint at = 0; at < (nuint)(n * n); at += (nuint)n)
                {
                    var row = Vector256.LoadUnsafe(ref from, at + j);
                    ref double left = ref Unsafe.Add(ref from, at + i);
                    a = MultiplyAdd(Vector256.Create(left), row, a);
                    b = MultiplyAdd(Vector256.Create(Unsafe.Add(ref left, 1)), row, b);
                    c = MultiplyAdd(Vector256.Create(Unsafe.Add(ref left, 2)), row, c);
                    d = MultiplyAdd(Vector256.Create(Unsafe.Add(ref left, 3)), row, d);
                }
                nuint corner = (i * (nuint)n) + j;
                a.StoreUnsafe(ref to, corner);
                b.StoreUnsafe(ref to, corner + (nuint)n);
                c.StoreUnsafe(ref to, corner + (nuint)(2 * n));
                d.StoreUnsafe(ref to, corner + (nuint)(3 * n));
            }
        }
    }

    /// <summary>target = sourceᵀ.</summary>
    public static void Transpose(Span<double> target, ReadOnlySpan<double> source, int n)
    {
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                target[(j * n) + i] = source[(i * n) + j];
            }
        }
    }

    /// <summary>
    /// Factors a symmetric positive definite matrix in place, Uᵀ U = matrix. What lies below its diagonal is not read, and zero
    /// after.
    /// </summary>
    /// <exception cref="ArithmeticException">The matrix is not positive definite.</exception>
    public static void Cholesky(Span<double> matrix, int n)
    {
        for (int k = 0; k < n; k++)
        {
            var row = matrix.Slice(k * n, n);
            double pivot = row[k];
            if (!(pivot > 0))
            {
                throw new ArithmeticException("A layer's matrix is not positive definite.");
            }
            row[..k].Clear();
            var rest = row[DownToFour(k)..];
            SetScaled(rest, rest, 1 / Math.Sqrt(pivot));
            for (int i = k + 1; i < n; i++)
            {
                int start = DownToFour(i);
                AddScaled(matrix.Slice((i * n) + start, n - start), row[start..], -row[i]);
            }
        }
    }

    /// <summary>rows ← U⁻ᵀ rows: forward substitution for all columns at once.</summary>
    public static void SolveUpperTransposed(Span<double> rows, ReadOnlySpan<double> upper, int n)
    {
        for (int i = 0; i < n; i++)
        {
            var row = rows.Slice(i * n, n);
            for (int k = 0; k < i; k++)
            {
                AddScaled(row, rows.Slice(k * n, n), -upper[(k * n) + i]);
            }
            SetScaled(row, row, 1 / upper[(i * n) + i]);
        }
    }

    /// <summary>rows ← U⁻¹ rows: backward substitution for all columns at once.</summary>
    public static void SolveUpper(Span<double> rows, ReadOnlySpan<double> upper, int n)
    {
        for (int i = n - 1; i >= 0; i--)
        {
            var row = rows.Slice(i * n, n);
            for (int k = i + 1; k < n; k++)
            {
                AddScaled(row, rows.Slice(k * n, n), -upper[(i * n) + k]);
            }
            SetScaled(row, row, 1 / upper[(i * n) + i]);
        }
    }

    /// <summary>
    /// Factors a matrix in place into unit lower and upper parts, without pivots. Meant for 1 − R Γ with two contractions:
    /// its symmetric part is positive, which keeps the plain elimination stable.
    /// </summary>
    public static void FactorLu(Span<double> matrix, int n)
    {
        for (int k = 0; k < n; k++)
        {
            double inverse = 1 / matrix[(k * n) + k];
            var pivotRow = matrix.Slice(k * n, n);
            // Factors of earlier columns share the row: the first few numbers up to a multiple of four go one by one.
            int aligned = DownToFour(k + 4);
            for (int i = k + 1; i < n; i++)
            {
                double factor = matrix[(i * n) + k] * inverse;
                for (int j = k + 1; j < aligned; j++)
                {
                    matrix[(i * n) + j] -= factor * pivotRow[j];
                }
                if (aligned < n)
                {
                    AddScaled(matrix.Slice((i * n) + aligned, n - aligned), pivotRow[aligned..], -factor);
                }
                matrix[(i * n) + k] = factor;
            }
        }
    }

    /// <summary>result = matrix⁻¹ of the factors of <see cref="FactorLu"/>.</summary>
    public static void InvertLu(Span<double> result, ReadOnlySpan<double> factors, int n)
    {
        result.Clear();
        for (int i = 0; i < n; i++)
        {
            result[(i * n) + i] = 1;
        }
        SolveLuRows(result, factors, n);
    }

    /// <summary>rows ← matrix⁻¹ rows with the factors of <see cref="FactorLu"/>, all columns at once.</summary>
    private static void SolveLuRows(Span<double> rows, ReadOnlySpan<double> factors, int n)
    {
        for (int i = 1; i < n; i++)
        {
            for (int k = 0; k < i; k++)
            {
                AddScaled(rows.Slice(i * n, n), rows.Slice(k * n, n), -factors[(i * n) + k]);
            }
        }
        for (int i = n - 1; i >= 0; i--)
        {
            var row = rows.Slice(i * n, n);
            for (int k = i + 1; k < n; k++)
            {
                AddScaled(row, rows.Slice(k * n, n), -factors[(i * n) + k]);
            }
            SetScaled(row, row, 1 / factors[(i * n) + i]);
        }
    }
}
