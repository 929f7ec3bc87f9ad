using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace GlowMix.Optics.Grains;

/// <summary>Sums within vectors.</summary>
internal static class Lane
{
    /// <summary>The four sums over the lanes of four vectors.</summary>
    public static Vector256<double> Sums(
        Vector256<double> v0,
        Vector256<double> v1,
        Vector256<double> v2,
        Vector256<double> v3
    )
    {
        Vector256<double> low = Avx.HorizontalAdd(v0, v1);
        Vector256<double> high = Avx.HorizontalAdd(v2, v3);
        return Avx.Permute2x128(low, high, 0x20) + Avx.Permute2x128(low, high, 0x31);
    }
}
