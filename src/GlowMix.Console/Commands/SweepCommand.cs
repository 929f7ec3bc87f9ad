using System.CommandLine;
using GlowMix.Choosing;
using GlowMix.Console.Files;
using GlowMix.Console.Plots;
using GlowMix.Console.Tables;
using GlowMix.Console.Texts;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix sweep FILE --vary KEY --from A --to B`: a recipe along one or two of its numbers.</summary>
internal sealed class SweepCommand : FileCommand
{
    private const double UsualCount = 11;
    private const int PlotRows = 10;
    private const int MostPlots = 2;
    private const string EveryVary =
        "each --vary takes a --from, a --to and, if any does, a --steps of its own";

    private readonly Option<string[]> vary = new("--vary")
    {
        HelpName = "KEY",
        Description =
            "the number to vary, such as layers.glow.loading_percent, or its last word where there is only one; "
            + "give --vary, --from, --to and --steps again for a second key",
    };
    private readonly Option<string[]> from = new("--from")
    {
        HelpName = "A",
        Description = "its first value",
    };
    private readonly Option<string[]> to = new("--to")
    {
        HelpName = "B",
        Description = "its last value, above the first",
    };
    private readonly Option<string[]> steps = new("--steps")
    {
        HelpName = "N",
        Description = "how many values, both ends counted; 11 if not given",
    };
    private readonly Option<string[]> figure = new("--figure")
    {
        HelpName = "NAME…",
        Description =
            "which figures, by the names of 'predict --full'; else white, light kept and glow. In quotes where a name has brackets",
        AllowMultipleArgumentsPerToken = true,
    };
    private readonly Option<string> csv = new("--csv")
    {
        HelpName = "FILE",
        Description = "also a table for a spreadsheet, every digit",
    };
    private readonly Option<bool> quick = new("--quick")
    {
        Description =
            $"bands from a few bounding runs instead of {Sweep.UsualDraws} draws each: faster, and cruder",
    };
    private readonly Option<bool> json = new("--json")
    {
        Description = "the figures for programs, nothing else",
    };
    private readonly Option<bool> ascii = new("--ascii") { Description = "letters of ASCII only, plots too" };

    public SweepCommand(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner runner)
        : base(
            "sweep",
            "A recipe predicted along one or two of its numbers: a table and plots.",
            "a recipe file (YAML)",
            args,
            surroundings,
            runner
        )
    {
        Add([vary, from, to, steps, figure, csv, quick, json, ascii]);
        FileArguments.NeedsName(csv, "a file");
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        if (
            AxesOf(parsed, out int code) is not { } axes
            || FiguresOf(parsed, out code) is not { } figures
            || RecipeOf(parsed, out code) is not { } text
        )
        {
            return code;
        }
        var reading = Sweep.Prepare(
            Runner.PredictorFor(FolderMaterials.BesideFile(text.Name, Surroundings)),
            RecipeDocument.Read(text),
            axes,
            Surroundings.Stop
        );
        code = Problems.Tell(reading.Problems, Surroundings);
        if (reading.Sweep is not { } sweep)
        {
            return code;
        }
        SweepTable table;
        using (var progress = new ProgressLine(Surroundings, "predictions"))
        {
            int total = sweep.PointCount;
            table = sweep.Run(
                figures,
                parsed.GetValue(quick) ? 0 : Sweep.UsualDraws,
                done => progress.Show(done, total),
                Surroundings.Stop
            );
        }
        return Math.Max(code, Tell(table, text.Name, total: sweep.PointCount, parsed));
    }

    private int Tell(SweepTable table, string recipe, int total, ParseResult parsed)
    {
        int code = ExitCode.Done;
        string? file = parsed.GetValue(csv);
        bool isWritten = file is not null && table.Points.Length > 0 && Write(file, table, ref code);
        if (parsed.GetValue(json))
        {
            Surroundings.Out.Write(SweepJson.Of(table, recipe));
        }
        else if (table.Points.Length > 0)
        {
            Print(table, recipe, parsed.GetValue(ascii));
            if (isWritten)
            {
                Surroundings.Sheet(parsed.GetValue(ascii)).Row("Table", file!);
            }
        }
        if (!table.IsComplete)
        {
            Surroundings.Complain(
                $"stopped: {table.Points.Length} of {total} predictions are done, and told above"
                    + (isWritten ? $" and in {file}" : "")
            );
            return ExitCode.Interrupted;
        }
        return code;
    }

    private void Print(SweepTable table, string recipe, bool plain)
    {
        var sheet = Surroundings.Sheet(plain);
        new SweepSheet(table, recipe, sheet).Print(Surroundings.PlotColumns);
        int drawn = 0;
        foreach (int f in PlotOrder(table))
        {
            if (drawn < MostPlots && SweepPlots.Of(table, f) is { } plot)
            {
                sheet.Blank();
                foreach (
                    string line in plot.Draw(Surroundings.Style(plain).Columns, PlotRows, sheet.Style.Ascii)
                )
                {
                    sheet.Line(line);
                }
                drawn++;
            }
        }
    }

    // Of the usual figures those that pull against each other; else in the order asked for.
    private static IEnumerable<int> PlotOrder(SweepTable table)
    {
        string[] first = ["lit.duv", "afterglow.luminance_mcd_m2[60]"];
        return table.Figures.SequenceEqual(Sweep.UsualFigures)
            ? first.Select(name => table.Figures.IndexOf(FigureCatalogue.Find(name)!))
            : Enumerable.Range(0, table.Figures.Length);
    }

    private bool Write(string file, SweepTable table, ref int code)
    {
        var problem = AtomicFile.Write(file, SweepCsv.Of(table), Surroundings);
        if (problem is null)
        {
            return true;
        }
        code = Math.Max(code, Problems.Tell([problem], Surroundings));
        return false;
    }

    private List<SweepAxis>? AxesOf(ParseResult parsed, out int code)
    {
        string[] keys = parsed.GetValue(vary) ?? [];
        string? wrong = NumberWord.Read("--from", parsed.GetValue(from) ?? [], out double[] first);
        wrong ??= NumberWord.Read("--to", parsed.GetValue(to) ?? [], out double[] _);
        wrong ??= NumberWord.Read("--steps", parsed.GetValue(steps) ?? [], out double[] _);
        _ = NumberWord.Read("--to", parsed.GetValue(to) ?? [], out double[] last);
        _ = NumberWord.Read("--steps", parsed.GetValue(steps) ?? [], out double[] counts);
        wrong ??=
            keys.Length == 0 ? "sweep needs --vary with the key of a number"
            : first.Length != keys.Length
            || last.Length != keys.Length
            || (counts.Length > 0 && counts.Length != keys.Length)
                ? EveryVary
            : null;
        if (wrong is not null)
        {
            code = Misunderstood(wrong);
            return null;
        }
        code = ExitCode.Content;
        var axes = new List<SweepAxis>();
        for (int i = 0; i < keys.Length; i++)
        {
            double count = counts.Length > 0 ? counts[i] : UsualCount;
            if (SweepAxis.ProblemOf(first[i], last[i], count) is { } problem)
            {
                Surroundings.Complain($"{keys[i]}: {problem}");
                return null;
            }
            axes.Add(SweepAxis.Evenly(keys[i], first[i], last[i], (int)count));
        }
        return axes;
    }

    private List<Figure>? FiguresOf(ParseResult parsed, out int code)
    {
        code = ExitCode.Content;
        string[] names = parsed.GetValue(figure) ?? [];
        var figures = new List<Figure>();
        foreach (string name in names)
        {
            var (found, problem) = Sweep.FigureOf(name);
            if (found is null)
            {
                Surroundings.Complain($"--figure: {problem}");
                return null;
            }
            if (!figures.Contains(found))
            {
                figures.Add(found);
            }
        }
        return names.Length == 0 ? [.. Sweep.UsualFigures] : figures;
    }
}
