using System.CommandLine;
using GlowMix.Console.Files;
using GlowMix.Console.Texts;
using GlowMix.Documents;
using GlowMix.Documents.Shapes;
using GlowMix.Documents.Tidying;
using GlowMix.Materials.Shapes;
using GlowMix.Readings.Sets;
using GlowMix.Recipes;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix tidy FILE…`: canonical order, spacing and number style; comments stay with their lines.</summary>
internal sealed class TidyCommand
{
    private const int AtOnce = 8;

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
        // Most of the time goes into waiting for the disk: several files wait together.
        string[] each = [.. names.Distinct(StringComparer.Ordinal)];
        var outcomes = new Outcome[each.Length];
        Parallel.For(
            0,
            each.Length,
            new ParallelOptions { MaxDegreeOfParallelism = AtOnce, CancellationToken = surroundings.Stop },
            i => outcomes[i] = Tidy(each[i], isTold)
        );
        return Tell(outcomes);
    }

    private int Tell(Outcome[] outcomes)
    {
        int code = ExitCode.Done;
        int tidy = 0;
        foreach (var outcome in outcomes)
        {
            code = Math.Max(code, Problems.Tell(outcome.Problems, surroundings));
            code = Math.Max(code, outcome.Code);
            if (outcome.Remark is { } remark)
            {
                surroundings.Complain(remark);
            }
            if (outcome.Line is { } line)
            {
                surroundings.Sheet().Line(line);
            }
            tidy += outcome.IsTidy ? 1 : 0;
        }
        if (tidy > 0)
        {
            surroundings.Sheet().Line(tidy == 1 ? "1 file is tidy" : $"{tidy} files are tidy");
        }
        return code;
    }

    private Outcome Tidy(string name, bool isTold)
    {
        var file = UserFile.Read(name, surroundings);
        if (FileKind.FirstKey(file.Text) is FileKind.Figures or FileKind.Calibration)
        {
            return new()
            {
                Remark = $"{name}: {FileKind.BesideRecipes(file.Text)}, written by the program; skipped",
            };
        }
        var document = Document.Read(file);
        if (document.Root is not { } root)
        {
            return new() { Problems = document.Problems };
        }
        if (ShapeOf(root) is not { } shape)
        {
            var first = root.Entries.Length > 0 ? root.Entries[0].Key : null;
            return new() { Problems = [new(name, first?.Place, FileKind.Unknown(first?.Value))] };
        }
        if (TidyText.Of(document, shape) is not { } text)
        {
            return new()
            {
                Problems = [new(name, null, "kept as it is, for it cannot be tidied without a loss")],
            };
        }
        if (text == document.Text)
        {
            return new() { IsTidy = true };
        }
        if (isTold)
        {
            return new() { Line = $"{name}: not tidy", Code = ExitCode.Content };
        }
        return AtomicFile.Write(name, text, surroundings, asRead: file.Text) is { } problem
            ? new() { Problems = [problem] }
            : new() { Line = $"{name}: tidied" };
    }

    private static MappingShape? ShapeOf(MappingNode root) =>
        root.Find(FileKind.Recipe) is not null ? RecipeShape.Whole
        : root.Find(FileKind.Readings) is not null ? ReadingsSetShape.Whole
        : root.Find(FileKind.Material) is null ? null
        : root["kind"] is ScalarNode { Value: var word } && KindWords.Find(word) is { } kind
            ? MaterialShapes.Of(kind)
        : AnyKeys;

    /// <summary>What became of one file, to be told in the order of the files.</summary>
    private sealed record Outcome
    {
        public int Code { get; init; } = ExitCode.Done;

        public IReadOnlyList<Problem> Problems { get; init; } = [];

        public string? Remark { get; init; }

        public string? Line { get; init; }

        public bool IsTidy { get; init; }
    }
}
