using System.CommandLine;
using System.CommandLine.Invocation;
using GlowMix.Console.Commands;
using GlowMix.Documents;

namespace GlowMix.Console;

/// <summary>The program without the process around it.</summary>
internal static class Cli
{
    /// <summary>Runs a command line.</summary>
    /// <returns>An <see cref="ExitCode"/>.</returns>
    public static int Run(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner? runner = null)
    {
        try
        {
            int code = Invoke(
                args is ["help"] ? ["--help"] : args,
                surroundings,
                runner ?? new RecipeRunner()
            );
            surroundings.Out.Flush();
            return code;
        }
        catch (OperationCanceledException)
        {
            return ExitCode.Interrupted;
        }
        // Every file of a command is read and written under its own guard: what is left is the output itself.
        // A stream that was closed before the program began is refused like a file without permission.
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Last(surroundings, $"the output cannot be written: {e.Message}", ExitCode.FileAccess);
        }
        catch (OutOfMemoryException)
        {
            return Last(surroundings, "there is not enough memory for this", ExitCode.Content);
        }
#pragma warning disable CA1031 // The last guard: a fault of the program is told in one line, never as a trace.
        catch (Exception e)
#pragma warning restore CA1031
        {
            return Last(
                surroundings,
                $"an error in the program: {e.GetType().Name}: {e.Message.TrimEnd('.', ' ')}. Please report it together with the files it read.",
                ExitCode.Content
            );
        }
    }

    private static int Invoke(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner runner)
    {
        var root = Root(args, surroundings, runner);
        // Response files ('@file') are off: a recipe may be called so.
        var parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Errors.Count > 0 && parsed.Action is ParseErrorAction)
        {
            return Misunderstood(args, parsed, root, surroundings);
        }
        return parsed.Invoke(
            new InvocationConfiguration
            {
                Output = surroundings.Out,
                Error = surroundings.Error,
                EnableDefaultExceptionHandler = false,
                // Signals are the process's affair, not the command line's.
                ProcessTerminationTimeout = null,
            }
        );
    }

    private static Command Root(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner runner)
    {
        // Not the library's root command, help and version: they bring texts in many languages, read at each start.
        var root = new Command(
            "glowmix",
            "Potted LED boards with and without afterglow: predicted before the pour."
        );
        root.Options.Add(
            new Option<bool>("--help", "-h")
            {
                Description = "this help; behind a command, that of the command",
                Arity = ArgumentArity.Zero,
                Action = new HelpPage(surroundings),
                Recursive = true,
            }
        );
        root.Options.Add(
            new Option<bool>("--version")
            {
                Description = "the version",
                Arity = ArgumentArity.Zero,
                Action = new VersionLine(surroundings),
            }
        );
        root.SetAction(_ => StartPage.Print(surroundings));
        // Only the command that is asked for is made: all of them together would cost more than some do their work in.
        (string Name, Func<Command> Create)[] commands =
        [
            ("predict", () => new PredictCommand(args, surroundings, runner).Command),
            ("compare", () => new CompareCommand(args, surroundings, runner).Command),
            ("sweep", () => new SweepCommand(args, surroundings, runner).Command),
            ("batch", () => new BatchCommand(args, surroundings, runner).Command),
            ("markings", () => new MarkingsCommand(args, surroundings, runner).Command),
            ("balance", () => new BalanceCommand(args, surroundings, runner).Command),
            ("report", () => new ReportCommand(args, surroundings, runner).Command),
            ("reading", () => new ReadingCommand(args, surroundings, runner).Command),
            ("fit", () => new FitCommand(args, surroundings, runner).Command),
            ("check", () => CheckCommand.Create(args, surroundings, runner)),
            ("tidy", () => TidyCommand.Create(args, surroundings)),
            ("tune", () => new TuneCommand(args, surroundings, runner).Command),
            ("materials", () => MaterialsCommand.Create(surroundings, runner)),
            ("new", () => NewCommand.Create(args, surroundings, runner)),
        ];
        bool isOne = args.Count > 0 && Array.Exists(commands, c => c.Name == args[0]);
        foreach (var (name, create) in commands)
        {
            if (!isOne || name == args[0])
            {
                root.Add(create());
            }
        }
        if (!isOne)
        {
            root.Add(HelpCommand.Create(root, surroundings));
            root.Add(CompletionCommand.Create(root, surroundings));
        }
        return root;
    }

    private static int Misunderstood(
        IReadOnlyList<string> args,
        ParseResult parsed,
        Command root,
        Surroundings surroundings
    )
    {
        var command = parsed.CommandResult.Command;
        if (command == root)
        {
            surroundings.Complain(UnknownWord(args, root, surroundings));
            surroundings.Complain("Try 'glowmix --help'.");
            return ExitCode.Usage;
        }
        if (command.Subcommands.Count > 0 && parsed.UnmatchedTokens.Count > 0)
        {
            string word = parsed.UnmatchedTokens[0];
            surroundings.Complain(
                $"{command.Name} knows no {ProblemTexts.Quote(word)}{ProblemTexts.DidYouMean(word, command.Subcommands.Select(c => c.Name))}"
            );
            surroundings.Complain($"Try '{HelpPage.PathOf(command)} --help'.");
            return ExitCode.Usage;
        }
        var told = new HashSet<string>();
        foreach (var error in parsed.Errors)
        {
            if (told.Add(error.Message))
            {
                surroundings.Complain(error.Message.TrimEnd('.'));
            }
        }
        surroundings.Complain($"Try '{HelpPage.PathOf(command)} --help'.");
        return ExitCode.Usage;
    }

    private static string UnknownWord(IReadOnlyList<string> args, Command root, Surroundings surroundings)
    {
        string word = args.Count > 0 ? args[0] : "";
        if (word.StartsWith('-'))
        {
            return FileArguments.UnknownOption(word, root);
        }
        if (word.EndsWith(".yaml", StringComparison.Ordinal) || File.Exists(surroundings.FullPath(word)))
        {
            return $"{ProblemTexts.Quote(word)} is no command; did you mean 'glowmix predict {word}'?";
        }
        var known = new List<string>();
        foreach (var command in root.Subcommands)
        {
            known.Add(command.Name);
        }
        return $"unknown command {ProblemTexts.Quote(word)}{ProblemTexts.DidYouMean(word, known)}";
    }

    private static int Last(Surroundings surroundings, string line, int code)
    {
        try
        {
            surroundings.Error.WriteLine(Texts.Letters.OneLine(line, surroundings.AsciiOnly));
            surroundings.Error.Flush();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Nobody is left to tell.
        }
        return code;
    }
}
