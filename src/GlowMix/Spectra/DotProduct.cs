using System.Diagnostics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace GlowMix.Spectra;

/// <summary>Sum of the products of two rows of numbers.</summary>
/// <remarks>
/// Always four running sums, whatever the machine's registers: the order of the additions, and with it the last digit,
/// is the same everywhere. The framework's own (TensorPrimitives) is a package, and sums as wide as the machine.
/// </remarks>
internal static class DotProduct
{
    public static double Of(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        Debug.Assert(a.Length == b.Length, "rows of one length");
        ref double startA = ref MemoryMarshal.GetReference(a);
        ref double startB = ref MemoryMarshal.GetReference(b[..a.Length]);
        Vector256<double> sums = Vector256<double>.Zero;
        int i = 0;
        for (; i <= a.Length - Vector256<double>.Count; i += Vector256<double>.Count)
        {
            sums += Vector256.LoadUnsafe(ref startA, (nuint)i) * Vector256.LoadUnsafe(ref startB, (nuint)i);
        }
        double sum = sums[0] + sums[1] + (sums[2] + sums[3]);
        for (; i < a.Length; i++)
        {
            sum += Unsafe.Add(ref startA, i) * Unsafe.Add(ref startB, i);
        }
        return sum;
    }
}
