using System.Globalization;
using GlowMix.Spectra;

namespace GlowMix.Predictions;

/// <summary>What a table or a prediction was worked out from, as one word to know it by.</summary>
/// <remarks>
/// Fowler, Noll &amp; Vo's FNV-1a of 64 bits over the bits of every number and letter: the same on every machine. No use against an enemy;
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

    public InputHash Add(string text)
    {
        foreach (char letter in text)
        {
            state = (state ^ (byte)letter) * Prime;
            state = (state ^ (byte)(letter >> 8)) * Prime;
        }
        // Ends the text, so that 'ab', 'c' is another input than 'a', 'bc'; no text holds this character.
        state = (state ^ 0xFF) * Prime;
        state = (state ^ 0xFF) * Prime;
        return this;
    }

    /// <summary>Sixteen hexadecimal digits.</summary>
    public override string ToString() => state.ToString("x16", CultureInfo.InvariantCulture);
}
