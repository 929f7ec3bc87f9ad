using GlowMix.Documents;
using GlowMix.Materials;

namespace GlowMix.Tests.Predictions;

/// <summary>Files of a folder, by path; no materials of its own.</summary>
internal sealed class FolderFiles(string folder) : IMaterialSource
{
    public FileText? Find(MaterialKind kind, string name) => null;

    public FileText Open(string path) => DocumentFile.Read(Path.Combine(folder, path));

    public IEnumerable<string> Names(MaterialKind kind) => [];
}
