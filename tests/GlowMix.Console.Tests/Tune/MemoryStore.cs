using GlowMix.Console.Tune.Model;
using GlowMix.Documents;

namespace GlowMix.Console.Tests.Tune;

/// <summary>Recipe files in memory.</summary>
internal sealed class MemoryStore(string name, string text) : IRecipeStore
{
    public Dictionary<string, string> Files { get; } = new() { [name] = text };

    public string? Autosaved { get; set; }

    public string Name { get; private set; } = name;

    public Problem? Refusal { get; set; }

    public FileText Read() =>
        Files.TryGetValue(Name, out string? found)
            ? new(Name, found)
            : new(Name, "", new Problem(Name, null, ProblemTexts.NotFound));

    public Problem? Write(string text)
    {
        if (Refusal is null)
        {
            Files[Name] = text;
        }
        return Refusal;
    }

    public bool Exists(string name) => Files.ContainsKey(name);

    public Problem? WriteAs(string name, string text)
    {
        if (Refusal is null)
        {
            Files[name] = text;
            Name = name;
        }
        return Refusal;
    }

    public string? ReadAutosave() => Autosaved;

    public void WriteAutosave(string text) => Autosaved = text;

    public void DropAutosave() => Autosaved = null;
}
