using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Materials;

/// <summary>What every material's file begins with, and the way from its text to the material.</summary>
internal static class MaterialFile
{
    public const int Format = 1;

    /// <summary>Looks a shipped material up that another is like; null where the kind knows no such thing.</summary>
    public delegate Loaded<T> LookUp<T>(string name)
        where T : Material;

    /// <summary>Reads the entries of one kind; null where a problem stands in the list.</summary>
    public delegate T? ReadEntries<T>(MaterialReader reader, MaterialHead head, T? like)
        where T : Material;

    public static Loaded<T> Read<T>(
        FileText file,
        string name,
        MaterialKind kind,
        bool isShipped,
        ReadEntries<T> readEntries,
        LookUp<T>? lookUpLike = null
    )
        where T : Material
    {
        var document = Document.Read(file);
        if (document.Root is not { } root)
        {
            return new(null, document.Problems);
        }
        var problems = new ProblemList(file.Name);
        var keys = new MappingReader(root, problems);
        if (!IsMaterial(keys, kind))
        {
            return new(null, problems.InLineOrder());
        }
        string? title = keys.Text("title");
        var cautions = Cautions(keys);
        T? like = Like(keys, kind, lookUpLike);

        var reader = new MaterialReader(keys, like);
        var head = new MaterialHead(
            name,
            title ?? "",
            cautions.IsEmpty ? like?.Cautions ?? [] : cautions,
            new(file.Name, isShipped, file.Text)
        );
        T? material = readEntries(reader, head, like);
        keys.Finish();
        return problems.HasErrors || material is null
            ? new(null, problems.InLineOrder())
            : new(material with { Facts = [.. reader.Facts] }, problems.InLineOrder());
    }

    // Another kind of file has other keys: one message about the first lines says more than one for each key.
    private static bool IsMaterial(MappingReader keys, MaterialKind kind)
    {
        if (keys.Node.Entries is [] || keys.Node.Entries[0].Key.Value != "material_format")
        {
            keys.Problems.Error(keys.Node.Place, MaterialProblemTexts.FirstKey);
            return false;
        }
        if (keys.WholeNumber("material_format", Format, Format) is null)
        {
            return false;
        }
        string? found = keys.OneOf("kind", MaterialKindWords.All);
        if (found is not null && found != kind.Word())
        {
            keys.Error("kind", MaterialProblemTexts.WrongKind(found, kind.Word()));
        }
        return found == kind.Word();
    }

    private static ImmutableArray<string> Cautions(MappingReader keys)
    {
        var cautions = ImmutableArray.CreateBuilder<string>();
        if (keys.OptionalList("cautions") is { } list)
        {
            for (int i = 0; i < list.Count; i++)
            {
                if (list.Text(i) is { } caution)
                {
                    cautions.Add(caution);
                }
            }
        }
        return cautions.ToImmutable();
    }

    private static T? Like<T>(MappingReader keys, MaterialKind kind, LookUp<T>? lookUp)
        where T : Material
    {
        if (lookUp is null || keys.OptionalText("like") is not { } name)
        {
            return null;
        }
        var shippedNames = ShippedData.Names(kind);
        var like = shippedNames.Contains(name) ? lookUp(name).Material : null;
        if (like is null)
        {
            keys.Error("like", MaterialProblemTexts.LikeNotShipped(name, kind, shippedNames));
        }
        return like;
    }
}
