using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Recipes;

namespace GlowMix.Pieces;

/// <summary>What is found while a piece is put together: problems of the recipe, those of its materials, and what was taken as usual.</summary>
internal sealed class AssemblyNotes(Recipe recipe)
{
    private readonly ProblemList problems = new(recipe.File);
    private readonly List<Problem> ofMaterials = [];
    private readonly List<string> takenAs = [];

    /// <summary>What the recipe left open and how it was taken, in the order found.</summary>
    public IReadOnlyList<string> TakenAs => takenAs;

    /// <summary>Whether anything keeps the piece from being put together.</summary>
    public bool HasErrors => problems.HasErrors || ofMaterials.Exists(p => p.Severity == Severity.Error);

    /// <summary>The recipe's problems by line, then those of its materials.</summary>
    public IEnumerable<Problem> Problems => [.. problems.InLineOrder(), .. ofMaterials];

    /// <summary>A material that was looked up; null, with its problems noted, if it cannot be used.</summary>
    public T? Take<T>(Loaded<T> loaded, string keyPath)
        where T : Material
    {
        if (loaded.NotFound is { } reason)
        {
            Error(keyPath, reason);
        }
        OfMaterials(loaded.Problems);
        return loaded.Material;
    }

    /// <summary>Problems of the recipe's text.</summary>
    public void OfRecipe(IEnumerable<Problem> found) => problems.AddRange(found);

    /// <summary>Problems of a file that the recipe names; the same file may be named twice.</summary>
    public void OfMaterials(IEnumerable<Problem> found) => ofMaterials.AddRange(found.Except(ofMaterials));

    /// <summary>An error at a key of the recipe.</summary>
    public void Error(string keyPath, string text) => problems.AddRange([recipe.ProblemAt(keyPath, text)]);

    /// <summary>A warning at a key of the recipe.</summary>
    public void Warn(string keyPath, string text) =>
        problems.AddRange([recipe.ProblemAt(keyPath, text, Severity.Warning)]);

    /// <summary>How something left open was taken; told once.</summary>
    public void Note(bool isTaken, string text)
    {
        if (isTaken && !takenAs.Contains(text))
        {
            takenAs.Add(text);
        }
    }
}
