using System.CommandLine;
using GlowMix.Documents;

namespace GlowMix.Console.Commands;

/// <summary>A command that takes files and has options of its own: what all such commands do alike.</summary>
internal abstract class FileCommand
{
    private readonly Argument<string[]> files;

    /// <param name="name">What it is called on the command line.</param>
    /// <param name="description">What it does, for its help.</param>
    /// <param name="filesAre">What its files are, likewise.</param>
    /// <param name="args">The whole command line.</param>
    /// <param name="surroundings">The world outside.</param>
    /// <param name="runner">Who calls the model.</param>
    protected FileCommand(
        string name,
        string description,
        string filesAre,
        IReadOnlyList<string> args,
        Surroundings surroundings,
        IRecipeRunner runner
    )
    {
        (Surroundings, Runner) = (surroundings, runner);
        Command = new(name, description);
        files = FileArguments.Create(Command, args, filesAre);
        Command.Add(files);
        Command.SetAction(Run);
    }

    /// <summary>The command with its options.</summary>
    public Command Command { get; }

    /// <summary>The world outside.</summary>
    protected Surroundings Surroundings { get; }

    /// <summary>Who calls the model.</summary>
    protected IRecipeRunner Runner { get; }

    /// <summary>Does it.</summary>
    /// <returns>An <see cref="ExitCode"/>.</returns>
    protected abstract int Run(ParseResult parsed);

    /// <summary>Takes options, in the order of the help.</summary>
    protected void Add(params IEnumerable<Option> options)
    {
        foreach (var option in options)
        {
            Command.Add(option);
        }
    }

    /// <summary>The files that the user named.</summary>
    protected string[] FilesOf(ParseResult parsed) => parsed.GetValue(files) ?? [];

    /// <summary>The text of the one recipe that the command takes; null when the user has been told why there is none.</summary>
    protected FileText? RecipeOf(ParseResult parsed, out int code) =>
        OneRecipe.Read(FilesOf(parsed), Command.Name, Surroundings, out code);

    /// <summary>Whether a shell's pattern handed over what stands beside recipes by right; the user is then told that it is skipped.</summary>
    protected bool IsNoRecipe(FileText text)
    {
        if (FileKind.BesideRecipes(text.Text) is not { } kind)
        {
            return false;
        }
        Surroundings.Complain($"{text.Name}: {kind}, no recipe; skipped");
        return true;
    }

    /// <summary>Tells that the command line cannot be understood, and where its help is.</summary>
    protected int Misunderstood(string problem)
    {
        Surroundings.Complain(problem);
        Surroundings.Complain($"Try 'glowmix {Command.Name} --help'.");
        return ExitCode.Usage;
    }
}
