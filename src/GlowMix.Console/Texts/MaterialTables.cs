using GlowMix.Documents;
using GlowMix.Materials;

namespace GlowMix.Console.Texts;

/// <summary>Tables of a material as its own file writes them: a fact tells only that there is one.</summary>
internal sealed class MaterialTables(Material material)
{
    private readonly MappingNode? root = RootOf(material);
    private readonly MappingNode? rootOfLike = RootOf(LikeOf(material));

    /// <summary>'at_nm 300: 12, 330: 14.25'; null where the fact is no table.</summary>
    public string? Of(MaterialFact fact)
    {
        var node = Find(root, fact.Key) ?? Find(rootOfLike, fact.Key);
        if (node is not MappingNode entry || entry["value"] is not null)
        {
            return null;
        }
        string text = "";
        foreach (var (key, value) in entry.Entries)
        {
            if (value is MappingNode table)
            {
                text += $"{(text.Length > 0 ? "; " : "")}{key.Value} {Points(table)}";
            }
        }
        return text.Length > 0 ? text : null;
    }

    private static DocumentNode? Find(MappingNode? top, string keyPath)
    {
        DocumentNode? node = top;
        foreach (string word in keyPath.Split('.'))
        {
            node = (node as MappingNode)?[word];
        }
        return node;
    }

    private static MappingNode? RootOf(Material? material) =>
        material?.Origin is { } origin ? Document.Read(origin.Text, origin.Path).Root : null;

    // What a material does not say itself is lent by the shipped one it is like.
    private static Material? LikeOf(Material material) =>
        RootOf(material) is { } root
        && root["like"] is ScalarNode like
        && root["kind"] is ScalarNode kind
        && KindWords.Find(kind.Value) is { } found
            ? new Shelf().Any(found, like.Value).Material
            : null;

    private static string Points(MappingNode table)
    {
        string text = "";
        foreach (var (key, value) in table.Entries)
        {
            text += $"{(text.Length > 0 ? ", " : "")}{key.Value}: {(value as ScalarNode)?.Value}";
        }
        return text;
    }
}
