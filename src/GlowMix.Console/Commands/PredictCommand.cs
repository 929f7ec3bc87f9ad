using System.CommandLine;
using GlowMix.Console.Files;
using GlowMix.Console.Plots;
using GlowMix.Console.Tables;
using GlowMix.Console.Texts;
using GlowMix.Documents;
using GlowMix.Predictions;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix predict FILE…`: what a recipe becomes.</summary>
internal sealed class PredictCommand : FileCommand
{
    private readonly Option<bool> full = new("--full")
    {
        Description = "also the shift by cause, every assumption and every figure with its band",
    };
    private readonly Option<bool> plot = new("--plot")
    {
        Description = "also the spectrum and the decay, drawn in the terminal",
    };
    private readonly Option<bool> ascii = new("--ascii") { Description = "letters of ASCII only, plots too" };
    private readonly Option<bool> json = new("--json")
    {
        Description = "the figures for programs, nothing else; several files make an array",
    };
    private readonly Option<string> csv = new("--csv")
    {
        HelpName = "DIR",
        Description = "also tables in this folder: spectra.csv, decay.csv, figures.csv",
    };
    private readonly Option<bool> write = new("--write")
    {
        Description =
            "also keep the figures beside the recipe, in NAME.figures.yaml, to be compared in a review",
    };
    private readonly Option<bool> quick = QuickSwitch.Create();
    private readonly Option<bool> causes = new("--causes")
    {
        Description = "what to measure first instead: each cause's share in the doubt of white and glow",
    };
    private readonly Option<bool> targets = new("--targets")
    {
        Description = "end with exit code 4 if a target of a recipe is missed",
    };
    private readonly Option<bool> watch = new("--watch")
    {
        Description = "again at each save of the recipe or of a material of yours; Ctrl-C ends it",
    };

    public PredictCommand(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner runner)
        : base(
            "predict",
            "What a recipe becomes: its white while lit, its glow in the dark, its masses.",
            "recipe files (YAML)",
            args,
            surroundings,
            runner
        )
    {
        Add([full, plot, csv, write, json, targets, quick, causes, watch, ascii]);
        FileArguments.NeedsName(csv, "a folder");
        Command.Validators.Add(result =>
        {
            if (result.GetValue(json) && (result.GetValue(full) || result.GetValue(plot)))
            {
                result.AddError("--json prints every figure and nothing else; leave out --full and --plot");
            }
            if (
                result.GetValue(causes)
                && ((ReadOnlySpan<Option<bool>>)[full, plot, write, targets, quick, watch])
                    .ToArray()
                    .Any(o => result.GetValue(o))
            )
            {
                result.AddError("--causes prints causes and nothing else; beside it only --json and --ascii");
            }
            if (result.GetValue(watch) && (result.GetValue(json) || result.GetValue(targets)))
            {
                result.AddError(
                    "--watch is for people and has no end of its own; leave out --json and --targets"
                );
            }
        });
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        string[] names = FilesOf(parsed);
        if (names.Length == 0)
        {
            return NoFile();
        }
        if (parsed.GetValue(causes))
        {
            return new CauseRun(Surroundings, Runner).Run(
                names,
                parsed.GetValue(json),
                parsed.GetValue(ascii)
            );
        }
        string? folder = parsed.GetValue(csv);
        if (folder is not null && TwoOfOneName(names) is { } name)
        {
            Surroundings.Complain(
                $"two recipes are called {ProblemTexts.Quote(name)}, and the tables of one would replace those of the other; predict them one by one"
            );
            return ExitCode.Content;
        }
        return parsed.GetValue(watch)
            ? new WatchLoop(Surroundings, Runner).Run(names, () => Once(names, folder, parsed))
            : Once(names, folder, parsed);
    }

    private int Once(string[] names, string? folder, ParseResult parsed)
    {
        int code = ExitCode.Done;
        int skipped = 0;
        var predictions = new List<Prediction>();
        foreach (string file in names)
        {
            Surroundings.Stop.ThrowIfCancellationRequested();
            var text = UserFile.Read(file, Surroundings);
            if (IsNoRecipe(text))
            {
                skipped++;
                continue;
            }
            var prediction = Predict(text, parsed.GetValue(quick), ref code);
            if (prediction is null)
            {
                continue;
            }
            string prefix = names.Length == 1 ? "" : Path.GetFileNameWithoutExtension(file) + ".";
            bool isWritten = folder is null || WriteTables(folder, prefix, prediction, ref code);
            if (!parsed.GetValue(json))
            {
                Print(prediction, parsed, isFirst: predictions.Count == 0);
                if (folder is not null && isWritten)
                {
                    Surroundings
                        .Sheet(parsed.GetValue(ascii))
                        .Row("Tables", TableNames(folder, prefix, prediction));
                }
            }
            if (parsed.GetValue(write))
            {
                code = Math.Max(code, Keep(text, prediction, parsed));
            }
            Surroundings.Out.Flush();
            predictions.Add(prediction);
        }
        if (parsed.GetValue(json) && (names.Length > 1 || predictions.Count == 1))
        {
            Surroundings.Out.Write(
                names.Length > 1 ? PredictionJson.Array(predictions) : PredictionJson.Object(predictions[0])
            );
        }
        if (skipped == names.Length)
        {
            Surroundings.Complain("no recipe is among these files");
            code = ExitCode.Content;
        }
        bool isMissed = predictions.Exists(p => p.Targets.Any(t => t.State == TargetState.Missed));
        return code == ExitCode.Done && isMissed && parsed.GetValue(targets) ? ExitCode.TargetMissed : code;
    }

    private int NoFile()
    {
        var nearby = RecipesNearby.Find(Surroundings);
        Surroundings.Complain(
            nearby.Count == 0
                ? "predict needs a recipe file; there is none in this folder or in its folder 'recipes'"
                : "predict needs a recipe file; there are here:"
        );
        foreach (string recipe in nearby)
        {
            Surroundings.Complain("  " + recipe);
        }
        Surroundings.Complain("Try 'glowmix predict --help'.");
        return ExitCode.Usage;
    }

    private int Keep(FileText text, Prediction prediction, ParseResult parsed)
    {
        var figures = new FiguresFile(text.Name, Surroundings, Runner);
        if (figures.Write(text, prediction, out bool isNew) is { } problem)
        {
            return Problems.Tell([problem], Surroundings);
        }
        if (!parsed.GetValue(json))
        {
            Surroundings
                .Sheet(parsed.GetValue(ascii))
                .Row("Figures", isNew ? figures.Name : $"{figures.Name}, as they were");
        }
        return ExitCode.Done;
    }

    private Prediction? Predict(FileText text, bool isQuick, ref int code)
    {
        RecipeOutcome outcome;
        using (var line = new LikelyLine(Surroundings))
        {
            outcome = text.Problem is { } unreadable
                ? new RecipeOutcome(null, [unreadable])
                : Runner.Predict(
                    text,
                    FolderMaterials.BesideFile(text.Name, Surroundings),
                    isQuick ? null : line,
                    Surroundings.Stop
                );
        }
        code = Math.Max(code, Problems.Tell(outcome.Problems, Surroundings));
        return outcome.Prediction;
    }

    private void Print(Prediction prediction, ParseResult parsed, bool isFirst)
    {
        bool plain = parsed.GetValue(ascii);
        var sheet = Surroundings.Sheet(plain);
        if (!isFirst)
        {
            sheet.Blank();
            sheet.Blank();
        }
        new PredictionSheet(prediction, sheet).Print(parsed.GetValue(full));
        if (parsed.GetValue(plot))
        {
            Draw(PredictionPlots.Spectrum(prediction.Spectra));
            if (prediction.Decay is { } decay)
            {
                Draw(PredictionPlots.Decay(decay, prediction.LimitMcdPerM2));
            }
        }

        void Draw(Plot? drawing)
        {
            sheet.Blank();
            if (drawing is null)
            {
                sheet.Paragraph("Dark: nothing to draw, it is never bright enough to be seen.");
                return;
            }
            foreach (string line in drawing.Draw(Surroundings.PlotColumns, sheet.Style.Ascii))
            {
                sheet.Line(line);
            }
        }
    }

    private bool WriteTables(string folder, string prefix, Prediction prediction, ref int code)
    {
        var tables = new List<(string, string)>();
        foreach (var (name, content) in PredictionCsv.Of(prediction))
        {
            tables.Add((prefix + name, content));
        }
        if (AtomicFile.WriteAll(folder, tables, Surroundings) is not { } problem)
        {
            return true;
        }
        code = Math.Max(code, Problems.Tell([problem], Surroundings));
        return false;
    }

    private static string TableNames(string folder, string prefix, Prediction prediction)
    {
        string text = "";
        foreach (var (name, _) in PredictionCsv.Of(prediction))
        {
            text += $"{(text.Length > 0 ? ", " : "")}{Path.Combine(folder, prefix + name)}";
        }
        return text;
    }

    private static string? TwoOfOneName(string[] files)
    {
        // Some systems do not tell capitals from small letters in file names.
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (string file in files)
        {
            string name = Path.GetFileNameWithoutExtension(file);
            if (!seen.Add(name))
            {
                return name;
            }
        }
        return null;
    }
}
