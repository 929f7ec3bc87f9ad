using GlowMix.Documents;
using GlowMix.Materials;

namespace GlowMix.Console.Commands;

/// <summary>The user's files beside a recipe: materials/KIND/NAME.yaml, and whatever the recipe names by a path.</summary>
/// <param name="folder">The recipe's folder in the user's words, empty for the current one.</param>
/// <param name="surroundings">The world outside.</param>
internal sealed class FolderMaterials(string folder, Surroundings surroundings) : IMaterialSource
{
    private const string Materials = "materials";
    private const string Ending = ".yaml";

    /// <summary>The recipe's folder in the user's words.</summary>
    public string Folder => folder;

    /// <summary>The files beside a recipe.</summary>
    public static FolderMaterials BesideFile(string file, Surroundings surroundings) =>
        new(Path.GetDirectoryName(file) ?? "", surroundings);

    /// <inheritdoc/>
    public FileText? Find(MaterialKind kind, string name)
    {
        string path = Path.Combine(FolderOf(kind), name + Ending);
        if (File.Exists(surroundings.FullPath(path)))
        {
            return UserFile.Read(path, surroundings);
        }
        // One that is not there yet is watched too.
        surroundings.Opened?.Invoke(path);
        return null;
    }

    /// <inheritdoc/>
    public FileText Open(string path) => UserFile.Read(Path.Combine(folder, path), surroundings);

    /// <inheritdoc/>
    public IEnumerable<string> Names(MaterialKind kind)
    {
        var names = new List<string>();
        string full = surroundings.FullPath(FolderOf(kind));
        try
        {
            if (Directory.Exists(full))
            {
                foreach (string file in Directory.GetFiles(full, "*" + Ending))
                {
                    names.Add(Path.GetFileNameWithoutExtension(file));
                }
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A folder that cannot be looked into holds nothing.
        }
        return names;
    }

    private string FolderOf(MaterialKind kind) => Path.Combine(folder, Materials, kind.Folder());
}
