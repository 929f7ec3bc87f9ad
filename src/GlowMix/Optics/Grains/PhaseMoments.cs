using System.Numerics;

namespace GlowMix.Optics.Grains;

/// <summary>
/// Legendre moments χ_l = ½∫ p(μ) P_l(μ) dμ of the phase function of one sphere, χ_0 = 1 and χ_1 = g. The readable form of what
/// <see cref="GrainAverage"/> does for many sizes.
/// </summary>
/// <remarks>
/// With S₁ ± S₂ = Σ (2n + 1)(a_n ± b_n) d^n_{1,±1} (Bohren &amp; Huffman 1983, eq. 4.74, π_n and τ_n written as elements of the
/// rotation matrices) and the integral of three of these (Edmonds 1957, eq. 4.6.2) the moment is a double sum over n and
/// n′ = n + d, banded to |d| ≤ l: squared 3j symbol times Re(a_n a*_n′ + b_n b*_n′) where l + n + n′ is even, and
/// Re(a_n b*_n′ + b_n a*_n′) where it is odd.
/// </remarks>
internal static class PhaseMoments
{
    /// <summary>χ_0 to χ_highest of a sphere that scatters; χ_0 = 1 and all others 0 of one that does not.</summary>
    public static double[] Of(LorenzMie sphere, int highest)
    {
        var moments = new double[highest + 1];
        var squares = new double[highest + 1];
        for (int n = sphere.TermCount; n >= 1; n--)
        {
            for (int d = 0; d <= highest && n + d <= sphere.TermCount; d++)
            {
                (Complex a, Complex b) = (sphere.Electric[n], sphere.Magnetic[n]);
                Complex aOther = Complex.Conjugate(sphere.Electric[n + d]);
                Complex bOther = Complex.Conjugate(sphere.Magnetic[n + d]);
                double even = ((a * aOther) + (b * bOther)).Real;
                double odd = ((a * bOther) + (b * aOther)).Real;

                Squared3j.Fill(n, d, squares);
                double pair = (d == 0 ? 1 : 2) * ((2.0 * n) + 1) * ((2.0 * (n + d)) + 1);
                for (int l = d; l <= highest; l++)
                {
                    // l + n + n′ is odd or even with l + d.
                    moments[l] += pair * squares[l] * (int.IsEvenInteger(l + d) ? even : odd);
                }
            }
        }
        return Normalised(moments);
    }

    /// <summary>Divides by the moment of order 0.</summary>
    public static double[] Normalised(ReadOnlySpan<double> sums)
    {
        var moments = new double[sums.Length];
        moments[0] = 1;
        for (int l = 1; l < sums.Length && sums[0] > 0; l++)
        {
            moments[l] = sums[l] / sums[0];
        }
        return moments;
    }
}
