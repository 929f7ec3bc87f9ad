using System.Text;

namespace GlowMix.Readings.Files;

/// <summary>Names what is no text, so that the message can say what to do instead.</summary>
internal static class FileSort
{
    private static readonly (byte[] Start, string What)[] Known =
    [
        ([0x89, (byte)'P', (byte)'N', (byte)'G'], "a picture (PNG)"),
        ([0xFF, 0xD8, 0xFF], "a picture (JPEG)"),
        ("GIF8"u8.ToArray(), "a picture (GIF)"),
        ("II*\0"u8.ToArray(), "a picture (TIFF)"),
        ("MM\0*"u8.ToArray(), "a picture (TIFF)"),
        ("RIFF"u8.ToArray(), "a picture or a sound"),
        ("%PDF"u8.ToArray(), "a PDF document"),
        ("{\\rtf"u8.ToArray(), "a word processor's document"),
        ([0xD0, 0xCF, 0x11, 0xE0], "an old spreadsheet or word processor's document"),
        ([0x1F, 0x8B], "a compressed file (gzip)"),
        ("7z\xBC\xAF"u8.ToArray(), "a compressed archive"),
        ("BZh"u8.ToArray(), "a compressed file (bzip2)"),
        ([0x89, (byte)'H', (byte)'D', (byte)'F'], "a binary data file (HDF5)"),
        ("MATLAB 5.0"u8.ToArray(), "a binary data file"),
        ("SQLite format"u8.ToArray(), "a database"),
        ([0x7F, (byte)'E', (byte)'L', (byte)'F'], "a program"),
        ("MZ"u8.ToArray(), "a program"),
    ];

    /// <summary>What the bytes are if they are no text; null where they may be one.</summary>
    public static string? OfBytes(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith("PK\x03\x04"u8))
        {
            return bytes.IndexOf("xl/"u8) >= 0 || bytes.IndexOf("opendocument.spreadsheet"u8) >= 0
                ? "a spreadsheet's workbook; save the sheet as CSV or text"
                : "a compressed archive (ZIP)";
        }
        // 'BM' and 'MZ' begin words too: only with the zero bytes that a text has not.
        bool hasZeros = bytes[..Math.Min(bytes.Length, 64)].Contains((byte)0);
        if (hasZeros && bytes.StartsWith("BM"u8))
        {
            return "a picture (BMP)";
        }
        foreach (var (start, what) in Known)
        {
            if (bytes.StartsWith(start) && (start.Length > 2 || hasZeros))
            {
                return what;
            }
        }
        return null;
    }

    /// <summary>What a text is if it can hold no table; null where it may hold one.</summary>
    public static string? OfText(string text)
    {
        var start = text.AsSpan().TrimStart();
        return start.StartsWith("<?xml", StringComparison.OrdinalIgnoreCase) ? "XML"
            : start.StartsWith("<!doctype", StringComparison.OrdinalIgnoreCase)
            || start.StartsWith("<html", StringComparison.OrdinalIgnoreCase)
            || start.StartsWith("<table", StringComparison.OrdinalIgnoreCase)
                ? "a web page"
            : null;
    }

    /// <summary>Whether decoded characters are those of a text: next to no control characters.</summary>
    public static bool IsText(string text)
    {
        int controls = 0;
        foreach (char c in text)
        {
            // Form feed and the end-of-file mark of old systems stand in honest tables.
            if (c is < ' ' and not ('\t' or '\n' or '\r' or '\f' or '\v' or '\x1A') or '\x7F')
            {
                controls++;
            }
        }
        // A letter or two that no encoding has are a slip of whoever typed a remark.
        int faults = text.AsSpan().Count('\uFFFD');
        return (controls + Math.Max(0, faults - 2)) * 500L <= text.Length;
    }

    /// <summary>The first bytes, for a message: '50 4B 03 04'.</summary>
    public static string FirstBytes(ReadOnlySpan<byte> bytes)
    {
        var text = new StringBuilder();
        foreach (byte b in bytes[..Math.Min(4, bytes.Length)])
        {
            text.Append(text.Length > 0 ? " " : "").Append(b.ToString("X2", null));
        }
        return text.ToString();
    }
}
