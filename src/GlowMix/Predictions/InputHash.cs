using System.Globalization;
using GlowMix.Spectra;

namespace GlowMix.Predictions;

/// <summary>Numbers that a derived table was worked out from, as one word to find it by.</summary>
/// <remarks>
/// Fowler, Noll &amp; Vo's FNV-1a of 64 bits over the bits of every number: the same on every machine. No use against an enemy;
/// two of the few thousand inputs there may ever be are alike by chance once in 10¹². (The framework's own hashes differ from
/// run to run, or load a library of ciphers first.)
/// </remarks>
internal sealed class InputHash
{
    private const ulong Prime = 0x100000001b3;
    private ulong state = 0xcbf29ce484222325;

    public InputHash Add(double number)
    {
        // Minus zero is the same input as zero.
        ulong bits = BitConverter.DoubleToUInt64Bits(number + 0.0);
        for (int i = 0; i < sizeof(ulong); i++)
        {
            state = (state ^ (byte)bits) * Prime;
            bits >>= 8;
        }
        return this;
    }

    public InputHash Add(Spectrum spectrum)
    {
        foreach (double sample in spectrum.Samples)
        {
            Add(sample);
        }
        return this;
    }

    /// <summary>Sixteen hexadecimal digits.</summary>
    public override string ToString() => state.ToString("x16", CultureInfo.InvariantCulture);
}
