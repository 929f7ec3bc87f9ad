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
internal sealed class ReportCommand : FileCommand
{
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
    private readonly Option<bool> quick = QuickSwitch.Create();

    public ReportCommand(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner runner)
        : base(
            "report",
            "One page to print or to send, with pictures; several recipes side by side.",
            "recipe files (YAML)",
            args,
            surroundings,
            runner
        )
    {
        Add(output, isShort, quick);
        FileArguments.NeedsName(output, "a page");
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        string[] names = FilesOf(parsed);
        if (names.Length == 0 || parsed.GetValue(output) is not { } page)
        {
            return Misunderstood(
                $"report needs {(names.Length == 0 ? "a recipe file" : "a page to write, such as -o page.html")}"
            );
        }
        // A slip must not write the page over a recipe.
        if (!endings.Any(ending => page.EndsWith(ending, StringComparison.OrdinalIgnoreCase)))
        {
            Surroundings.Complain(
                $"{output.Name} is {ProblemTexts.Quote(page)}; allowed: a name that ends with {endings[0]}"
            );
            return ExitCode.Content;
        }
        if (AtomicFile.Rehearse(page, Surroundings) is { } kept)
        {
            return Problems.Tell([kept], Surroundings);
        }
        int code = ExitCode.Done;
        var reports = new List<RecipeReport>();
        foreach (string name in names)
        {
            Surroundings.Stop.ThrowIfCancellationRequested();
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
        if (AtomicFile.Write(page, text, Surroundings) is { } problem)
        {
            return Problems.Tell([problem], Surroundings);
        }
        Surroundings.Sheet().Row("Page", page);
        return code;
    }

    private RecipeReport? ReportOf(string name, bool isQuick, ref int code)
    {
        var text = UserFile.Read(name, Surroundings);
        if (text.Problem is { } unreadable)
        {
            code = Math.Max(code, Problems.Tell([unreadable], Surroundings));
            return null;
        }
        if (IsNoRecipe(text))
        {
            return null;
        }
        var folder = FolderMaterials.BesideFile(name, Surroundings);
        var predictor = Runner.PredictorFor(folder);
        var document = RecipeDocument.Read(text);
        var (outcome, markings) = MarkedForecast.Of(
            document,
            predictor,
            isQuick ? 0 : Forecaster.UsualDraws,
            Surroundings.Stop
        );
        code = Math.Max(code, Problems.Tell(outcome.Problems, Surroundings));
        if (
            markings is null
            || outcome.Prediction is not { } prediction
            || predictor.Check(document).Piece is not { } piece
        )
        {
            return null;
        }
        code = Math.Max(code, Problems.Tell(markings.Problems, Surroundings));
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
