using GlowMix.Documents;
using GlowMix.Materials;

namespace GlowMix.Console.Revisions;

/// <summary>The user's materials beside a recipe, and whatever it names by a path, as they were at a revision.</summary>
internal sealed class RevisionMaterials(Revision revision) : IMaterialSource
{
    private const string Ending = ".yaml";

    /// <inheritdoc/>
    public FileText? Find(MaterialKind kind, string name) =>
        revision.Read($"materials/{kind.Folder()}/{name}{Ending}");

    /// <inheritdoc/>
    public FileText Open(string path) =>
        revision.Read(path)
        ?? new(
            $"{path} at {revision.Name}",
            "",
            new($"{path} at {revision.Name}", null, ProblemTexts.NotFound)
        );

    /// <inheritdoc/>
    public IEnumerable<string> Names(MaterialKind kind) =>
        revision
            .Names($"materials/{kind.Folder()}")
            .Where(name => name.EndsWith(Ending, StringComparison.Ordinal))
            .Select(name => name[..^Ending.Length]);
}
