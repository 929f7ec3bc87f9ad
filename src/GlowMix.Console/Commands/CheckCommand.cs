using System.CommandLine;
using GlowMix.Documents;
using GlowMix.Readings.Sets;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix check FILE…`: every problem of a file at once.</summary>
internal static class CheckCommand
{
    /// <summary>The command.</summary>
    public static Command Create(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner runner)
    {
        var command = new Command(
            "check",
            "Whether recipes and material files can be used, all problems at once; whether figures kept beside a recipe still stand."
        );
        var files = FileArguments.Create(command, args, "recipe, material or figures files (YAML)");
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
        // A pattern of the shell hands over recipes and their figures: each figures file is held against its recipe once.
        var held = new HashSet<string>(StringComparer.Ordinal);
        foreach (string name in names)
        {
            surroundings.Stop.ThrowIfCancellationRequested();
            var text = UserFile.Read(name, surroundings);
            string? kind = FileKind.FirstKey(text.Text);
            if (kind == FileKind.Figures)
            {
                if (held.Add(name))
                {
                    var found = FiguresFile.ProblemsOf(name, text, surroundings, runner);
                    code = Math.Max(code, Tell(name, found, FiguresTexts.Fresh, surroundings));
                }
                continue;
            }
            int own = Tell(name, ProblemsOf(text, surroundings, runner), "no errors", surroundings);
            var figures = new FiguresFile(name, surroundings, runner);
            if (own == ExitCode.Done && kind == FileKind.Recipe && figures.IsThere && held.Add(figures.Name))
            {
                own = Tell(figures.Name, figures.ProblemsOf(text), FiguresTexts.Fresh, surroundings);
            }
            code = Math.Max(code, own);
        }
        return code;
    }

    private static int Tell(
        string name,
        IReadOnlyList<Problem> problems,
        string words,
        Surroundings surroundings
    )
    {
        int code = Problems.Tell(problems, surroundings);
        if (code == ExitCode.Done)
        {
            string warnings = problems.Count switch
            {
                0 => "",
                1 => ", 1 warning",
                int count => $", {count} warnings",
            };
            surroundings.Sheet().Line($"{name}: {words}{warnings}");
            surroundings.Out.Flush();
        }
        return code;
    }

    private static IReadOnlyList<Problem> ProblemsOf(
        FileText file,
        Surroundings surroundings,
        IRecipeRunner runner
    )
    {
        string name = file.Name;
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
            FileKind.Calibration => CalibrationCheck.ProblemsOf(file, surroundings),
            FileKind.Readings => ReadingsSetFile.Read(file).Problems,
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
