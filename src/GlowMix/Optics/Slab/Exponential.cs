using System.Diagnostics;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace GlowMix.Optics.Slab;

/// <summary>
/// eˣ of four numbers at a time. The framework's own is as good, but ahead-of-time compilation leaves a call for each of its
/// steps, and the slab takes some hundred exponentials a wavelength.
/// </summary>
internal static class Exponential
{
    /// <summary>Taken as zero below: results would lose digits there, and no light that counts is left long before.</summary>
    internal const double Least = -708;

    internal const double Greatest = 709;

    // ln 2 in two parts; the first has enough trailing zeros that its product with a whole number up to 1024 is exact.
    private const double Ln2High = 6.93147180369123816490e-01;
    private const double Ln2Low = 1.90821492927058770002e-10;

    /// <summary>eˣ to within 2 units in the last place; zero below <see cref="Least"/>.</summary>
    /// <param name="x">At most <see cref="Greatest"/>.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> Of(Vector256<double> x)
    {
        Debug.Assert(!Vector256.GreaterThanAny(x, Vector256.Create(Greatest)), "too large an exponent");
        // Beside 1.5 × 2⁵² a number is rounded to a whole one, which stands in the last bits.
        var rounder = Vector256.Create(6755399441055744.0);
        var shifted = RowMath.MultiplyAdd(x, Vector256.Create(1 / 0.693147180559945309417), rounder);
        var whole = shifted - rounder;
        var rest = RowMath.MultiplyAdd(whole, Vector256.Create(-Ln2High), x);
        rest = RowMath.MultiplyAdd(whole, Vector256.Create(-Ln2Low), rest);
        var series = TaylorSeries(rest);
        // 2^whole: the whole number added to the exponent bits of the series, which lies between 0.7 and 1.5.
        var scaled = (series.AsInt64() + Vector256.ShiftLeft(shifted.AsInt64(), 52)).AsDouble();
        return Vector256.ConditionalSelect(
            Vector256.LessThan(x, Vector256.Create(Least)),
            Vector256<double>.Zero,
            scaled
        );
    }

    // |x| ≤ ln 2 / 2: the first term left out, x¹⁴ / 14!, is 4e-18.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> TaylorSeries(Vector256<double> x)
    {
        var sum = Vector256.Create(1 / 6227020800.0);
        sum = RowMath.MultiplyAdd(sum, x, Vector256.Create(1 / 479001600.0));
        sum = RowMath.MultiplyAdd(sum, x, Vector256.Create(1 / 39916800.0));
        sum = RowMath.MultiplyAdd(sum, x, Vector256.Create(1 / 3628800.0));
        sum = RowMath.MultiplyAdd(sum, x, Vector256.Create(1 / 362880.0));
        sum = RowMath.MultiplyAdd(sum, x, Vector256.Create(1 / 40320.0));
        sum = RowMath.MultiplyAdd(sum, x, Vector256.Create(1 / 5040.0));
        sum = RowMath.MultiplyAdd(sum, x, Vector256.Create(1 / 720.0));
        sum = RowMath.MultiplyAdd(sum, x, Vector256.Create(1 / 120.0));
        sum = RowMath.MultiplyAdd(sum, x, Vector256.Create(1 / 24.0));
        sum = RowMath.MultiplyAdd(sum, x, Vector256.Create(1 / 6.0));
        sum = RowMath.MultiplyAdd(sum, x, Vector256.Create(0.5));
        sum = RowMath.MultiplyAdd(sum, x, Vector256<double>.One);
        return RowMath.MultiplyAdd(sum, x, Vector256<double>.One);
    }
}
