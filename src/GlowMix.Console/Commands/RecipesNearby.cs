namespace GlowMix.Console.Commands;

/// <summary>Recipes in the current folder and in its folder 'recipes'.</summary>
internal static class RecipesNearby
{
    private const int MostFiles = 200;
    private const int MostLetters = 4096;

    /// <summary>Their paths as a user would write them, sorted.</summary>
    public static IReadOnlyList<string> Find(Surroundings surroundings)
    {
        var found = new List<string>();
        Add(found, surroundings, "");
        Add(found, surroundings, "recipes");
        return found;
    }

    private static void Add(List<string> found, Surroundings surroundings, string folder)
    {
        try
        {
            string full = Path.Combine(surroundings.Folder, folder);
            if (!Directory.Exists(full))
            {
                return;
            }
            string[] files = Directory.GetFiles(full, "*.yaml");
            Array.Sort(files, StringComparer.Ordinal);
            foreach (string file in files.AsSpan(0, Math.Min(files.Length, MostFiles)))
            {
                if (FileKind.FirstKey(Beginning(file)) == FileKind.Recipe)
                {
                    string name = Path.GetFileName(file);
                    found.Add(folder.Length == 0 ? name : $"{folder}/{name}");
                }
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A folder that cannot be looked into offers nothing.
        }
    }

    // The first key stands behind a comment or two; the whole file need not be read to find it.
    private static string Beginning(string file)
    {
        using var reader = new StreamReader(file);
        var letters = new char[MostLetters];
        return new string(letters, 0, reader.ReadBlock(letters));
    }
}
