using System.CommandLine;
using GlowMix.Console.Texts;
using GlowMix.Documents;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix help TOPIC`: a page to read. For a command's name, the command's own.</summary>
internal static class HelpCommand
{
    /// <summary>The command.</summary>
    public static Command Create(Command root, Surroundings surroundings)
    {
        var command = new Command(
            "help",
            $"A page on {string.Join(", ", HelpTopics.Names)}; or the options of a command."
        );
        var topic = new Argument<string[]>("TOPIC")
        {
            Description = $"{string.Join(", ", HelpTopics.Names)}; or a command",
            Arity = ArgumentArity.ZeroOrMore,
            HelpName = "TOPIC",
        };
        command.Add(topic);
        command.SetAction(parsed =>
        {
            string[] words = parsed.GetValue(topic) ?? [];
            string word = words.FirstOrDefault("");
            if (HelpTopics.Print(word, surroundings.Sheet()))
            {
                return ExitCode.Done;
            }
            if (root.Subcommands.Any(c => c.Name == word))
            {
                return root.Parse([.. words, "--help"]).Invoke();
            }
            var known = HelpTopics.Names.Concat(root.Subcommands.Select(c => c.Name));
            surroundings.Complain(
                $"no page on {ProblemTexts.Quote(word)}; there are {string.Join(", ", HelpTopics.Names)}, and one for each command{ProblemTexts.DidYouMean(word, known)}"
            );
            surroundings.Complain("Try 'glowmix --help'.");
            return ExitCode.Usage;
        });
        return command;
    }
}
