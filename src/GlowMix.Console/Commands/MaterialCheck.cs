using GlowMix.Console.Texts;
using GlowMix.Documents;
using GlowMix.Materials;

namespace GlowMix.Console.Commands;

/// <summary>Errors and warnings of one material's file.</summary>
internal static class MaterialCheck
{
    /// <summary>Reads the file as the kind it says it is.</summary>
    public static IReadOnlyList<Problem> ProblemsOf(
        FileText file,
        Document document,
        Surroundings surroundings,
        IRecipeRunner runner
    )
    {
        string? word = (document.Root?["kind"] as ScalarNode)?.Value;
        if (KindWords.Find(word ?? "") is not { } kind)
        {
            // Read as any kind, it tells of the missing or unknown word as every reader does.
            kind = MaterialKind.Led;
        }
        var loaded = new Shelf(new OneFile(file, surroundings)).Any(kind, "file.yaml");
        return
            loaded.Material is Pigment pigment
            && SheetProblem(pigment, file, document, surroundings, runner) is { } problem
            ? [.. loaded.Problems, problem]
            : loaded.Problems;
    }

    // A sheet may be well written and still promise more than its sample can hold.
    private static Problem? SheetProblem(
        Pigment pigment,
        FileText file,
        Document document,
        Surroundings surroundings,
        IRecipeRunner runner
    ) =>
        runner.LadderOf(pigment, FolderMaterials.BesideFile(file.Name, surroundings))?.Refusal is { } refusal
            ? new(
                file.Name,
                document.Root?["sheet_points"]?.Place,
                $"the decay sheet cannot be met: {refusal}"
            )
            : null;

    // The file itself by whatever path it is asked for; the rest from beside it.
    private sealed class OneFile(FileText file, Surroundings surroundings) : IMaterialSource
    {
        private readonly FolderMaterials beside = FolderMaterials.BesideFile(file.Name, surroundings);

        public FileText? Find(MaterialKind kind, string name) => beside.Find(kind, name);

        public FileText Open(string path) => file;

        public IEnumerable<string> Names(MaterialKind kind) => beside.Names(kind);
    }
}
