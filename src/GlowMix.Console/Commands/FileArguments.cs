using System.CommandLine;
using GlowMix.Documents;

namespace GlowMix.Console.Commands;

/// <summary>The FILE… of a command, and the names of files behind its options.</summary>
internal static class FileArguments
{
    /// <summary>
    /// Any number of files. A word with a hyphen in front is an option that was misspelt, which the parser would take for
    /// a file; behind '--' it is a file.
    /// </summary>
    public static Argument<string[]> Create(Command command, IReadOnlyList<string> args, string description)
    {
        var files = new Argument<string[]>("FILE")
        {
            Description = description,
            Arity = ArgumentArity.ZeroOrMore,
            DefaultValueFactory = _ => [],
        };
        files.Validators.Add(result =>
        {
            int end = 0;
            while (end < args.Count && args[end] != "--")
            {
                end++;
            }
            foreach (var token in result.Tokens)
            {
                if (token.Value.Length > 1 && token.Value[0] == '-' && IndexOf(args, token.Value) < end)
                {
                    result.AddError(UnknownOption(token.Value, command));
                }
            }
        });
        return files;
    }

    /// <summary>Asks an option for a name: neither nothing nor what is rather the next option.</summary>
    /// <param name="option">The option.</param>
    /// <param name="what">What it names: 'a file'.</param>
    public static void NeedsName(Option<string> option, string what) =>
        option.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: "" or ['-', ..] }])
            {
                result.AddError($"{option.Name} needs the name of {what}");
            }
        });

    /// <summary>The option is not known, and which one is like it.</summary>
    public static string UnknownOption(string option, Command command)
    {
        string name = option.Split('=')[0];
        var known = new List<string>();
        foreach (var candidate in command.Options)
        {
            known.Add(candidate.Name);
        }
        return $"unknown option {ProblemTexts.Quote(name)}{ProblemTexts.DidYouMean(name, known)}";
    }

    private static int IndexOf(IReadOnlyList<string> args, string word)
    {
        for (int i = 0; i < args.Count; i++)
        {
            if (args[i] == word)
            {
                return i;
            }
        }
        return args.Count;
    }
}
