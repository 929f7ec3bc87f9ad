using System.Collections.Immutable;
using System.Reflection;
using GlowMix.Documents;

namespace GlowMix.Materials;

/// <summary>The materials that travel inside the assembly.</summary>
internal static class ShippedData
{
    private const string Ending = ".yaml";

    private static readonly Assembly Home = typeof(ShippedData).Assembly;

    /// <summary>Names of a kind in alphabetical order.</summary>
    public static ImmutableArray<string> Names(MaterialKind kind)
    {
        string folder = Folder(kind);
        return
        [
            .. Home.GetManifestResourceNames()
                .Where(resource =>
                    resource.StartsWith(folder, StringComparison.Ordinal)
                    && resource.EndsWith(Ending, StringComparison.Ordinal)
                )
                .Select(resource => resource[folder.Length..^Ending.Length])
                .Order(StringComparer.Ordinal),
        ];
    }

    /// <summary>The text of one; null if there is none of that name.</summary>
    public static FileText? Find(MaterialKind kind, string name)
    {
        string path = Folder(kind) + name + Ending;
        using Stream? stream = Home.GetManifestResourceStream(path);
        if (stream is null)
        {
            return null;
        }
        using var reader = new StreamReader(stream);
        return new(path, reader.ReadToEnd());
    }

    private static string Folder(MaterialKind kind) => $"data/{kind.Folder()}/";
}
