using System.Diagnostics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace GlowMix.Spectra;

/// <summary>Sum of the products of two rows of numbers.</summary>
/// <remarks>
/// Always four running sums, whatever the machine's registers: the order of the additions, and with it the last digit,
/// is the same everywhere. (The framework's own, TensorPrimitives, is a package, and sums as wide as the machine.) Two
/// vectors of two, because wider ones are left out when the program is compiled ahead, and cost a millisecond at start.
/// </remarks>
internal static class DotProduct
{
    public static double Of(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        Debug.Assert(a.Length == b.Length, "rows of one length");
        ref double startA = ref MemoryMarshal.GetReference(a);
        ref double startB = ref MemoryMarshal.GetReference(b[..a.Length]);
        Vector128<double> even = Vector128<double>.Zero;
        Vector128<double> odd = Vector128<double>.Zero;
        int i = 0;
        for (; i <= a.Length - 4; i += 4)
        {
            even += Vector128.LoadUnsafe(ref startA, (nuint)i) * Vector128.LoadUnsafe(ref startB, (nuint)i);
            odd +=
                Vector128.LoadUnsafe(ref startA, (nuint)i + 2)
                * Vector128.LoadUnsafe(ref startB, (nuint)i + 2);
        }
        even += odd;
        double sum = even[0] + even[1];
        for (; i < a.Length; i++)
        {
            sum += Unsafe.Add(ref startA, i) * Unsafe.Add(ref startB, i);
        }
        return sum;
    }
}
