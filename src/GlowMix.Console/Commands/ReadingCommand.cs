using System.CommandLine;
using GlowMix.Console.Plots;
using GlowMix.Console.Tables;
using GlowMix.Console.Texts;
using GlowMix.Recipes;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix reading FILE…`: what a spectrometer's or a light meter's file says.</summary>
internal sealed class ReadingCommand : FileCommand
{
    private readonly Option<string> against = new("--against")
    {
        HelpName = "FILE",
        Description =
            "compare with this reading, such as that of the bare board: ratio, shift, bands lost and won",
    };
    private readonly Option<bool> equalExposure = new("--equal-exposure")
    {
        Description = "both were read with the same exposure at the same place",
    };
    private readonly Option<string> scaledAt = new("--scaled-at")
    {
        HelpName = "NM",
        Description =
            "make both equal at this wavelength; without it and without --equal-exposure, units of power count as equal exposure, all else is made equal at 555 nm",
    };
    private readonly Option<string> of = new("--of")
    {
        HelpName = "RECIPE",
        Description =
            "compare with what was predicted: each figure inside or outside its band, and the cause that would explain it best",
    };
    private readonly Option<bool> quick = QuickSwitch.Create("beside --of: ");
    private readonly Option<bool> plot = new("--plot") { Description = "also drawn in the terminal" };
    private readonly Option<bool> json = new("--json")
    {
        Description = "the figures for programs, nothing else; several files make an array",
    };
    private readonly Option<bool> ascii = new("--ascii") { Description = "letters of ASCII only, plots too" };
    private readonly FileSwitches fileSwitches = new();
    private readonly StepSwitches stepSwitches;
    private readonly MeterSwitches meterSwitches = new();

    public ReadingCommand(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner runner)
        : base(
            "reading",
            "What a spectrometer's or light meter's text file says: colour, shift, decay. How the file is written is found by itself and told.",
            "text files of spectra (light over wavelength) or decays (light over time)",
            args,
            surroundings,
            runner
        )
    {
        stepSwitches = new(surroundings, runner);
        Add([
            against,
            equalExposure,
            scaledAt,
            of,
            quick,
            .. stepSwitches.All,
            .. fileSwitches.All,
            .. meterSwitches.All,
            plot,
            json,
            ascii,
        ]);
        FileArguments.NeedsName(against, "a file");
        FileArguments.NeedsName(of, "a recipe file");
        Command.Validators.Add(result =>
        {
            if (result.GetValue(json) && result.GetValue(plot))
            {
                result.AddError("--json prints the figures and nothing else; leave out --plot");
            }
            if (result.GetValue(equalExposure) && result.GetValue(scaledAt) is not null)
            {
                result.AddError("--equal-exposure and --scaled-at exclude each other");
            }
            if (result.GetValue(quick) && result.GetValue(of) is null)
            {
                result.AddError("--quick is about the bands of a prediction; name its recipe with --of");
            }
        });
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        string[] names = FilesOf(parsed);
        if (names.Length == 0)
        {
            return Misunderstood("reading needs a file: text of a spectrometer or a light meter");
        }
        var options = stepSwitches.Of(fileSwitches.Of(parsed, out string? wrong), parsed);
        options = meterSwitches.Of(options, parsed, out string? wrongMeter);
        double? scaleNm = null;
        string? wrongScale = null;
        if (parsed.GetValue(scaledAt) is { } word)
        {
            wrongScale = NumberWord.Read(scaledAt.Name, [word], out double[] numbers);
            scaleNm = wrongScale is null ? numbers[0] : null;
        }
        var geometry = meterSwitches.GeometryOf(parsed, out string? wrongGeometry, out bool isNotAllowed);
        wrong ??= wrongMeter ?? wrongScale ?? wrongGeometry ?? stepSwitches.Wrong(parsed);
        if (wrong is not null)
        {
            if (!isNotAllowed)
            {
                return Misunderstood(wrong);
            }
            Surroundings.Complain(wrong);
            return ExitCode.Content;
        }
        int code = ExitCode.Done;
        if (stepSwitches.Prepare(options, parsed, ref code) is not { } steps)
        {
            return code;
        }
        var answering = new ReadingAnswering(steps, Surroundings)
        {
            IsEqualExposure = parsed.GetValue(equalExposure),
            ScaleNm = scaleNm,
            Geometry = geometry,
        };
        if (parsed.GetValue(against) is { } otherFile)
        {
            answering.Against = answering.FiguresOf(
                steps.ReadSpectrum(otherFile, options, ref code),
                ref code
            );
            if (answering.Against is null)
            {
                return code;
            }
        }
        if (parsed.GetValue(of) is { } recipe)
        {
            answering.Predicted = Predicted(recipe, parsed.GetValue(quick), ref code);
            if (answering.Predicted is null)
            {
                return code;
            }
        }
        var answers = new List<ReadingAnswer>();
        foreach (string file in names)
        {
            Surroundings.Stop.ThrowIfCancellationRequested();
            if (steps.Read(file, options, ref code) is not { } outcome)
            {
                continue;
            }
            var answer = answering.Of(outcome, ref code);
            if (answer is null)
            {
                continue;
            }
            if (!parsed.GetValue(json))
            {
                Print(answer, parsed, isFirst: answers.Count == 0);
                Surroundings.Out.Flush();
            }
            answers.Add(answer);
        }
        if (parsed.GetValue(json) && (names.Length > 1 || answers.Count == 1))
        {
            Surroundings.Out.Write(
                names.Length > 1 ? ReadingJson.Array(answers) : ReadingJson.Object(answers[0])
            );
        }
        return code;
    }

    // Null when the user has been told why there is no prediction.
    private PredictedPiece? Predicted(string recipe, bool isQuick, ref int code)
    {
        var text = UserFile.Read(recipe, Surroundings);
        if (text.Problem is { } unreadable)
        {
            code = Problems.Tell([unreadable], Surroundings);
            return null;
        }
        var folder = FolderMaterials.BesideFile(recipe, Surroundings);
        var predictor = Runner.PredictorFor(folder);
        var (piece, problems) = predictor.Check(RecipeDocument.Read(text));
        code = Math.Max(code, Problems.Tell(problems, Surroundings));
        if (piece is null)
        {
            return null;
        }
        using var line = new LikelyLine(Surroundings);
        return
            Runner.Predict(text, folder, isQuick ? null : line, Surroundings.Stop).Prediction
                is { } prediction
            ? new(prediction, piece, predictor)
            : null;
    }

    private void Print(ReadingAnswer answer, ParseResult parsed, bool isFirst)
    {
        var sheet = Surroundings.Sheet(parsed.GetValue(ascii));
        if (!isFirst)
        {
            sheet.Blank();
            sheet.Blank();
        }
        if (answer.Decay is { } decay)
        {
            new DecayReadingSheet(decay, answer.Geometry, answer.DecayPredicted, sheet).Print();
        }
        else
        {
            new ReadingSheet(answer.Spectrum!, answer.Comparison, answer.Predicted, sheet).Print();
        }
        if (!parsed.GetValue(plot))
        {
            return;
        }
        foreach (Plot drawing in ReadingPlots.Of(answer))
        {
            sheet.Blank();
            foreach (string line in drawing.Draw(Surroundings.PlotColumns, sheet.Style.Ascii))
            {
                sheet.Line(line);
            }
        }
    }
}
