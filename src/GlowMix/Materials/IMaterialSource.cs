using GlowMix.Documents;

namespace GlowMix.Materials;

/// <summary>The user's own material files, such as the folder 'materials' beside a recipe. The library itself opens none.</summary>
public interface IMaterialSource
{
    /// <summary>The user's file of a kind and name; null if there is none of that name.</summary>
    FileText? Find(MaterialKind kind, string name);

    /// <summary>The file at a path as the user wrote it, relative to where the user wrote it.</summary>
    FileText Open(string path);

    /// <summary>Names of the user's files of a kind, in any order.</summary>
    IEnumerable<string> Names(MaterialKind kind);
}
