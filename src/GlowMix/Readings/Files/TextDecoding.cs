using System.Text;
using System.Text.Unicode;

namespace GlowMix.Readings.Files;

/// <summary>Bytes to text: by the byte order mark, else by the zero bytes of UTF-16, else UTF-8 where it is valid, else a code page.</summary>
internal static class TextDecoding
{
    /// <summary>The text without a byte order mark, and the name of its encoding.</summary>
    public static (string Text, string Encoding) Decode(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]))
        {
            return (Encoding.UTF8.GetString(bytes[3..]), "UTF-8 with byte order mark");
        }
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE, 0, 0]))
        {
            return (Encoding.UTF32.GetString(bytes[4..]), "UTF-32");
        }
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]))
        {
            return (Encoding.Unicode.GetString(bytes[2..]), "UTF-16");
        }
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]))
        {
            return (Encoding.BigEndianUnicode.GetString(bytes[2..]), "UTF-16, big end first");
        }
        if (ZerosOfUtf16(bytes) is { } wide)
        {
            return wide.IsBigEndian
                ? (Encoding.BigEndianUnicode.GetString(bytes), "UTF-16, big end first")
                : (Encoding.Unicode.GetString(bytes), "UTF-16");
        }
        return Utf8.IsValid(bytes) ? Undoubled(Encoding.UTF8.GetString(bytes)) : CodePages.Decode(bytes);
    }

    // UTF-8 taken for Latin-1 and encoded again: 'ÂµW' for 'µW'.
    private static (string Text, string Encoding) Undoubled(string text)
    {
        if (text.AsSpan().IndexOfAny('Â', 'Ã') < 0 || text.AsSpan().ContainsAnyExceptInRange('\0', 'ÿ'))
        {
            return (text, "UTF-8");
        }
        byte[] bytes = Encoding.Latin1.GetBytes(text);
        return Utf8.IsValid(bytes)
            ? (Encoding.UTF8.GetString(bytes), "UTF-8 encoded twice")
            : (text, "UTF-8");
    }

    // Digits, blanks and letters of Latin: every second byte is zero, and the others next to never.
    private static (bool IsBigEndian, int Zeros)? ZerosOfUtf16(ReadOnlySpan<byte> bytes)
    {
        int even = 0;
        int odd = 0;
        int length = Math.Min(bytes.Length, 65_536) & ~1;
        for (int i = 0; i < length; i += 2)
        {
            even += bytes[i] == 0 ? 1 : 0;
            odd += bytes[i + 1] == 0 ? 1 : 0;
        }
        int pairs = length / 2;
        return pairs == 0 ? null
            : odd > 0.8 * pairs && even < 0.05 * pairs ? (false, odd)
            : even > 0.8 * pairs && odd < 0.05 * pairs ? (true, even)
            : null;
    }
}
