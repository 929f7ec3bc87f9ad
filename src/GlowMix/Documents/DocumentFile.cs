using System.Security;
using System.Text;
using System.Text.Unicode;

namespace GlowMix.Documents;

/// <summary>Reads a small text file in UTF-8, and turns whatever goes wrong into a problem.</summary>
public static class DocumentFile
{
    /// <summary>Reads a file; never more than the limit and one byte of it.</summary>
    /// <param name="path">The file.</param>
    /// <param name="longestBytes">The longest file accepted, in bytes.</param>
    public static FileText Read(string path, int longestBytes = Document.LongestBytes)
    {
        FileBytes file = ReadBytes(path, longestBytes);
        return file.Problem is { } problem ? new(path, "", problem) : Decode(file.Bytes.Span, path);
    }

    /// <summary>Reads a file's bytes, whatever they are; never more than the limit and one byte of it.</summary>
    /// <param name="path">The file.</param>
    /// <param name="longestBytes">The longest file accepted, in bytes.</param>
    public static FileBytes ReadBytes(string path, int longestBytes)
    {
        ArgumentNullException.ThrowIfNull(path);
        try
        {
            if (Directory.Exists(path))
            {
                return Unreadable(path, ProblemTexts.IsADirectory);
            }
            using var stream = new FileStream(
                path,
                FileMode.Open,
                System.IO.FileAccess.Read,
                FileShare.ReadWrite
            );
            // A file that tells its length gets no more room than it needs; a pipe and a device tell none.
            long told = stream.CanSeek && stream.Length > 0 ? stream.Length : longestBytes;
            var bytes = new byte[Math.Min(told, longestBytes) + 1];
            int length = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return length > longestBytes
                ? new(path, default, new Problem(path, null, ProblemTexts.TooLong(longestBytes)))
                : new(path, bytes.AsMemory(0, length));
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return Unreadable(path, ProblemTexts.NotFound);
        }
        catch (Exception e) when (e is UnauthorizedAccessException or SecurityException)
        {
            return Unreadable(path, ProblemTexts.NoPermission);
        }
        // An empty path, a character no path can hold, a device that fails.
        catch (Exception e) when (e is IOException or ArgumentException or NotSupportedException)
        {
            return Unreadable(path, ProblemTexts.CannotBeRead(e.Message));
        }
    }

    /// <summary>Bytes of UTF-8 as text, a byte order mark left out.</summary>
    public static FileText Decode(ReadOnlySpan<byte> bytes, string name)
    {
        bytes = bytes.StartsWith(Encoding.UTF8.Preamble) ? bytes[3..] : bytes;
        var characters = new char[bytes.Length];
        Utf8.ToUtf16(bytes, characters, out int bytesRead, out int written, replaceInvalidSequences: false);
        if (bytesRead == bytes.Length)
        {
            return new(name, new string(characters, 0, written));
        }
        var before = characters.AsSpan(0, written);
        var place = new Place(before.Count('\n') + 1, written - before.LastIndexOf('\n'));
        return Refused(name, place, ProblemTexts.NotUtf8(bytes[bytesRead]));
    }

    private static FileBytes Unreadable(string name, string text) =>
        new(name, default, new Problem(name, null, text, Kind: ProblemKind.FileAccess));

    private static FileText Refused(string name, Place? place, string text) =>
        new(name, "", new Problem(name, place, text));
}
