using System.CommandLine;
using GlowMix.Choosing;
using GlowMix.Console.Files;
using GlowMix.Console.Tables;
using GlowMix.Console.Texts;
using GlowMix.Documents;
using GlowMix.Recipes;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix balance FILE`: which loading, depth, pigment … gives the wanted white and the wanted glow.</summary>
internal sealed class BalanceCommand : FileCommand
{
    private readonly Option<string[]> steps = new("--steps")
    {
        HelpName = "N",
        Description =
            "about how many steps each range is cut into at first; as many as take some seconds if not given",
    };
    private readonly Option<bool> json = new("--json")
    {
        Description = "all of it for programs, nothing else",
    };
    private readonly Option<string> saveAs = new("--save-as")
    {
        HelpName = "NEWFILE",
        Description = "also the recipe with the recommended choices, comments kept",
    };
    private readonly Option<bool> replace = new("--replace")
    {
        Description = "with --save-as: write over NEWFILE if it is there",
    };
    private readonly Option<bool> quick = new("--quick")
    {
        Description =
            "bands from a few bounding runs instead of draws, and no share of draws that meet the targets",
    };
    private readonly Option<bool> ascii = new("--ascii") { Description = "letters of ASCII only" };

    public BalanceCommand(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner runner)
        : base(
            "balance",
            "Which loading, depth and materials give the wanted white and the wanted glow, of those that the recipe's "
                + "'balance' lets be turned; without any, loading and depth of each pigmented layer from half to double.",
            "a recipe file (YAML)",
            args,
            surroundings,
            runner
        )
    {
        Add([steps, saveAs, replace, json, quick, ascii]);
        FileArguments.NeedsName(saveAs, "a file");
        Command.Validators.Add(result =>
        {
            if (result.GetValue(replace) && result.GetValue(saveAs) is null)
            {
                result.AddError("--replace stands beside --save-as only");
            }
        });
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        string? target = parsed.GetValue(saveAs);
        if (
            !StepsOf(parsed, out int? count, out int code)
            || RecipeOf(parsed, out code) is not { } text
            || (target is not null && !CanWrite(target, parsed.GetValue(replace), out code))
        )
        {
            return code;
        }
        var reading = Balance.Prepare(
            Runner.PredictorFor(FolderMaterials.BesideFile(text.Name, Surroundings)),
            RecipeDocument.Read(text),
            count,
            Surroundings.Stop
        );
        code = Problems.Tell(reading.Problems, Surroundings);
        if (reading.Balance is not { } balance)
        {
            return code;
        }
        BalanceAnswer answer;
        using (var progress = new ProgressLine(Surroundings, "designs"))
        {
            answer = balance.Run(
                progress.Show,
                draws: parsed.GetValue(quick) ? 0 : Forecaster.UsualDraws,
                stop: Surroundings.Stop
            );
        }
        return Math.Max(code, Tell(answer, balance, text, target, parsed));
    }

    private int Tell(BalanceAnswer answer, Balance balance, FileText text, string? target, ParseResult parsed)
    {
        if (parsed.GetValue(json))
        {
            Surroundings.Out.Write(BalanceJson.Of(answer, text.Name));
        }
        else if (answer.TriedCount > 0)
        {
            string? title = RecipeDocument.Read(text).Recipe?.Title;
            new BalanceSheet(
                answer,
                title is null ? text.Name : $"{title} ({text.Name})",
                Surroundings.Sheet(parsed.GetValue(ascii))
            ).Print(Surroundings.PlotColumns);
        }
        if (!answer.IsComplete)
        {
            Surroundings.Complain(
                $"stopped: {answer.TriedCount} designs are tried, and what is told is of these alone; nothing is saved"
            );
            return ExitCode.Interrupted;
        }
        return target is null ? ExitCode.Done : Save(answer, balance, target, parsed);
    }

    private int Save(BalanceAnswer answer, Balance balance, string target, ParseResult parsed)
    {
        if (answer.Recommended is not { } best)
        {
            Surroundings.Complain($"{target}: not written, for no design meets every target");
            return ExitCode.Content;
        }
        var problem = AtomicFile.Write(
            target,
            balance.RecipeOf(best).Text,
            Surroundings,
            parsed.GetValue(replace) ? IfThere.Replace : IfThere.Keep
        );
        if (problem is not null)
        {
            return Problems.Tell([problem], Surroundings);
        }
        if (!parsed.GetValue(json))
        {
            Surroundings.Sheet(parsed.GetValue(ascii)).Row("Saved", target);
        }
        return ExitCode.Done;
    }

    private bool CanWrite(string target, bool mayReplace, out int code)
    {
        var problem = AtomicFile.Rehearse(target, Surroundings, mayReplace ? IfThere.Replace : IfThere.Keep);
        code = problem is null ? ExitCode.Done : ExitCode.FileAccess;
        if (problem is not null)
        {
            string hint = problem.Text == FileTexts.IsThere ? "; --replace writes over it" : "";
            Surroundings.Complain(problem + hint);
        }
        return problem is null;
    }

    private bool StepsOf(ParseResult parsed, out int? count, out int code)
    {
        count = null;
        code = ExitCode.Usage;
        string[] words = parsed.GetValue(steps) ?? [];
        string? wrong =
            words.Length > 1 ? "--steps is given twice"
            : NumberWord.Read("--steps", words, out double[] numbers) is { } problem ? problem
            : null;
        if (wrong is not null)
        {
            code = Misunderstood(wrong);
            return false;
        }
        if (words.Length == 0)
        {
            return true;
        }
        _ = NumberText.TryRead(words[0], out double number);
        if (number is < Balance.FewestSteps or > Balance.MostSteps || number != Math.Floor(number))
        {
            Surroundings.Complain($"--steps: {BalanceTexts.StepCount(number)}");
            code = ExitCode.Content;
            return false;
        }
        count = (int)number;
        return true;
    }
}
