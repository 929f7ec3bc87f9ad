using GlowMix.Console.Commands;
using GlowMix.Console.Files;
using GlowMix.Documents;

namespace GlowMix.Console.Tune.Model;

/// <summary>A recipe in a file of the user's.</summary>
internal sealed class RecipeStore(string name, Surroundings surroundings) : IRecipeStore
{
    private const string Ending = ".autosave";

    /// <inheritdoc/>
    public string Name { get; private set; } = name;

    private string AutosaveName => Name + Ending;

    /// <inheritdoc/>
    public FileText Read() => UserFile.Read(Name, surroundings);

    /// <inheritdoc/>
    public Problem? Write(string text) => Write(Name, text);

    /// <inheritdoc/>
    public bool Exists(string name) => File.Exists(surroundings.FullPath(name));

    /// <inheritdoc/>
    public Problem? WriteAs(string name, string text)
    {
        var problem = Write(name, text);
        if (problem is null)
        {
            DropAutosave();
            Name = name;
        }
        return problem;
    }

    /// <inheritdoc/>
    public string? ReadAutosave() =>
        UserFile.Read(AutosaveName, surroundings) is { Problem: null } file ? file.Text : null;

    /// <inheritdoc/>
    public void WriteAutosave(string text) => Write(AutosaveName, text);

    /// <inheritdoc/>
    public void DropAutosave()
    {
        try
        {
            File.Delete(surroundings.FullPath(AutosaveName));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // It will be offered at the next start, and can be refused there.
        }
    }

    private Problem? Write(string name, string text) => AtomicFile.Write(name, text, surroundings);
}
