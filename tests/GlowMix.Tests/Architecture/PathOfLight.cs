namespace GlowMix.Tests.Architecture;

/// <summary>The folders of the model in the order that light and the work on it pass them; each may use only those before it.</summary>
internal static class PathOfLight
{
    private static readonly string[] Folders =
    [
        "Spectra",
        "Colour",
        "Optics",
        "Optics.Grains",
        "Optics.Slab",
        "Optics.Pour",
        "Documents",
        "Materials",
        "Recipes",
        "Pieces",
        "LitState",
        "Afterglow",
        "Casting",
        "Predictions",
        "Choosing",
        "Readings",
        "Readings.Files",
        "Readings.Fit",
        "Readings.Spectral",
        "Readings.Decay",
        "Readings.Sets",
        "Markings",
    ];

    /// <summary>Place on the path of a folder, a namespace or a name in one; −1 off the path.</summary>
    public static int PlaceOf(string name)
    {
        int place = -1;
        for (int i = 0; i < Folders.Length; i++)
        {
            bool within = name == Folders[i] || name.StartsWith(Folders[i] + ".", StringComparison.Ordinal);
            if (within && (place < 0 || Folders[i].Length > Folders[place].Length))
            {
                place = i;
            }
        }
        return place;
    }

    /// <summary>What is wrong with the names that files use, as 'file:line: Folder uses Name'.</summary>
    /// <param name="files">The files.</param>
    /// <param name="types">Full names of the model's types, without 'GlowMix.'.</param>
    public static IEnumerable<string> Breaches(IEnumerable<SourceFile> files, IReadOnlySet<string> types) =>
        from file in files
        from use in file.Uses(types)
        where PlaceOf(use.Name) < 0 || PlaceOf(use.Name) > PlaceOf(file.Folder)
        select $"src/GlowMix/{file.Path}:{use.Line}: {file.Folder} uses {use.Name}";
}
