using System.CommandLine;
using GlowMix.Documents;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix check FILE…`: every problem of a file at once.</summary>
internal static class CheckCommand
{
    /// <summary>The command.</summary>
    public static Command Create(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner runner)
    {
        var command = new Command(
            "check",
            "Whether recipes and material files can be used; all problems at once."
        );
        var files = FileArguments.Create(command, args, "recipe or material files (YAML)");
        command.Add(files);
        command.SetAction(parsed => Run(parsed.GetValue(files) ?? [], surroundings, runner));
        return command;
    }

    private static int Run(string[] names, Surroundings surroundings, IRecipeRunner runner)
    {
        if (names.Length == 0)
        {
            surroundings.Complain("check needs a file");
            surroundings.Complain("Try 'glowmix check --help'.");
            return ExitCode.Usage;
        }
        int code = ExitCode.Done;
        foreach (string name in names)
        {
            surroundings.Stop.ThrowIfCancellationRequested();
            var problems = ProblemsOf(name, surroundings, runner);
            int own = Problems.Tell(problems, surroundings);
            code = Math.Max(code, own);
            if (own == ExitCode.Done)
            {
                string warnings = problems.Count switch
                {
                    0 => "",
                    1 => ", 1 warning",
                    int count => $", {count} warnings",
                };
                surroundings.Sheet().Line($"{name}: no errors{warnings}");
                surroundings.Out.Flush();
            }
        }
        return code;
    }

    private static IReadOnlyList<Problem> ProblemsOf(
        string name,
        Surroundings surroundings,
        IRecipeRunner runner
    )
    {
        var file = UserFile.Read(name, surroundings);
        if (file.Problem is { } unreadable)
        {
            return [unreadable];
        }
        var document = Document.Read(file);
        if (document.Root is not { } root)
        {
            return document.Problems;
        }
        var files = FolderMaterials.BesideFile(name, surroundings);
        var first = root.Entries.Length > 0 ? root.Entries[0].Key : null;
        return first?.Value switch
        {
            FileKind.Recipe => runner.Check(file, files),
            FileKind.Material => MaterialCheck.ProblemsOf(file, document, surroundings, runner),
            // A recipe or material whose kind stands further down is read as what it is, and told so there.
            _ when root.Find(FileKind.Recipe) is not null => runner.Check(file, files),
            _ when root.Find(FileKind.Material) is not null => MaterialCheck.ProblemsOf(
                file,
                document,
                surroundings,
                runner
            ),
            _ => [new Problem(name, first?.Place, FileKind.Unknown(first?.Value))],
        };
    }
}
