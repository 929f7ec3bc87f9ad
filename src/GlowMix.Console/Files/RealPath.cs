namespace GlowMix.Console.Files;

/// <summary>Where a path leads in the end, symbolic links followed.</summary>
internal static class RealPath
{
    // As many as Linux follows; more are a circle.
    private const int MostLinks = 40;

    /// <summary>The path without links in it; what is not there yet stays as it is named.</summary>
    /// <param name="path">A full path.</param>
    /// <exception cref="IOException">The links lead in a circle.</exception>
    /// <remarks>
    /// Word by word, for '..' behind a link to a folder means the folder above the one it leads to: taken from the text of the
    /// path it would be another.
    /// </remarks>
    public static string Of(string path)
    {
        string root = Path.GetPathRoot(path) ?? "";
        string real = root;
        var ahead = new Stack<string>();
        Push(ahead, path[root.Length..]);
        int links = 0;
        while (ahead.TryPop(out string? word))
        {
            if (word == "..")
            {
                real = Path.GetDirectoryName(real) ?? root;
                continue;
            }
            string next = Path.Combine(real, word);
            if (new FileInfo(next).LinkTarget is not { } target)
            {
                real = next;
                continue;
            }
            if (++links > MostLinks)
            {
                throw new IOException(FileTexts.LinksInCircle);
            }
            string targetRoot = Path.IsPathRooted(target) ? Path.GetPathRoot(target)! : "";
            real = targetRoot.Length > 0 ? targetRoot : real;
            Push(ahead, target[targetRoot.Length..]);
        }
        return real;
    }

    private static void Push(Stack<string> ahead, string path)
    {
        string[] words = path.Split([Path.DirectorySeparatorChar, Path.AltDirectorySeparatorChar]);
        for (int i = words.Length - 1; i >= 0; i--)
        {
            if (words[i] is not ("" or "."))
            {
                ahead.Push(words[i]);
            }
        }
    }
}
