using System.Collections.Immutable;

namespace GlowMix.Choosing.Draws;

/// <summary>Where a Sobol sequence starts from in each dimension: a primitive polynomial over {0, 1}, and its first direction numbers.</summary>
/// <remarks>
/// Joe &amp; Kuo (2008), SIAM J. Sci. Comput. 30, 2635: the set of search criterion D⁽⁶⁾ that they publish as
/// new-joe-kuo-6.21201, its first 37 dimensions, compared in four (beyond dimension 32: two) copies of it.
/// </remarks>
internal static class JoeKuoDirections
{
    /// <summary>Dimensions told here.</summary>
    public const int DimensionCount = 37;

    /// <summary>Binary digits of a coordinate.</summary>
    public const int Bits = 32;

    // For dimensions 2, 3, …: a, the inner coefficients of the polynomial read as a binary number, then m_1, m_2, … as many as
    // the polynomial's degree.
    private static readonly uint[][] Starts =
    [
        [0, 1],
        [1, 1, 3],
        [1, 1, 3, 1],
        [2, 1, 1, 1],
        [1, 1, 1, 3, 3],
        [4, 1, 3, 5, 13],
        [2, 1, 1, 5, 5, 17],
        [4, 1, 1, 5, 5, 5],
        [7, 1, 1, 7, 11, 19],
        [11, 1, 1, 5, 1, 1],
        [13, 1, 1, 1, 3, 11],
        [14, 1, 3, 5, 5, 31],
        [1, 1, 3, 3, 9, 7, 49],
        [13, 1, 1, 1, 15, 21, 21],
        [16, 1, 3, 1, 13, 27, 49],
        [19, 1, 1, 1, 15, 7, 5],
        [22, 1, 3, 1, 15, 13, 25],
        [25, 1, 1, 5, 5, 19, 61],
        [1, 1, 3, 7, 11, 23, 15, 103],
        [4, 1, 3, 7, 13, 13, 15, 69],
        [7, 1, 1, 3, 13, 7, 35, 63],
        [8, 1, 3, 5, 9, 1, 25, 53],
        [14, 1, 3, 1, 13, 9, 35, 107],
        [19, 1, 3, 1, 5, 27, 61, 31],
        [21, 1, 1, 5, 11, 19, 41, 61],
        [28, 1, 3, 5, 3, 3, 13, 69],
        [31, 1, 1, 7, 13, 1, 19, 1],
        [32, 1, 3, 7, 5, 13, 19, 59],
        [37, 1, 1, 3, 9, 25, 29, 41],
        [41, 1, 3, 5, 13, 23, 1, 55],
        [42, 1, 3, 7, 3, 13, 59, 17],
        [50, 1, 3, 1, 3, 5, 53, 69],
        [55, 1, 1, 5, 5, 23, 33, 13],
        [56, 1, 1, 7, 7, 1, 61, 123],
        [59, 1, 1, 7, 9, 13, 61, 49],
        [62, 1, 3, 3, 5, 3, 55, 33],
    ];

    /// <summary>Direction numbers of a dimension, as binary fractions of 32 digits.</summary>
    /// <param name="dimension">0 to 36.</param>
    public static ImmutableArray<uint> Of(int dimension)
    {
        var v = new uint[Bits];
        if (dimension == 0)
        {
            for (int k = 0; k < Bits; k++)
            {
                v[k] = 1u << (Bits - 1 - k);
            }
            return [.. v];
        }
        uint[] start = Starts[dimension - 1];
        int degree = start.Length - 1;
        for (int k = 0; k < Bits; k++)
        {
            if (k < degree)
            {
                v[k] = start[k + 1] << (Bits - 1 - k);
                continue;
            }
            v[k] = v[k - degree] ^ (v[k - degree] >> degree);
            for (int j = 1; j < degree; j++)
            {
                if (((start[0] >> (degree - 1 - j)) & 1) == 1)
                {
                    v[k] ^= v[k - j];
                }
            }
        }
        return [.. v];
    }

    /// <summary>A dimension's polynomial, its coefficients as binary digits, the highest power first.</summary>
    /// <param name="dimension">1 to 36; dimension 0 has none.</param>
    public static uint PolynomialOf(int dimension)
    {
        uint[] start = Starts[dimension - 1];
        return (1u << (start.Length - 1)) | (start[0] << 1) | 1;
    }

    /// <summary>The first direction numbers m_1, m_2, … of a dimension, odd integers.</summary>
    /// <param name="dimension">1 to 36.</param>
    public static ImmutableArray<uint> FirstOf(int dimension) => [.. Starts[dimension - 1].Skip(1)];
}
