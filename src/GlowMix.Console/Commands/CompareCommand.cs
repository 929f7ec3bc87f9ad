using System.CommandLine;
using GlowMix.Choosing;
using GlowMix.Choosing.Compare;
using GlowMix.Console.Plots;
using GlowMix.Console.Revisions;
using GlowMix.Console.Tables;
using GlowMix.Console.Texts;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix compare A B…`, `compare FILE --change KEY=VALUE`, `compare FILE --since REV`: differences first.</summary>
internal sealed class CompareCommand : FileCommand
{
    private readonly Option<string[]> change = new("--change")
    {
        HelpName = "KEY=VALUE",
        Description =
            "one recipe against itself with this value instead, such as loading_percent=25; give it again for more",
    };
    private readonly Option<string> since = new("--since")
    {
        HelpName = "REV",
        Description =
            "one recipe as it is against what it was at a revision of git: a tag, a branch, a hash, HEAD~1",
    };
    private readonly Option<bool> quick = QuickSwitch.Create();
    private readonly Option<bool> plot = new("--plot")
    {
        Description = "also both spectra and both decays, drawn over each other",
    };
    private readonly Option<bool> json = new("--json")
    {
        Description = "for programs, nothing else; several pairs make an array",
    };
    private readonly Option<bool> markdown = new("--markdown") { Description = "as Markdown, for a review" };
    private readonly Option<bool> ascii = new("--ascii") { Description = "letters of ASCII only, plots too" };

    public CompareCommand(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner runner)
        : base(
            "compare",
            "Recipes side by side: whether the yardstick moved, targets, differences, figures with the band of their change, causes.",
            "recipe files (YAML); each is held against the first",
            args,
            surroundings,
            runner
        )
    {
        Add([change, since, quick, plot, json, markdown, ascii]);
        FileArguments.NeedsName(since, "a revision");
        Command.Validators.Add(result =>
        {
            if (result.GetValue(change) is { Length: > 0 } && result.GetValue(since) is not null)
            {
                result.AddError("--change and --since exclude each other");
            }
            if (result.GetValue(json) && (result.GetValue(markdown) || result.GetValue(plot)))
            {
                result.AddError(
                    "--json prints the comparison for programs and nothing else; leave out --markdown and --plot"
                );
            }
        });
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        string[] changes = parsed.GetValue(change) ?? [];
        string? revision = parsed.GetValue(since);
        bool takesOne = changes.Length > 0 || revision is not null;
        if (Recipes(FilesOf(parsed), takesOne, out int code) is not { } recipes)
        {
            return code;
        }
        if (takesOne)
        {
            return changes.Length > 0
                ? WithChanges(recipes[0], changes, parsed)
                : Since(recipes[0], revision!, parsed);
        }
        var first = SideOf(recipes[0]);
        return Compare(first, recipes[1..].ConvertAll(SideOf), null, parsed);
    }

    private int WithChanges(FileText text, string[] changes, ParseResult parsed)
    {
        var (recipe, predictor) = SideOf(text);
        var changed = recipe;
        foreach (string told in changes)
        {
            int sign = told.IndexOf('=', StringComparison.Ordinal);
            if (sign <= 0)
            {
                return Misunderstood(
                    $"--change: {ProblemTexts.Quote(told)} is not KEY=VALUE, such as loading_percent=25"
                );
            }
            if (changed.Recipe is null)
            {
                // The recipe itself, or the change before, is in error: told below.
                break;
            }
            if (!changed.TryResolve(told[..sign].Trim(), out string path, out string problem))
            {
                Surroundings.Complain($"--change: {problem}");
                return ExitCode.Content;
            }
            changed = changed.With(path, told[(sign + 1)..].Trim());
        }
        if (recipe.Recipe is not null)
        {
            changed = RecipeDocument.Read(changed.Text, $"{recipe.Name} with {string.Join(", ", changes)}");
        }
        return Compare((recipe, predictor), [(changed, predictor)], null, parsed);
    }

    private int Since(FileText text, string name, ParseResult parsed)
    {
        string folder = Path.GetDirectoryName(text.Name) ?? "";
        if (Revision.Find(folder, name, Surroundings, out var problem) is not { } revision)
        {
            Surroundings.Complain($"--since: {problem.Text}");
            return problem.Code;
        }
        if (revision.Read(Path.GetFileName(text.Name)) is not { } was)
        {
            if (parsed.GetValue(json))
            {
                Surroundings.Out.Write(ComparisonJson.OfNew(text.Name, revision.Name));
                return ExitCode.Done;
            }
            Surroundings.Sheet(parsed.GetValue(ascii)).Line($"{text.Name}: new since {revision.Name}");
            return ExitCode.Done;
        }
        var materials = new RevisionMaterials(revision);
        var then = new Predictor(new Shelf(materials), materials);
        return Compare(
            (RecipeDocument.Read(was with { Name = $"{text.Name} at {revision.Name}" }), then),
            [SideOf(text)],
            $"Before: recipe, own materials and calibration as of {revision.Name}, with today's program and shipped data.",
            parsed
        );
    }

    private int Compare(
        (RecipeDocument, Predictor) before,
        IReadOnlyList<(RecipeDocument, Predictor)> others,
        string? note,
        ParseResult parsed
    )
    {
        int code = ExitCode.Done;
        var told = new HashSet<Problem>();
        var comparisons = new List<Comparison>();
        var drawn = new DrawnComparer(before);
        foreach (var after in others)
        {
            Surroundings.Stop.ThrowIfCancellationRequested();
            var outcome = parsed.GetValue(quick) ? Comparer.Bounded(before, after) : Drawn(drawn, after);
            code = Math.Max(code, Problems.Tell([.. outcome.Problems.Where(told.Add)], Surroundings));
            if (outcome.Comparison is not { } comparison)
            {
                // Told for the first pair, a broken recipe is an error of every pair.
                code = Math.Max(code, Problems.CodeOf(outcome.Problems));
                continue;
            }
            if (!parsed.GetValue(json))
            {
                Print(comparison, note, parsed, isFirst: comparisons.Count == 0);
            }
            comparisons.Add(comparison);
        }
        if (parsed.GetValue(json) && comparisons.Count > 0)
        {
            Surroundings.Out.Write(ComparisonJson.Of(comparisons));
        }
        return code;
    }

    private ComparisonOutcome Drawn(DrawnComparer first, (RecipeDocument, Predictor) after)
    {
        using var progress = new ProgressLine(Surroundings, "draws of both");
        return first.With(
            after,
            done =>
            {
                if (done % 32 == 0)
                {
                    progress.Show(done, 2 * Forecaster.UsualDraws);
                }
            },
            Surroundings.Stop
        );
    }

    private void Print(Comparison comparison, string? note, ParseResult parsed, bool isFirst)
    {
        var sheet = Surroundings.Sheet(parsed.GetValue(ascii));
        var page = ComparisonPage.Of(comparison, note);
        if (!isFirst)
        {
            sheet.Blank();
        }
        bool isMarkdown = parsed.GetValue(markdown);
        if (isMarkdown)
        {
            Surroundings.Out.Write(PageMarkdown.Of(page, sheet.Style.Ascii));
        }
        else
        {
            new PageText(sheet).Print(page);
        }
        if (!parsed.GetValue(plot))
        {
            return;
        }
        Plot?[] plots = [ComparisonPlots.Spectrum(comparison), ComparisonPlots.Decay(comparison)];
        foreach (var drawing in plots.OfType<Plot>())
        {
            sheet.Blank();
            if (isMarkdown)
            {
                sheet.Line("```text");
            }
            foreach (string line in drawing.Draw(Surroundings.PlotColumns, sheet.Style.Ascii))
            {
                sheet.Line(line);
            }
            if (isMarkdown)
            {
                sheet.Line("```");
            }
        }
    }

    private (RecipeDocument Recipe, Predictor Predictor) SideOf(FileText text) =>
        (RecipeDocument.Read(text), Runner.PredictorFor(FolderMaterials.BesideFile(text.Name, Surroundings)));

    private List<FileText>? Recipes(string[] names, bool takesOne, out int code)
    {
        code = ExitCode.Done;
        var recipes = new List<FileText>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (string name in names)
        {
            var text = UserFile.Read(name, Surroundings);
            if (IsNoRecipe(text))
            {
                continue;
            }
            if (name.Length > 0 && !seen.Add(Surroundings.FullPath(name)))
            {
                Surroundings.Complain($"{name}: named twice; a recipe does not differ from itself");
                code = ExitCode.Content;
                return null;
            }
            if (text.Problem is { } unreadable)
            {
                code = Math.Max(code, Problems.Tell([unreadable], Surroundings));
            }
            recipes.Add(text);
        }
        if (code != ExitCode.Done)
        {
            return null;
        }
        if (takesOne ? recipes.Count == 1 : recipes.Count >= 2)
        {
            return recipes;
        }
        code = Misunderstood(
            (takesOne, recipes.Count) switch
            {
                (true, 0) => "compare needs a recipe file",
                (true, var count) => $"--change and --since take one recipe, not {count}",
                (false, 0) => "compare needs two recipe files, or one with --change or --since",
                _ =>
                    $"compare needs a second recipe to hold {recipes[0].Name} against, or --change or --since",
            }
        );
        return null;
    }
}
