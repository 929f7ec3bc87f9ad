using GlowMix.Documents;
using GlowMix.Materials;

namespace GlowMix.Tests.Materials;

/// <summary>A user's material files that lie in memory, under paths such as 'materials/resins/mine.yaml'.</summary>
internal sealed class InMemoryMaterials(params (string Path, string Text)[] files) : IMaterialSource
{
    public FileText? Find(MaterialKind kind, string name)
    {
        string path = $"materials/{kind.Folder()}/{name}.yaml";
        return files.Any(f => f.Path == path) ? Open(path) : null;
    }

    public FileText Open(string path) =>
        files.FirstOrDefault(f => f.Path == path) is { Text: { } text }
            ? new(path, text)
            : new(path, "", new Problem(path, null, ProblemTexts.NotFound, Kind: ProblemKind.FileAccess));

    public IEnumerable<string> Names(MaterialKind kind) =>
        files
            .Where(f => f.Path.StartsWith($"materials/{kind.Folder()}/", StringComparison.Ordinal))
            .Select(f => Path.GetFileNameWithoutExtension(f.Path));

    public static string Shipped(string path)
    {
        using var stream = typeof(Shelf).Assembly.GetManifestResourceStream(path)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
