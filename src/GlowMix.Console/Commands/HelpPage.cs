using System.CommandLine;
using System.CommandLine.Invocation;
using GlowMix.Console.Texts;

namespace GlowMix.Console.Commands;

/// <summary>The help of a command, from its own descriptions, with the exit codes.</summary>
internal sealed class HelpPage(Surroundings surroundings) : SynchronousCommandLineAction
{
    private const int NameColumns = 18;

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        var command = parseResult.CommandResult.Command;
        bool isRoot = command == parseResult.RootCommandResult.Command;
        var sheet = surroundings.Sheet();
        sheet.Heading(Usage(command, isRoot));
        sheet.Paragraph(command.Description ?? "");
        sheet.Blank();
        foreach (var child in command.Subcommands.Where(c => !c.Hidden))
        {
            Entry(sheet, child.Name, child.Description);
        }
        foreach (var argument in command.Arguments)
        {
            Entry(sheet, NameOf(argument), argument.Description);
        }
        foreach (var option in command.Options)
        {
            Entry(sheet, NameOf(option), option.Description);
        }
        foreach (var option in isRoot ? [] : parseResult.RootCommandResult.Command.Options)
        {
            if (option.Recursive)
            {
                Entry(sheet, NameOf(option), option.Description);
            }
        }
        sheet.Blank();
        sheet.Paragraph("Exit codes; with several files the highest:");
        foreach (var (code, meaning) in ExitCode.Meanings)
        {
            Entry(sheet, code.ToString(System.Globalization.CultureInfo.InvariantCulture), meaning);
        }
        return ExitCode.Done;
    }

    /// <summary>The words of a command: 'glowmix new pigment'.</summary>
    public static string PathOf(Command command)
    {
        foreach (var parent in command.Parents)
        {
            if (parent is Command above)
            {
                return $"{PathOf(above)} {command.Name}";
            }
        }
        return command.Name;
    }

    private static string Usage(Command command, bool isRoot)
    {
        if (isRoot)
        {
            return "glowmix COMMAND …";
        }
        string usage = PathOf(command);
        if (command.Subcommands.Any(c => !c.Hidden))
        {
            return usage + " KIND …";
        }
        foreach (var argument in command.Arguments)
        {
            usage +=
                argument.Arity.MinimumNumberOfValues == 0 && argument.Arity.MaximumNumberOfValues == 1
                    ? $" [{argument.Name}]"
                    : $" {NameOf(argument)}";
        }
        return command.Options.Count > 0 ? usage + " [options]" : usage;
    }

    private static string NameOf(Argument argument) =>
        argument.HelpName ?? (argument.Arity.MaximumNumberOfValues > 1 ? argument.Name + "…" : argument.Name);

    private static string NameOf(Option option)
    {
        string name = option.Name;
        foreach (string alias in option.Aliases)
        {
            name += $", {alias}";
        }
        return option.HelpName is { } value ? $"{name} {value}" : name;
    }

    private static void Entry(Sheet sheet, string name, string? description) =>
        sheet.Paragraph(
            name.Length > NameColumns - 3
                ? $"{name}  {description}"
                : $"{name.PadRight(NameColumns - 2)}{description}",
            indent: 2,
            hanging: NameColumns - 2
        );
}
