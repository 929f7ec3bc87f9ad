using System.CommandLine;
using System.Runtime.CompilerServices;
using GlowMix.Console.Tune;
using GlowMix.Documents;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix tune FILE`: the text UI.</summary>
internal sealed class TuneCommand
{
    private const string Name = "tune";

    private readonly Option<bool> ascii = new("--ascii") { Description = "letters of ASCII only" };
    private readonly Option<bool> plain = new("--plain")
    {
        Description =
            "no screen: one command a line, answered in lines; for screen readers, works through a pipe, too",
    };
    private readonly Argument<string[]> files;
    private readonly Surroundings surroundings;
    private readonly IRecipeRunner runner;

    private TuneCommand(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner runner)
    {
        (this.surroundings, this.runner) = (surroundings, runner);
        Command = new(
            Name,
            "Turn the recipe's numbers and see the piece change, lit and dark, on a terminal of 80 by 24 or more."
        );
        files = FileArguments.Create(Command, args, "a recipe file (YAML)");
        Command.Add(files);
        Command.Add(plain);
        Command.Add(ascii);
        Command.SetAction(Run);
    }

    private Command Command { get; }

    /// <summary>The command with its options.</summary>
    public static Command Create(
        IReadOnlyList<string> args,
        Surroundings surroundings,
        IRecipeRunner runner
    ) => new TuneCommand(args, surroundings, runner).Command;

    private int Run(ParseResult parsed)
    {
        string[] names = parsed.GetValue(files) ?? [];
        bool inLines = parsed.GetValue(plain);
        if (
            names.Length == 1
            && !inLines
            && !(surroundings.InputIsTerminal && surroundings.TerminalColumns is not null)
        )
        {
            string file = names[0];
            surroundings.Complain("tune needs a terminal, to read keys from and to draw on");
            surroundings.Complain(
                $"Without one: 'glowmix predict {file}' tells the figures, 'glowmix sweep {file}' those along a number, "
                    + $"'glowmix tune --plain {file}' reads commands line by line."
            );
            return ExitCode.Usage;
        }
        if (OneRecipe.Read(names, Name, surroundings, out int code) is not { } text)
        {
            return code;
        }
        return inLines
            ? PlainRun.On(text, surroundings, runner, parsed.GetValue(ascii))
            : OnTerminal(text, parsed.GetValue(ascii) || surroundings.AsciiOnly);
    }

    // A method of its own: the toolkit is loaded when it is called, and by no other command.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private int OnTerminal(FileText text, bool inAscii) =>
        TuneRun.On(text, surroundings, runner, inAscii, surroundings.Emphasis);
}
