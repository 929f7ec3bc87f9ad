using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Reflection;
using GlowMix.Documents;

namespace GlowMix.Materials;

/// <summary>The materials that travel inside the assembly.</summary>
internal static class ShippedData
{
    private const string Ending = ".yaml";

    private static readonly Assembly Home = typeof(ShippedData).Assembly;

    private static readonly FrozenDictionary<MaterialKind, ImmutableArray<string>> NamesOf =
        Enum.GetValues<MaterialKind>()
            .ToFrozenDictionary(
                kind => kind,
                kind =>
                    Home.GetManifestResourceNames()
                        .Where(resource =>
                            resource.StartsWith(Folder(kind), StringComparison.Ordinal)
                            && resource.EndsWith(Ending, StringComparison.Ordinal)
                        )
                        .Select(resource => resource[Folder(kind).Length..^Ending.Length])
                        .Order(StringComparer.Ordinal)
                        .ToImmutableArray()
            );

    /// <summary>Names of a kind in alphabetical order.</summary>
    public static ImmutableArray<string> Names(MaterialKind kind) => NamesOf[kind];

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
