using System.CommandLine;
using GlowMix.Documents;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix completion SHELL`: the script that lets a shell complete commands, options, recipe files and shelf names.</summary>
internal static class CompletionCommand
{
    /// <summary>Word behind the command by which the scripts ask what could follow.</summary>
    public const string Words = "words";

    /// <summary>The command.</summary>
    /// <param name="root">The whole program: what is completed.</param>
    /// <param name="surroundings">The world outside.</param>
    public static Command Create(Command root, Surroundings surroundings)
    {
        var command = new Command(
            "completion",
            $"A script for your shell that completes commands, options, recipe files and names of the shelf: {string.Join(", ", CompletionScripts.Shells)}."
        );
        var shell = new Argument<string?>("SHELL")
        {
            Description = string.Join(", ", CompletionScripts.Shells),
            Arity = ArgumentArity.ZeroOrOne,
        };
        command.Add(shell);
        command.SetAction(parsed => Print(parsed.GetValue(shell), surroundings));

        var words = new Command(Words, "What could follow the words typed so far.") { Hidden = true };
        var typed = new Argument<string[]>("WORD") { Arity = ArgumentArity.ZeroOrMore };
        words.Add(typed);
        words.SetAction(parsed =>
        {
            foreach (
                string word in new CompletionWords(root, surroundings).After(parsed.GetValue(typed) ?? [])
            )
            {
                surroundings.Out.Write(Texts.Letters.OneLine(word, ascii: false) + "\n");
            }
            return ExitCode.Done;
        });
        command.Add(words);
        return command;
    }

    private static int Print(string? shell, Surroundings surroundings)
    {
        if (shell is not null && CompletionScripts.Of(shell) is { } script)
        {
            surroundings.Out.Write(script);
            return ExitCode.Done;
        }
        surroundings.Complain(
            shell is null
                ? $"completion needs a shell: {string.Join(", ", CompletionScripts.Shells)}"
                : $"no script for {ProblemTexts.Quote(shell)}; there are {string.Join(", ", CompletionScripts.Shells)}{ProblemTexts.DidYouMean(shell, CompletionScripts.Shells)}"
        );
        surroundings.Complain("Try 'glowmix completion --help'.");
        return ExitCode.Usage;
    }
}
