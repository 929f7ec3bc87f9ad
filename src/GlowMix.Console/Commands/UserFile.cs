using GlowMix.Documents;

namespace GlowMix.Console.Commands;

/// <summary>Reads a file that the user named, and keeps the user's words for it.</summary>
internal static class UserFile
{
    /// <summary>Reads a file relative to the current folder.</summary>
    public static FileText Read(string path, Surroundings surroundings)
    {
        if (path.Length == 0)
        {
            return new("''", "", NoName);
        }
        surroundings.Opened?.Invoke(path);
        FileText file;
        try
        {
            file = DocumentFile.Read(surroundings.FullPath(path));
        }
        catch (ArgumentException)
        {
            // With a character that no path holds. The reader says so.
            file = DocumentFile.Read(path);
        }
        return file with
        {
            Name = path,
            Problem = file.Problem is null ? null : file.Problem with { File = path },
        };
    }

    /// <summary>Reads the bytes of a file relative to the current folder.</summary>
    public static FileBytes ReadBytes(string path, int longestBytes, Surroundings surroundings)
    {
        if (path.Length == 0)
        {
            return new("''", default, NoName);
        }
        FileBytes file;
        try
        {
            file = DocumentFile.ReadBytes(surroundings.FullPath(path), longestBytes);
        }
        catch (ArgumentException)
        {
            file = DocumentFile.ReadBytes(path, longestBytes);
        }
        return file with
        {
            Name = path,
            Problem = file.Problem is null ? null : file.Problem with { File = path },
        };
    }

    // As a path an empty name would be the current folder.
    private static Problem NoName => new("''", null, ProblemTexts.NotFound, Kind: ProblemKind.FileAccess);
}
