using GlowMix.Documents;

namespace GlowMix.Recipes;

/// <summary>The edits that set one key of a recipe.</summary>
internal static class RecipeEdit
{
    /// <summary>Sets a key that may be there or not; see <see cref="RecipeDocument.With(string, string)"/>.</summary>
    public static IEnumerable<TextEdit> Set(Document document, string path, string valueText)
    {
        if (KeyPaths.Find(document.Root!, path) is { } value)
        {
            return [DocumentEdit.Replace(value, valueText)];
        }
        var words = path.Split('.');
        int depth = words.Length - 1;
        while (depth > 0 && KeyPaths.Find(document.Root!, string.Join('.', words[..depth])) is null)
        {
            depth--;
        }
        string section = string.Join('.', words[..depth]);
        var missing = words[depth..];
        switch (depth == 0 ? document.Root : KeyPaths.Find(document.Root!, section))
        {
            case MappingNode mapping
                when missing is [var key] && Displaced(mapping, key, valueText) is { } edits:
                return edits;
            case MappingNode mapping:
                var order = RecipeKeys.NamesIn(KeyPaths.PatternOf(section));
                return [DocumentEdit.Insert(document, mapping, missing, valueText, order)];
            case ScalarNode { IsEmpty: true }:
                var parent =
                    depth == 1
                        ? document.Root!
                        : (MappingNode)KeyPaths.Find(document.Root!, string.Join('.', words[..(depth - 1)]))!;
                return
                [
                    DocumentEdit.InsertIntoEmpty(
                        document,
                        parent.Find(words[depth - 1])!,
                        missing,
                        valueText
                    ),
                ];
            case var node:
                // The section is a list or a word: an error of the recipe's own, told when it was read.
                return [DocumentEdit.Replace(node!, $"{{{missing[0]}: {valueText}}}")];
        }
    }

    // Another key that says the same gives way.
    private static IEnumerable<TextEdit>? Displaced(MappingNode mapping, string key, string valueText)
    {
        foreach (var (one, other) in RecipeKeys.Alternatives)
        {
            string? gone =
                key == one ? other
                : key == other ? one
                : null;
            if (gone is not null && mapping.Find(gone) is { } entry)
            {
                return [DocumentEdit.Replace(entry, key, valueText)];
            }
        }
        // The ends of the grain become its median; the spread they say stays.
        if (
            key == "grain_median_um"
            && mapping.Find("grain_from_um") is { Value: ScalarNode from } fromEntry
            && mapping.Find("grain_to_um") is { Value: ScalarNode to } toEntry
            && NumberText.TryRead(from.Value, out double fromUm)
            && NumberText.TryRead(to.Value, out double toUm)
        )
        {
            return
            [
                DocumentEdit.Replace(fromEntry, key, valueText),
                DocumentEdit.Replace(toEntry, "grain_gsd", NumberText.Write(Grain.GsdOfEnds(fromUm, toUm))),
            ];
        }
        return null;
    }
}
