namespace GlowMix.Choosing.Draws;

/// <summary>
/// Owen's (1995) nested uniform scrambling: each binary digit of a coordinate is turned or kept by a coin that depends on all the
/// digits before it, so that every interval of length 2^−k keeps its points, wherever they now lie in it.
/// </summary>
internal static class OwenScramble
{
    /// <summary>Scrambles a coordinate of 32 binary digits.</summary>
    /// <param name="digits">The coordinate times 2³².</param>
    /// <param name="key">One set of coins.</param>
    public static uint Of(uint digits, ulong key)
    {
        uint scrambled = 0;
        for (int i = 0; i < 32; i++)
        {
            // The digits before this one with a leading 1: a number of its own for each node of the tree.
            ulong node = (1ul << i) | (i == 0 ? 0 : (ulong)(digits >> (32 - i)));
            uint coin = (uint)(Mixed(key ^ (node * 0xd1342543de82ef95)) >> 63);
            scrambled = (scrambled << 1) | (((digits >> (31 - i)) & 1) ^ coin);
        }
        return scrambled;
    }

    /// <summary>A number in which every digit depends on every digit of another: the finaliser of splitmix64 (Steele, Lea &amp; Flood 2014).</summary>
    public static ulong Mixed(ulong x)
    {
        x = (x ^ (x >> 30)) * 0xbf58476d1ce4e5b9;
        x = (x ^ (x >> 27)) * 0x94d049bb133111eb;
        return x ^ (x >> 31);
    }
}
