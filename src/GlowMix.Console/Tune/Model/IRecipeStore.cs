using GlowMix.Documents;

namespace GlowMix.Console.Tune.Model;

/// <summary>Where the recipe is kept.</summary>
internal interface IRecipeStore
{
    /// <summary>The file as the user named it.</summary>
    string Name { get; }

    /// <summary>The file as it is now.</summary>
    FileText Read();

    /// <summary>Writes the file, whole or not at all.</summary>
    /// <returns>Why not; null if it did.</returns>
    Problem? Write(string text);

    /// <summary>Whether there is a file of that name.</summary>
    bool Exists(string name);

    /// <summary>Writes another file and goes on with that one.</summary>
    /// <returns>Why not; null if it did.</returns>
    Problem? WriteAs(string name, string text);

    /// <summary>What was left beside the file by a run that did not end well; null if nothing was.</summary>
    string? ReadAutosave();

    /// <summary>Leaves the present text beside the file. Never throws: it is the last resort.</summary>
    void WriteAutosave(string text);

    /// <summary>Takes it away: all is saved, or meant to be forgotten.</summary>
    void DropAutosave();
}
