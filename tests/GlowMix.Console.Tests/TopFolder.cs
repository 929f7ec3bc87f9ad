namespace GlowMix.Console.Tests;

/// <summary>The top of the repository, found upwards from where the tests run.</summary>
internal static class TopFolder
{
    public static string Path { get; } = Find();

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(System.IO.Path.Combine(folder.FullName, "GlowMix.sln")))
        {
            folder =
                folder.Parent ?? throw new InvalidOperationException("The tests run outside the repository.");
        }
        return folder.FullName;
    }
}
