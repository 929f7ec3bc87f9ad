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
        var file = Opened(path, surroundings, full => DocumentFile.Read(full));
        return file with { Name = path, Problem = Of(path, file.Problem) };
    }

    /// <summary>Reads the bytes of a file relative to the current folder.</summary>
    public static FileBytes ReadBytes(string path, int longestBytes, Surroundings surroundings)
    {
        if (path.Length == 0)
        {
            return new("''", default, NoName);
        }
        var file = Opened(path, surroundings, full => DocumentFile.ReadBytes(full, longestBytes));
        return file with { Name = path, Problem = Of(path, file.Problem) };
    }

    private static T Opened<T>(string path, Surroundings surroundings, Func<string, T> read)
    {
        string full;
        try
        {
            full = surroundings.FullPath(path);
        }
        catch (ArgumentException)
        {
            // With a character that no path holds. The reader says so.
            full = path;
        }
        return read(full);
    }

    private static Problem? Of(string path, Problem? problem) =>
        problem is null ? null : problem with { File = path };

    // As a path an empty name would be the current folder.
    private static Problem NoName => new("''", null, ProblemTexts.NotFound, Kind: ProblemKind.FileAccess);
}
