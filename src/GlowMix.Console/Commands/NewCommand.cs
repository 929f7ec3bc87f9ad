using System.CommandLine;
using GlowMix.Console.Files;
using GlowMix.Console.Starts;
using GlowMix.Console.Texts;
using GlowMix.Documents;
using GlowMix.Materials;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix new KIND NAME`: a first recipe, or a material from its label.</summary>
internal sealed class NewCommand
{
    private readonly Surroundings surroundings;
    private readonly IRecipeRunner runner;
    private readonly Starter starter;
    private readonly Argument<string[]> names;
    private readonly Dictionary<string, Option> options = [];

    private NewCommand(
        IReadOnlyList<string> args,
        Surroundings surroundings,
        IRecipeRunner runner,
        Starter starter
    )
    {
        (this.surroundings, this.runner, this.starter) = (surroundings, runner, starter);
        Command = new(starter.Word, starter.Description);
        names = FileArguments.Create(
            Command,
            args,
            starter.Kind is { } kind
                ? $"its name, for materials/{kind.Folder()}/NAME.yaml; or a path ending in .yaml"
                : "the file to write"
        );
        names.HelpName = "NAME";
        Command.Add(names);
        foreach (var field in starter.Fields)
        {
            Option option = field.IsRepeated
                ? new Option<string[]>(field.Option)
                {
                    HelpName = field.HelpName,
                    Description = field.Description,
                }
                : new Option<string>(field.Option)
                {
                    HelpName = field.HelpName,
                    Description = field.Description,
                };
            option.CompletionSources.Add(_ =>
                WordsOf(field).Select(word => new System.CommandLine.Completions.CompletionItem(word))
            );
            options[field.Name] = option;
            Command.Add(option);
        }
        Command.SetAction(Run);
    }

    private Command Command { get; }

    /// <summary>The command with one below it for each kind.</summary>
    public static Command Create(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner runner)
    {
        var command = new Command(
            "new",
            "A first recipe, or a material from its label; at a terminal by a few questions."
        );
        // A hundred options are not made ready for those who do not ask.
        foreach (var starter in args.Contains("new") ? Starters.All : [])
        {
            command.Add(new NewCommand(args, surroundings, runner, starter).Command);
        }
        command.SetAction(_ =>
        {
            surroundings.Complain(
                $"new needs one of {string.Join(", ", Starters.All.Select(s => s.Word))}, and a name: glowmix new recipe first.yaml"
            );
            surroundings.Complain("Try 'glowmix new --help'.");
            return ExitCode.Usage;
        });
        return command;
    }

    private int Run(ParseResult parsed)
    {
        if (StartTarget.Of(parsed.GetValue(names) ?? [], starter, out string wrong) is not { } target)
        {
            return Misunderstood(wrong);
        }
        if (starter.Kind is not null && !target.IsMaterialName)
        {
            surroundings.Complain(
                $"{ProblemTexts.Quote(target.Name)} is no material's name; needed: small letters, digits and hyphens, such as glow-bag"
            );
            return ExitCode.Content;
        }
        if (File.Exists(surroundings.FullPath(target.Path)))
        {
            return Problems.Tell([target.NotOver], surroundings);
        }
        var files = new FolderMaterials(target.FolderOfRecipes, surroundings);
        var answers = new StartAnswers { Name = target.Name };
        if (AnswersOf(parsed, answers, new Shelf(files), out int code))
        {
            return starter.ProblemOf(answers) is { } problem
                ? Misunderstood(problem)
                : Write(target, answers, new Shelf(files), files);
        }
        return code;
    }

    // Where nothing but a number or a text could stand nothing is offered; a file is one of the folder's.
    private IEnumerable<string> WordsOf(StartField field) =>
        [
            .. field.Words,
            .. field.OrWord is { } word ? [word] : Array.Empty<string>(),
            .. field.Kind is { } kind ? new Shelf(new FolderMaterials("", surroundings)).Names(kind) : [],
        ];

    private bool AnswersOf(ParseResult parsed, StartAnswers answers, Shelf shelf, out int code)
    {
        code = ExitCode.Done;
        bool isTold = false;
        foreach (var field in starter.Fields)
        {
            string[] told =
                field.IsRepeated ? parsed.GetValue((Option<string[]>)options[field.Name]) ?? []
                : parsed.GetValue((Option<string>)options[field.Name]) is { } one ? [one]
                : [];
            foreach (string value in told)
            {
                isTold = true;
                if (field.ProblemOf(value, shelf) is var (problem, own))
                {
                    surroundings.Complain(problem);
                    code = Math.Max(code, own);
                }
            }
            if (told.Length > 0)
            {
                answers.Put(field.Name, told);
            }
        }
        if (code != ExitCode.Done)
        {
            return false;
        }
        if (!isTold && surroundings.InputIsTerminal && surroundings.TerminalColumns is not null)
        {
            if (new Questions(surroundings, shelf).Ask(starter.Fields, answers))
            {
                return true;
            }
            surroundings.Complain("stopped; nothing is written");
            code = ExitCode.Interrupted;
            return false;
        }
        foreach (var field in starter.Fields)
        {
            if (field.Usual is { } usual && !answers.Has(field.Name) && field.Applies(answers))
            {
                answers.Put(field.Name, [usual]);
            }
        }
        return true;
    }

    private int Write(StartTarget target, StartAnswers answers, Shelf shelf, FolderMaterials files)
    {
        var made = starter.Make(answers, shelf, name => UserFile.Read(name, surroundings));
        int code = Problems.Tell(made.Problems, surroundings);
        if (code != ExitCode.Done)
        {
            return code;
        }
        var tried = made
            .Texts.Select(text => (text, problems: ProblemsOf(target.Path, text, files)))
            .ToList();
        var (chosen, problems) = tried.Find(t => Problems.CodeOf(t.problems) == ExitCode.Done);
        if (chosen is null)
        {
            // The file does not exist, so a place in it would lead nowhere.
            foreach (var problem in tried[^1].problems.Where(p => p.Severity == Severity.Error))
            {
                surroundings.Complain($"{target.Path}: not written: {problem.Text}");
            }
            if (tried.Count > 1)
            {
                surroundings.Complain(starter.WhatWasTried);
            }
            return ExitCode.Content;
        }
        if (target.MakeFolder(surroundings) is { } noFolder)
        {
            return Problems.Tell([noFolder], surroundings);
        }
        if (AtomicFile.Write(target.Path, chosen, surroundings, IfThere.Keep) is { } unwritten)
        {
            return Problems.Tell(
                [unwritten.Text == FileTexts.IsThere ? target.NotOver : unwritten],
                surroundings
            );
        }
        Problems.Tell(problems, surroundings);
        Print(target, chosen);
        return ExitCode.Done;
    }

    private void Print(StartTarget target, string text)
    {
        var sheet = surroundings.Sheet();
        sheet.Row("Written", target.Path);
        if (starter.Kind is null)
        {
            sheet.Row("Next", $"glowmix predict {target.Path}");
            sheet.Row("", "and change it in an editor; each line says what it is for");
            sheet.Row("Caution", Cautions.InFull);
            return;
        }
        string[] sources = [.. text.Split('\n').Where(l => l.Contains("source: ", StringComparison.Ordinal))];
        int assumed = sources.Count(l => l.Contains("assumed", StringComparison.Ordinal));
        sheet.Row(
            "Assumed",
            $"{assumed} of {sources.Length} {(sources.Length == 1 ? "value" : "values")}, in whole or in part; each says so"
        );
        sheet.Row(
            "In recipes",
            target.IsShelved
                ? $"'{target.Name}', in recipes that lie beside the folder materials"
                : $"its path, from the recipe's folder, such as './{Path.GetFileName(target.Path)}'"
        );
        sheet.Row(
            "Look at it",
            target.IsShelved ? $"glowmix materials {target.Name}" : $"glowmix check {target.Path}"
        );
        if (text.Contains("hours of glow", StringComparison.Ordinal))
        {
            sheet.Row(
                "Hours",
                "kept as a comment and not used: without limit and charge, hours of two labels do not compare"
            );
        }
        sheet.Row("Caution", Cautions.InFull);
        foreach (
            string caution in Document.Read(text, target.Path).Root?["cautions"] is ListNode list
                ? list.Items.OfType<ScalarNode>().Select(s => s.Value)
                : []
        )
        {
            sheet.Row("", caution);
        }
    }

    private IReadOnlyList<Problem> ProblemsOf(string path, string text, FolderMaterials files)
    {
        var file = new FileText(path, text, null);
        return starter.Kind is null
            ? runner.Check(file, files)
            : MaterialCheck.ProblemsOf(file, Document.Read(file), surroundings, runner);
    }

    private int Misunderstood(string problem)
    {
        surroundings.Complain(problem);
        if (!surroundings.InputIsTerminal && problem.StartsWith("needed", StringComparison.Ordinal))
        {
            surroundings.Complain("(questions are asked at a terminal only)");
        }
        surroundings.Complain($"Try 'glowmix new {starter.Word} --help'.");
        return ExitCode.Usage;
    }
}
