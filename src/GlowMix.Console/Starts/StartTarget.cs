using GlowMix.Console.Files;
using GlowMix.Documents;
using GlowMix.Materials;

namespace GlowMix.Console.Starts;

/// <summary>Where a new file goes, and what is in it goes by.</summary>
/// <param name="Path">As the user has it, or below the folder that recipes look for materials in.</param>
/// <param name="Name">Its name without the ending.</param>
/// <param name="Kind">Which material; null for a recipe.</param>
internal sealed record StartTarget(string Path, string Name, MaterialKind? Kind)
{
    private const string Ending = ".yaml";

    /// <summary>It lies where recipes beside the folder materials find it by its name.</summary>
    public bool IsShelved => Kind is { } kind && Path == ShelfPath(kind, Name);

    /// <summary>Folder of the recipes that it is for: for a material in materials/KIND two folders up.</summary>
    public string FolderOfRecipes => IsInShelfFolder ? "" : Folder;

    /// <summary>Its name is one that recipes can use.</summary>
    public bool IsMaterialName =>
        Name.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-') && Name[0] != '-';

    /// <summary>That it is there already.</summary>
    public Problem NotOver =>
        new(Path, null, "is there already, and is kept; choose another name", Kind: ProblemKind.FileAccess);

    private string Folder => System.IO.Path.GetDirectoryName(Path) ?? "";

    private bool IsInShelfFolder =>
        Kind is { } kind && Folder == System.IO.Path.Combine("materials", kind.Folder());

    /// <summary>From the command line.</summary>
    /// <param name="given">The names there.</param>
    /// <param name="starter">What is to be made.</param>
    /// <param name="wrong">Why there is none, else empty.</param>
    public static StartTarget? Of(string[] given, Starter starter, out string wrong)
    {
        wrong =
            given.Length == 0 ? $"new {starter.Word} needs a name"
            : given.Length > 1 ? $"new {starter.Word} takes one name, not {given.Length}"
            : given[0].Length == 0 ? "the name is empty"
            : "";
        if (wrong.Length > 0)
        {
            return null;
        }
        string told = given[0];
        bool isPath = told.EndsWith(Ending, StringComparison.Ordinal);
        string name = System.IO.Path.GetFileName(isPath ? told[..^Ending.Length] : told);
        if (name.Length == 0)
        {
            wrong = $"{ProblemTexts.Quote(told)} names no file";
            return null;
        }
        string path =
            isPath ? told
            : starter.Kind is { } kind && name == told ? ShelfPath(kind, name)
            : told + Ending;
        return new(path, name, starter.Kind);
    }

    /// <summary>Makes the folder of materials where it is to lie in one.</summary>
    /// <returns>Why it cannot be made, or null.</returns>
    public Problem? MakeFolder(Surroundings surroundings)
    {
        if (!IsInShelfFolder)
        {
            return null;
        }
        try
        {
            Directory.CreateDirectory(surroundings.FullPath(Folder));
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new(Folder, null, FileTexts.CannotBeWritten("", e), Kind: ProblemKind.FileAccess);
        }
    }

    private static string ShelfPath(MaterialKind kind, string name) =>
        System.IO.Path.Combine("materials", kind.Folder(), name + Ending);
}
