using System.Globalization;
using GlowMix.Documents;

namespace GlowMix.Recipes;

/// <summary>Key paths of one recipe: dotted, layers by name, items of other lists by their number from 1.</summary>
internal static class KeyPaths
{
    /// <summary>The name of a layer: its own, else 'layer-' and its number from 1.</summary>
    public static string LayerName(DocumentNode layer, int index) =>
        (layer as MappingNode)?["name"] is ScalarNode { IsEmpty: false } name
            ? name.Value
            : string.Create(CultureInfo.InvariantCulture, $"layer-{index + 1}");

    /// <summary>What stands at a full path, or null.</summary>
    public static DocumentNode? Find(MappingNode root, string path)
    {
        DocumentNode? node = root;
        string list = "";
        foreach (string word in path.Split('.'))
        {
            node = node switch
            {
                MappingNode mapping => mapping[word],
                ListNode items => ItemOf(items, list, word),
                _ => null,
            };
            list = word;
        }
        return node;
    }

    /// <summary>The path with stars of <see cref="RecipeKeys"/>: 'layers.glow.depth_mm' → 'layers.*.depth_mm'.</summary>
    public static string PatternOf(string path)
    {
        var words = path.Split('.');
        for (int i = 1; i < words.Length; i++)
        {
            if (RecipeKeys.NamesIn(string.Join('.', words[..i])) is ["*"])
            {
                words[i] = "*";
            }
        }
        return string.Join('.', words);
    }

    /// <summary>The full path of a key, of which the user may have written the last words only.</summary>
    /// <returns>The path, or null and the reason why there is none.</returns>
    public static (string? Path, string? Problem) Resolve(MappingNode root, string path)
    {
        // The usual case in a search: a full path of something written.
        if (
            Find(root, path) is not null
            && RecipeKeys.Find(PatternOf(path)) is { Kind: not RecipeKeyKind.List }
        )
        {
            return (path, null);
        }
        var all = RecipeKeys
            .All.Where(key => key.Kind != RecipeKeyKind.List)
            .SelectMany(key => Expand(root, key.Path))
            .ToList();
        if (all.Contains(path))
        {
            return (path, null);
        }
        var candidates = all.Where(p => p.EndsWith("." + path, StringComparison.Ordinal)).ToList();
        if (
            candidates.Count > 1
            && candidates.Where(p => Find(root, p) is not null).ToList() is { Count: > 0 } written
        )
        {
            candidates = written;
        }
        return candidates switch
        {
            [var only] => (only, null),
            [] => (null, RecipeTexts.UnknownKeyPath(path, Nearest(all, path))),
            _ => (null, RecipeTexts.AmbiguousKeyPath(path, candidates)),
        };
    }

    // A right key in a wrong layer is nearer than any other spelling.
    private static string? Nearest(List<string> all, string path)
    {
        string lastWord = LastWordOf(path);
        return all.Find(p => LastWordOf(p) == lastWord)
            ?? NearestWord.Of(path, all.Concat(all.Select(LastWordOf)));
    }

    private static string LastWordOf(string path) => path[(path.LastIndexOf('.') + 1)..];

    private static DocumentNode? ItemOf(ListNode items, string list, string word)
    {
        for (int i = 0; i < items.Items.Length; i++)
        {
            if (ItemName(items.Items[i], list, i) == word)
            {
                return items.Items[i];
            }
        }
        return null;
    }

    private static string ItemName(DocumentNode item, string list, int index) =>
        list == "layers" ? LayerName(item, index) : (index + 1).ToString(CultureInfo.InvariantCulture);

    /// <summary>The paths of a pattern in one recipe: each star becomes the items there are.</summary>
    public static IEnumerable<string> Expand(MappingNode root, string pattern)
    {
        int star = pattern.IndexOf('*', StringComparison.Ordinal);
        if (star < 0)
        {
            return [pattern];
        }
        string list = pattern[..(star - 1)];
        return Find(root, list) is ListNode items
            ? items.Items.Select((item, i) => $"{list}.{ItemName(item, list, i)}{pattern[(star + 1)..]}")
            : [];
    }
}
