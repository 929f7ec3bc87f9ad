using System.Text;

namespace GlowMix.Readings.Files;

/// <summary>
/// Texts in none of Unicode's encodings: of the code pages that programs write, the one that makes most known words of the
/// header.
/// </summary>
internal static class CodePages
{
    private const int LongestHeaderBytes = 16_384;

    // The earlier wins where the header tells nothing.
    private static readonly (int Number, string Name)[] Known =
    [
        (1252, "Windows-1252"),
        (1250, "Windows-1250"),
        (1251, "Windows-1251"),
        (932, "Shift-JIS"),
        (936, "GBK"),
        (949, "Korean (949)"),
        (950, "Big5"),
        (51932, "EUC-JP"),
        (1253, "Windows-1253"),
        (1254, "Windows-1254"),
        (1257, "Windows-1257"),
        (1255, "Windows-1255"),
        (1256, "Windows-1256"),
        (28592, "Latin-2"),
        (28595, "ISO 8859-5"),
        (20866, "KOI8-R"),
        (21866, "KOI8-U"),
        (866, "DOS 866"),
        (850, "DOS 850"),
        (852, "DOS 852"),
        (10000, "Mac Roman"),
        (10007, "Mac Cyrillic"),
    ];

    /// <summary>The text and the name of its code page.</summary>
    public static (string Text, string Name) Decode(ReadOnlySpan<byte> bytes)
    {
        byte[] header = OtherLines(bytes);
        if (IsMostlyUtf8(header))
        {
            return (Encoding.UTF8.GetString(bytes), "UTF-8 with faults");
        }
        (int Number, string Name) best = Known[0];
        int most = 0;
        foreach (var page in Known)
        {
            int words = KnownLetters(EncodingOf(page.Number).GetString(header));
            if (words > most)
            {
                (best, most) = (page, words);
            }
        }
        bool isLatin1 = best.Number == 1252 && !bytes.ContainsAnyInRange((byte)0x80, (byte)0x9F);
        return (EncodingOf(best.Number).GetString(bytes), isLatin1 ? "Latin-1" : best.Name);
    }

    private static Encoding EncodingOf(int number) => CodePagesEncodingProvider.Instance.GetEncoding(number)!;

    // Letters of a code page make hardly ever whole letters of UTF-8.
    private static bool IsMostlyUtf8(byte[] header)
    {
        string text = Encoding.UTF8.GetString(header);
        int faults = text.Count(c => c == '\uFFFD');
        return text.Count(c => c > '\x7F') - faults > Math.Max(1, 2 * faults);
    }

    // The lines that are not ASCII: only they can tell pages apart.
    private static byte[] OtherLines(ReadOnlySpan<byte> bytes)
    {
        var lines = new List<byte>();
        while (!bytes.IsEmpty && lines.Count < LongestHeaderBytes)
        {
            int end = bytes.IndexOfAny((byte)'\n', (byte)'\r');
            var line = end < 0 ? bytes : bytes[..end];
            if (line.ContainsAnyExceptInRange((byte)0, (byte)0x7F))
            {
                lines.AddRange(line);
                lines.Add((byte)'\n');
            }
            bytes = end < 0 ? [] : bytes[(end + 1)..];
        }
        return [.. lines];
    }

    private static int KnownLetters(string text)
    {
        string folded = HeaderFold.Of(text);
        return Array
            .FindAll(Words.Value, w => folded.Contains(w, StringComparison.Ordinal))
            .Sum(w => w.Length);
    }

    // One letter may come about by chance.
    private static readonly Lazy<string[]> Words = new(() =>
        [.. HeaderVocabulary.All.Where(w => w.Length > (char.IsAscii(w[0]) ? 3 : 1))]
    );
}
