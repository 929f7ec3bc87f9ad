using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace GlowMix.Optics.Slab;

/// <summary>
/// The inner loops of the slab: rows of small square matrices, stored one after the other, four numbers at a time.
/// A general library's matrices of this size cost two to three times as much, most of it in allocation and call overhead.
/// </summary>
internal static class RowMath
{
    /// <summary>target += factor × source.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void AddScaled(Span<double> target, ReadOnlySpan<double> source, double factor)
    {
        ref double t = ref MemoryMarshal.GetReference(target);
        ref double s = ref MemoryMarshal.GetReference(source);
        var by = Vector256.Create(factor);
        for (nuint i = 0; i < (nuint)target.Length; i += 4)
        {
            Vector256
                .MultiplyAddEstimate(Vector256.LoadUnsafe(ref s, i), by, Vector256.LoadUnsafe(ref t, i))
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
            sum = Vector256.MultiplyAddEstimate(
                Vector256.LoadUnsafe(ref x, i),
                Vector256.LoadUnsafe(ref y, i),
                sum
            );
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

    /// <summary>result = left × right, square of size n.</summary>
    public static void MultiplyMatrices(
        Span<double> result,
        ReadOnlySpan<double> left,
        ReadOnlySpan<double> right,
        int n
    )
    {
        for (int i = 0; i < n; i++)
        {
            var row = result.Slice(i * n, n);
            row.Clear();
            for (int k = 0; k < n; k++)
            {
                AddScaled(row, right.Slice(k * n, n), left[(i * n) + k]);
            }
        }
    }

    /// <summary>result += Σ over rows r of r rᵀ: the Gram matrix of a matrix's columns.</summary>
    public static void AddGram(Span<double> result, ReadOnlySpan<double> rows, int n, double sign = 1)
    {
        for (int r = 0; r < n; r++)
        {
            var row = rows.Slice(r * n, n);
            for (int i = 0; i < n; i++)
            {
                AddScaled(result.Slice(i * n, n), row, sign * row[i]);
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

    /// <summary>Lower factor L of a symmetric positive definite matrix, L Lᵀ = matrix; the upper part is not read.</summary>
    /// <exception cref="ArithmeticException">The matrix is not positive definite.</exception>
    public static void Cholesky(Span<double> lower, ReadOnlySpan<double> matrix, int n)
    {
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double sum = matrix[(i * n) + j];
                for (int k = 0; k < j; k++)
                {
                    sum -= lower[(i * n) + k] * lower[(j * n) + k];
                }
                if (i != j)
                {
                    lower[(i * n) + j] = sum / lower[(j * n) + j];
                }
                else if (sum > 0)
                {
                    lower[(i * n) + i] = Math.Sqrt(sum);
                }
                else
                {
                    throw new ArithmeticException("A layer's matrix is not positive definite.");
                }
            }
        }
    }

    /// <summary>rows ← L⁻¹ rows: forward substitution for all columns at once.</summary>
    public static void SolveLower(Span<double> rows, ReadOnlySpan<double> lower, int n)
    {
        for (int i = 0; i < n; i++)
        {
            var row = rows.Slice(i * n, n);
            for (int k = 0; k < i; k++)
            {
                AddScaled(row, rows.Slice(k * n, n), -lower[(i * n) + k]);
            }
            SetScaled(row, row, 1 / lower[(i * n) + i]);
        }
    }

    /// <summary>rows ← L⁻ᵀ rows: backward substitution for all columns at once.</summary>
    public static void SolveLowerTransposed(Span<double> rows, ReadOnlySpan<double> lower, int n)
    {
        for (int i = n - 1; i >= 0; i--)
        {
            var row = rows.Slice(i * n, n);
            for (int k = i + 1; k < n; k++)
            {
                AddScaled(row, rows.Slice(k * n, n), -lower[(k * n) + i]);
            }
            SetScaled(row, row, 1 / lower[(i * n) + i]);
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
            int aligned = (k + 4) & ~3;
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

    /// <summary>vector ← matrix⁻¹ vector with the factors of <see cref="FactorLu"/>.</summary>
    public static void SolveLu(Span<double> vector, ReadOnlySpan<double> factors, int n)
    {
        for (int i = 1; i < n; i++)
        {
            double sum = vector[i];
            for (int k = 0; k < i; k++)
            {
                sum -= factors[(i * n) + k] * vector[k];
            }
            vector[i] = sum;
        }
        for (int i = n - 1; i >= 0; i--)
        {
            double sum = vector[i];
            for (int k = i + 1; k < n; k++)
            {
                sum -= factors[(i * n) + k] * vector[k];
            }
            vector[i] = sum / factors[(i * n) + i];
        }
    }

    /// <summary>rows ← matrix⁻¹ rows with the factors of <see cref="FactorLu"/>, all columns at once.</summary>
    public static void SolveLuRows(Span<double> rows, ReadOnlySpan<double> factors, int n)
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
