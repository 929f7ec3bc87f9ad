using System.Collections.Immutable;
using System.Numerics;

namespace GlowMix.Choosing.Draws;

/// <summary>
/// Points of a Sobol sequence (Sobol 1967), plain or scrambled after Owen (1995): evenly spread in many dimensions, so that 512
/// of them do the work of thousands of random ones. The same seed gives the same points everywhere. Immutable.
/// </summary>
/// <remarks>
/// Beyond the table's dimensions the same ones serve again, their points in another order: Owen's scrambling of the index keeps
/// every leading and every aligned block of 2^k points together (Burley 2020, J. Comput. Graph. Tech. 9(4), 1, 'padding').
/// </remarks>
internal sealed class SobolPoints
{
    private const double PerDigit = 1.0 / (1ul << JoeKuoDirections.Bits);

    private static readonly ImmutableArray<ImmutableArray<uint>> Directions =
    [
        .. Enumerable.Range(0, JoeKuoDirections.DimensionCount).Select(JoeKuoDirections.Of),
    ];

    private readonly ulong? seed;

    private SobolPoints(int dimensions, ulong? seed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(dimensions, 1);
        (Dimensions, this.seed) = (dimensions, seed);
    }

    /// <summary>Coordinates of a point.</summary>
    public int Dimensions { get; }

    /// <summary>The sequence as it is defined, its first point the origin; for tests and comparisons.</summary>
    /// <param name="dimensions">1 to 37.</param>
    public static SobolPoints Plain(int dimensions)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(dimensions, JoeKuoDirections.DimensionCount);
        return new(dimensions, null);
    }

    /// <summary>Scrambled, any number of dimensions.</summary>
    /// <param name="dimensions">1 or more.</param>
    /// <param name="seed">Another seed, another set of points as evenly spread.</param>
    public static SobolPoints Scrambled(int dimensions, ulong seed) => new(dimensions, seed);

    /// <summary>One point, each coordinate above 0 and below 1 if scrambled.</summary>
    /// <param name="index">0, 1, 2, …</param>
    public double[] Point(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        var point = new double[Dimensions];
        for (int d = 0; d < point.Length; d++)
        {
            point[d] = seed is ulong s
                ? (OwenScramble.Of(Digits(d, Order(d, (uint)index, s)), Key(s, d)) + 0.5) * PerDigit
                : Digits(d, (uint)index) * PerDigit;
        }
        return point;
    }

    // In the order of Gray's code, as Antonov & Saleev (1979) and all tables of the sequence count.
    private static uint Digits(int dimension, uint index)
    {
        var directions = Directions[dimension % JoeKuoDirections.DimensionCount];
        uint digits = 0;
        for (uint gray = index ^ (index >> 1); gray != 0; gray &= gray - 1)
        {
            digits ^= directions[BitOperations.TrailingZeroCount(gray)];
        }
        return digits;
    }

    private static uint Order(int dimension, uint index, ulong seed)
    {
        int block = dimension / JoeKuoDirections.DimensionCount;
        return block == 0 ? index : OwenScramble.Of(index, Key(seed, -block));
    }

    private static ulong Key(ulong seed, int number) =>
        OwenScramble.Mixed(seed + (0x9e3779b97f4a7c15 * unchecked((ulong)(long)number)));
}
