using System.CommandLine;
using GlowMix.Console.Texts;
using GlowMix.Materials;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Console.Commands;

/// <summary>What could follow the words typed so far.</summary>
internal sealed class CompletionWords(Command root, Surroundings surroundings)
{
    private const int MostFiles = 500;
    private static readonly string[] recipeEndings = [".yaml"];

    // Beside recipes, and passed over by what takes recipes.
    private static readonly string[] writtenEndings = [".figures.yaml", ".calibration.yaml"];
    private static readonly string[] besideEndings = [.. writtenEndings, ".readings.yaml"];

    /// <summary>The candidates that begin like the last word, sorted.</summary>
    /// <param name="typed">The words behind the program's name; the last is the one being typed, perhaps empty.</param>
    public IReadOnlyList<string> After(IReadOnlyList<string> typed)
    {
        string current = typed.Count > 0 ? typed[^1] : "";
        Command command = root;
        Option? pending = null;
        bool onlyFiles = false;
        for (int i = 0; i < typed.Count - 1; i++)
        {
            string word = typed[i];
            if (onlyFiles)
            {
                continue;
            }
            if (word == "--")
            {
                (onlyFiles, pending) = (true, null);
            }
            else if (word.StartsWith('-'))
            {
                pending = word.Contains('=', StringComparison.Ordinal) ? null : OptionOf(command, word);
            }
            else if (pending is null || !TakesValue(pending))
            {
                pending = null;
                command = command.Subcommands.FirstOrDefault(c => c.Name == word && !c.Hidden) ?? command;
            }
            else
            {
                pending = pending.AllowMultipleArgumentsPerToken ? pending : null;
            }
        }
        IEnumerable<string> words =
            pending is not null
            && TakesValue(pending)
            && !(current.StartsWith('-') && pending.AllowMultipleArgumentsPerToken)
                ? ValuesOf(pending, current)
            : current.StartsWith('-') && !onlyFiles
                ? OptionsOf(command)
                    .Where(o => !typed.Take(typed.Count - 1).Contains(o) || IsRepeatable(command, o))
            : ArgumentsOf(command, current);
        return
        [
            .. words
                .Where(w => w.StartsWith(current, StringComparison.Ordinal))
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];
    }

    private IEnumerable<string> ArgumentsOf(Command command, string current)
    {
        if (command.Subcommands.Any(c => !c.Hidden))
        {
            return command.Subcommands.Where(c => !c.Hidden).Select(c => c.Name);
        }
        return command.Name switch
        {
            "completion" => CompletionScripts.Shells,
            "help" => HelpTopics.Names.Concat(root.Subcommands.Where(c => !c.Hidden).Select(c => c.Name)),
            "materials" => KindWords.All.Select(k => k.Folder()).Concat(KindWords.All.SelectMany(NamesOf)),
            "check" => Files(current, recipeEndings),
            "tidy" => Files(current, recipeEndings).Where(f => !Ends(f, writtenEndings)),
            _ when command.Arguments.Any(a => a.Name == "FILE") => Files(current, recipeEndings)
                .Where(f => !Ends(f, besideEndings)),
            _ => Files(current, null),
        };
    }

    private IEnumerable<string> ValuesOf(Option option, string current)
    {
        if (option.HelpName is "FILE" or "DIR")
        {
            return Files(current, option.HelpName == "DIR" ? [] : null);
        }
        return option.Name switch
        {
            "--criterion" => NamesOf(MaterialKind.Criterion),
            "--figure" => FigureCatalogue.All.Select(f => f.Name),
            "--change" => Keys().Select(k => k + "="),
            "--vary" => Keys(),
            _ => option
                .GetCompletions(System.CommandLine.Completions.CompletionContext.Empty)
                .Select(c => c.InsertText ?? c.Label),
        };
    }

    private static IEnumerable<string> Keys() =>
        RecipeKeys.All.Where(k => k.Kind != RecipeKeyKind.List).Select(k => k.Name);

    private IEnumerable<string> NamesOf(MaterialKind kind) =>
        new Shelf(new FolderMaterials("", surroundings)).Names(kind);

    private static IEnumerable<string> OptionsOf(Command command)
    {
        foreach (var option in command.Options)
        {
            yield return option.Name;
        }
        yield return "--help";
    }

    private static bool IsRepeatable(Command command, string name) =>
        OptionOf(command, name)?.ValueType.IsArray == true;

    private static Option? OptionOf(Command command, string word) =>
        command.Options.FirstOrDefault(o => o.Name == word || o.Aliases.Contains(word));

    private static bool TakesValue(Option option) => option.ValueType != typeof(bool);

    private static bool Ends(string name, string[] endings) =>
        Array.Exists(endings, e => name.EndsWith(e, StringComparison.Ordinal));

    // Folders with a slash behind, and files of the endings; hidden ones only where a point is typed.
    private List<string> Files(string current, string[]? endings)
    {
        int slash = current.LastIndexOf('/');
        string folder = slash < 0 ? "" : current[..(slash + 1)];
        string begun = current[(slash + 1)..];
        var found = new List<string>();
        try
        {
            var place = new DirectoryInfo(surroundings.FullPath(folder.Length == 0 ? "." : folder));
            foreach (var entry in place.EnumerateFileSystemInfos().Take(MostFiles))
            {
                bool isFolder = entry is DirectoryInfo;
                if (
                    (entry.Name.StartsWith('.') && !begun.StartsWith('.'))
                    || (!isFolder && endings is not null && !Ends(entry.Name, endings))
                )
                {
                    continue;
                }
                found.Add(folder + entry.Name + (isFolder ? "/" : ""));
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            // A folder that cannot be looked into offers nothing.
        }
        return found;
    }
}
