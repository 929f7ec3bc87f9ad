using System.CommandLine;
using GlowMix.Console.Files;
using GlowMix.Console.Texts;
using GlowMix.Documents;
using GlowMix.Documents.Shapes;
using GlowMix.Documents.Tidying;
using GlowMix.Materials;
using GlowMix.Recipes;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix tidy FILE…`: canonical order, spacing and number style; comments stay with their lines.</summary>
internal sealed class TidyCommand
{
    // Keys of no known order stay as they stand.
    private static readonly MappingShape AnyKeys = new([]);

    private readonly Option<bool> onlySay = new("--only-say")
    {
        Description = "write nothing; end with exit code 1 if a file is not tidy",
    };
    private readonly Argument<string[]> files;
    private readonly Surroundings surroundings;

    private TidyCommand(IReadOnlyList<string> args, Surroundings surroundings)
    {
        this.surroundings = surroundings;
        Command = new(
            "tidy",
            "Files in canonical order, spacing and number style, comments kept; what they mean stays the same."
        );
        files = FileArguments.Create(Command, args, "recipe, material or readings files (YAML)");
        Command.Add(files);
        Command.Add(onlySay);
        Command.SetAction(parsed => Run(parsed.GetValue(files) ?? [], parsed.GetValue(onlySay)));
    }

    private Command Command { get; }

    /// <summary>The command with its options.</summary>
    public static Command Create(IReadOnlyList<string> args, Surroundings surroundings) =>
        new TidyCommand(args, surroundings).Command;

    private int Run(string[] names, bool isTold)
    {
        if (names.Length == 0)
        {
            surroundings.Complain("tidy needs a file");
            surroundings.Complain("Try 'glowmix tidy --help'.");
            return ExitCode.Usage;
        }
        int code = ExitCode.Done;
        int tidy = 0;
        foreach (string name in names)
        {
            surroundings.Stop.ThrowIfCancellationRequested();
            code = Math.Max(code, Tidy(name, isTold, ref tidy));
        }
        if (tidy > 0)
        {
            surroundings.Sheet().Line(tidy == 1 ? "1 file is tidy" : $"{tidy} files are tidy");
        }
        return code;
    }

    private int Tidy(string name, bool isTold, ref int tidy)
    {
        var file = UserFile.Read(name, surroundings);
        if (FileKind.FirstKey(file.Text) is FileKind.Figures or FileKind.Calibration)
        {
            surroundings.Complain(
                $"{name}: {FileKind.BesideRecipes(file.Text)}, written by the program; skipped"
            );
            return ExitCode.Done;
        }
        var document = Document.Read(file);
        if (document.Root is not { } root)
        {
            return Problems.Tell(document.Problems, surroundings);
        }
        if (ShapeOf(root) is not { } shape)
        {
            var first = root.Entries.Length > 0 ? root.Entries[0].Key : null;
            return Problems.Tell([new(name, first?.Place, FileKind.Unknown(first?.Value))], surroundings);
        }
        if (TidyText.Of(document, shape) is not { } text)
        {
            surroundings.Complain($"{name}: kept as it is, for it cannot be tidied without a loss");
            return ExitCode.Content;
        }
        if (text == document.Text)
        {
            tidy++;
            return ExitCode.Done;
        }
        if (isTold)
        {
            surroundings.Sheet().Line($"{name}: not tidy");
            return ExitCode.Content;
        }
        if (AtomicFile.Write(name, text, surroundings, asRead: file.Text) is { } problem)
        {
            return Problems.Tell([problem], surroundings);
        }
        surroundings.Sheet().Line($"{name}: tidied");
        return ExitCode.Done;
    }

    private static MappingShape? ShapeOf(MappingNode root) =>
        root.Find(FileKind.Recipe) is not null ? RecipeShape.Whole
        : root.Find(FileKind.Readings) is not null ? AnyKeys
        : root.Find(FileKind.Material) is null ? null
        : root["kind"] is ScalarNode { Value: var word } && KindWords.Find(word) is { } kind
            ? MaterialShapes.Of(kind)
        : AnyKeys;
}
