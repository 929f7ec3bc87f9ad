using System.CommandLine;
using System.Runtime.CompilerServices;
using GlowMix.Console.Tune;
using GlowMix.Documents;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix tune FILE`: the text UI.</summary>
internal sealed class TuneCommand : FileCommand
{
    private readonly Option<bool> ascii = new("--ascii") { Description = "letters of ASCII only" };
    private readonly Option<bool> plain = new("--plain")
    {
        Description =
            "no screen: one command a line, answered in lines; for screen readers, works through a pipe, too",
    };

    public TuneCommand(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner runner)
        : base(
            "tune",
            "Turn the recipe's numbers and see the piece change, lit and dark, on a terminal of 80 by 24 or more.",
            "a recipe file (YAML)",
            args,
            surroundings,
            runner
        )
    {
        Add(plain, ascii);
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        string[] names = FilesOf(parsed);
        bool inLines = parsed.GetValue(plain);
        if (
            names.Length == 1
            && !inLines
            && !(Surroundings.InputIsTerminal && Surroundings.TerminalColumns is not null)
        )
        {
            string file = names[0];
            Surroundings.Complain("tune needs a terminal, to read keys from and to draw on");
            Surroundings.Complain(
                $"Without one: 'glowmix predict {file}' tells the figures, 'glowmix sweep {file}' those along a number, "
                    + $"'glowmix tune --plain {file}' reads commands line by line."
            );
            return ExitCode.Usage;
        }
        if (RecipeOf(parsed, out int code) is not { } text)
        {
            return code;
        }
        return inLines
            ? PlainRun.On(text, Surroundings, Runner, parsed.GetValue(ascii))
            : OnTerminal(text, parsed.GetValue(ascii) || Surroundings.AsciiOnly);
    }

    // A method of its own: the toolkit is loaded when it is called, and by no other command.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private int OnTerminal(FileText text, bool inAscii) =>
        TuneRun.On(text, Surroundings, Runner, inAscii, Surroundings.Emphasis);
}
