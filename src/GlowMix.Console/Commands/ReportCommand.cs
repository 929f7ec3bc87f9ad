using System.CommandLine;
using GlowMix.Casting;
using GlowMix.Choosing;
using GlowMix.Console.Files;
using GlowMix.Console.Reports;
using GlowMix.Documents;
using GlowMix.Markings;
using GlowMix.Materials;
using GlowMix.Recipes;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix report FILE… -o page.html`: one page to print or to send.</summary>
internal sealed class ReportCommand
{
    private const string Name = "report";

    private static readonly string[] endings = [".html", ".htm"];

    private readonly Option<string> output = new("--output", "-o")
    {
        HelpName = "PAGE",
        Description = "the page to write, NAME.html; one that is there is replaced",
    };
    private readonly Option<bool> isShort = new("--short")
    {
        Description =
            "for a building owner: the picture, three sentences, what was assumed, cautions; no recipe",
    };
    private readonly Option<bool> quick = new("--quick")
    {
        Description = "bands from a few bounding runs instead of 512 draws: at once, and cruder",
    };
    private readonly Argument<string[]> files;
    private readonly Surroundings surroundings;
    private readonly IRecipeRunner runner;

    private ReportCommand(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner runner)
    {
        (this.surroundings, this.runner) = (surroundings, runner);
        Command = new(Name, "One page to print or to send, with pictures; several recipes side by side.");
        files = FileArguments.Create(Command, args, "recipe files (YAML)");
        Command.Add(files);
        Command.Add(output);
        Command.Add(isShort);
        Command.Add(quick);
        FileArguments.NeedsName(output, "a page");
        Command.SetAction(Run);
    }

    private Command Command { get; }

    /// <summary>The command with its options.</summary>
    public static Command Create(
        IReadOnlyList<string> args,
        Surroundings surroundings,
        IRecipeRunner runner
    ) => new ReportCommand(args, surroundings, runner).Command;

    private int Run(ParseResult parsed)
    {
        string[] names = parsed.GetValue(files) ?? [];
        if (names.Length == 0 || parsed.GetValue(output) is not { } page)
        {
            return Missing(names.Length == 0 ? "a recipe file" : "a page to write, such as -o page.html");
        }
        // A slip must not write the page over a recipe.
        if (!endings.Any(ending => page.EndsWith(ending, StringComparison.OrdinalIgnoreCase)))
        {
            surroundings.Complain(
                $"{output.Name} is {ProblemTexts.Quote(page)}; allowed: a name that ends with {endings[0]}"
            );
            return ExitCode.Content;
        }
        if (AtomicFile.Rehearse(page, surroundings) is { } kept)
        {
            return Problems.Tell([kept], surroundings);
        }
        int code = ExitCode.Done;
        var reports = new List<RecipeReport>();
        foreach (string name in names)
        {
            surroundings.Stop.ThrowIfCancellationRequested();
            if (ReportOf(name, parsed.GetValue(quick), ref code) is { } report)
            {
                reports.Add(report);
            }
        }
        if (reports.Count == 0 || code != ExitCode.Done)
        {
            return Math.Max(code, ExitCode.Content);
        }
        string text = ReportPage.Of(reports, parsed.GetValue(isShort));
        if (AtomicFile.Write(page, text, surroundings) is { } problem)
        {
            return Problems.Tell([problem], surroundings);
        }
        surroundings.Sheet().Row("Page", page);
        return code;
    }

    private int Missing(string what)
    {
        surroundings.Complain($"{Name} needs {what}");
        surroundings.Complain($"Try 'glowmix {Name} --help'.");
        return ExitCode.Usage;
    }

    private RecipeReport? ReportOf(string name, bool isQuick, ref int code)
    {
        var text = UserFile.Read(name, surroundings);
        if (text.Problem is { } unreadable)
        {
            code = Math.Max(code, Problems.Tell([unreadable], surroundings));
            return null;
        }
        if (FileKind.BesideRecipes(text.Text) is { } kind)
        {
            surroundings.Complain($"{name}: {kind}, no recipe; skipped");
            return null;
        }
        var folder = FolderMaterials.BesideFile(name, surroundings);
        var outcome = runner.Predict(text, folder, isQuick ? null : new UnwatchedDraws(), surroundings.Stop);
        code = Math.Max(code, Problems.Tell(outcome.Problems, surroundings));
        var predictor = runner.PredictorFor(folder);
        var document = RecipeDocument.Read(text);
        if (outcome.Prediction is not { } prediction || predictor.Check(document).Piece is not { } piece)
        {
            return null;
        }
        var criteria = piece
            .Recipe.CriteriaNames.Select(criterion => predictor.Shelf.Criterion(criterion).Material)
            .OfType<Criterion>()
            .ToArray();
        var markings = MarkingGuide.Of(
            piece,
            predictor,
            criteria,
            isQuick ? 0 : Forecaster.UsualDraws,
            surroundings.Stop
        );
        code = Math.Max(code, Problems.Tell(markings.Problems, surroundings));
        return new(
            piece,
            prediction,
            BatchSheet.Of(piece, pieces: 1),
            markings,
            predictor.Shelf.Names(MaterialKind.Criterion),
            predictor.InputsOf(document)
        );
    }
}
