using System.Text;

namespace GlowMix.Console.Files;

/// <summary>A text that is on the disk under a passing name, and not yet in the place of the file it is meant for.</summary>
internal sealed class PendingFile : IDisposable
{
    private const string Prefix = ".glowmix-";
    private const string Suffix = ".tmp";

    // No write takes so long; what is older was left behind when the program was ended from outside.
    private static readonly TimeSpan longest = TimeSpan.FromHours(1);

    private readonly string temporary;
    private readonly string final;
    private readonly IfThere ifThere;

    private PendingFile(string temporary, string final, IfThere ifThere) =>
        (this.temporary, this.final, this.ifThere) = (temporary, final, ifThere);

    /// <summary>Writes the text and waits until the disk has it.</summary>
    /// <param name="path">Full path of the file it is meant for.</param>
    /// <param name="content">The text.</param>
    /// <param name="ifThere">What becomes of a file of this name.</param>
    /// <exception cref="IOException">It cannot be written; nothing is left behind.</exception>
    /// <exception cref="UnauthorizedAccessException">No permission.</exception>
    public static PendingFile Write(string path, string content, IfThere ifThere)
    {
        string final = RealPath.Of(path);
        var permissions = PermissionsOf(final, ifThere);
        string folder = Path.GetDirectoryName(final)!;
        RemoveLeftOvers(folder);
        var pending = new PendingFile(
            Path.Combine(
                folder,
                $"{Prefix}{Path.GetRandomFileName().Replace(".", "", StringComparison.Ordinal)}{Suffix}"
            ),
            final,
            ifThere
        );
        try
        {
            pending.Fill(content, permissions);
            return pending;
        }
        catch
        {
            pending.Dispose();
            throw;
        }
    }

    /// <summary>Puts the text into its place, in one step.</summary>
    /// <exception cref="IOException">The file is there and is to be kept, or cannot be replaced.</exception>
    public void Commit()
    {
        try
        {
            File.Move(temporary, final, overwrite: ifThere == IfThere.Replace);
        }
        catch (IOException) when (ifThere == IfThere.Keep && File.Exists(final))
        {
            throw new IOException(FileTexts.IsThere);
        }
    }

    /// <summary>Removes the passing name if it is still there.</summary>
    public void Dispose() => Discard(temporary);

    private void Fill(string content, UnixFileMode? permissions)
    {
        byte[] bytes = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetBytes(content);
        var options = new FileStreamOptions
        {
            Mode = FileMode.CreateNew,
            Access = FileAccess.Write,
            Share = FileShare.None,
            BufferSize = 0,
        };
        if (!OperatingSystem.IsWindows())
        {
            // Nobody gets to read on the way what only the owner may.
            options.UnixCreateMode = permissions;
        }
        using var stream = new FileStream(temporary, options);
        if (!OperatingSystem.IsWindows() && permissions is { } mode)
        {
            // The process's mask may have taken some away.
            File.SetUnixFileMode(stream.SafeFileHandle, mode);
        }
        stream.Write(bytes);
        stream.Flush(flushToDisk: true);
    }

    // Of the file that is there; null for a new one, which gets those that new files get.
    private static UnixFileMode? PermissionsOf(string final, IfThere ifThere)
    {
        if (Directory.Exists(final))
        {
            throw new IOException(FileTexts.IsFolder);
        }
        if (IsDevice(final))
        {
            throw new IOException(FileTexts.IsNoFile);
        }
        if (!File.Exists(final))
        {
            return null;
        }
        if (ifThere == IfThere.Keep)
        {
            throw new IOException(FileTexts.IsThere);
        }
        if (File.GetAttributes(final).HasFlag(FileAttributes.ReadOnly))
        {
            throw new IOException(FileTexts.IsReadOnly);
        }
        // For reading too: a pipe opened for writing only would wait for its reader.
        using var there = new FileStream(
            final,
            FileMode.Open,
            FileAccess.ReadWrite,
            FileShare.ReadWrite | FileShare.Delete
        );
        if (!there.CanSeek)
        {
            throw new IOException(FileTexts.IsNoFile);
        }
        return OperatingSystem.IsWindows() ? null : File.GetUnixFileMode(there.SafeFileHandle);
    }

    // These are not files to be replaced; opening some of them does something already.
    private static bool IsDevice(string path) =>
        !OperatingSystem.IsWindows()
        && (
            path.StartsWith("/dev/", StringComparison.Ordinal)
                && !path.StartsWith("/dev/shm/", StringComparison.Ordinal)
            || path.StartsWith("/proc/", StringComparison.Ordinal)
            || path.StartsWith("/sys/", StringComparison.Ordinal)
        );

    private static void RemoveLeftOvers(string folder)
    {
        if (!Directory.Exists(folder))
        {
            throw new DirectoryNotFoundException();
        }
        foreach (string old in Directory.EnumerateFiles(folder, $"{Prefix}*{Suffix}"))
        {
            if (DateTime.UtcNow - File.GetLastWriteTimeUtc(old) > longest)
            {
                Discard(old);
            }
        }
    }

    private static void Discard(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A file too much harms nobody, and what was asked for is done or told already.
        }
    }
}
