using System.CommandLine;
using GlowMix.Console.Plots;
using GlowMix.Console.Tables;
using GlowMix.Console.Texts;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Readings;
using GlowMix.Readings.Decay;
using GlowMix.Readings.Spectral;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix reading FILE…`: what a spectrometer's or a light meter's file says.</summary>
internal sealed class ReadingCommand
{
    private const string Name = "reading";

    // Where no exposure and no wavelength is told, both are made equal here, near the eye's peak.
    private const double UsualScaleNm = 555;

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
    private readonly Option<string> dark = new("--dark")
    {
        HelpName = "FILE",
        Description = "a dark reading of the same exposure, taken off every reading",
    };
    private readonly Option<string> darkWindow = new("--dark-window")
    {
        HelpName = "A-B",
        Description = "wavelengths in nm without light, such as 340-380: their mean is taken off",
    };
    private readonly Option<string> reflectance = new("--reflectance")
    {
        HelpName = "R",
        Description =
            "the light was read off paper or a diffuser: its reflectance, a number from 0 to 1 or a file, is divided out",
    };
    private readonly Option<string> corrected = FileSwitches.Word(
        "--corrected",
        "whether the instrument's response has been taken out of the values",
        ["yes", "no"]
    );
    private readonly Option<string[]> knownLamp = new("--known-lamp")
    {
        HelpName = "LAMP FILE",
        Description =
            "a reading of a lamp whose spectrum is known gives the instrument's response: a lamp of the shelf or a temperature such as 2856K, and the file",
        Arity = new ArgumentArity(2, 2),
        AllowMultipleArgumentsPerToken = true,
    };
    private readonly Option<bool> plot = new("--plot") { Description = "also drawn in the terminal" };
    private readonly Option<bool> json = new("--json")
    {
        Description = "the figures for programs, nothing else; several files make an array",
    };
    private readonly Option<bool> ascii = new("--ascii") { Description = "letters of ASCII only, plots too" };
    private readonly FileSwitches fileSwitches = new();
    private readonly MeterSwitches meterSwitches = new();
    private readonly Argument<string[]> files;
    private readonly Surroundings surroundings;
    private readonly IRecipeRunner runner;

    private ReadingCommand(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner runner)
    {
        (this.surroundings, this.runner) = (surroundings, runner);
        Command = new(
            Name,
            "What a spectrometer's or light meter's text file says: colour, shift, decay. How the file is written is found by itself and told."
        );
        files = FileArguments.Create(
            Command,
            args,
            "text files of spectra (light over wavelength) or decays (light over time)"
        );
        Command.Add(files);
        Option[] own =
        [
            against,
            equalExposure,
            scaledAt,
            dark,
            darkWindow,
            reflectance,
            corrected,
            knownLamp,
        ];
        foreach (Option option in own.Concat(fileSwitches.All).Concat(meterSwitches.All))
        {
            Command.Add(option);
        }
        foreach (Option option in (ReadOnlySpan<Option>)[plot, json, ascii])
        {
            Command.Add(option);
        }
        foreach (Option<string> option in (ReadOnlySpan<Option<string>>)[against, dark])
        {
            FileArguments.NeedsName(option, "a file");
        }
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
        });
        Command.SetAction(Run);
    }

    private Command Command { get; }

    /// <summary>The command with its options.</summary>
    public static Command Create(
        IReadOnlyList<string> args,
        Surroundings surroundings,
        IRecipeRunner runner
    ) => new ReadingCommand(args, surroundings, runner).Command;

    private int Run(ParseResult parsed)
    {
        string[] names = parsed.GetValue(files) ?? [];
        if (names.Length == 0)
        {
            return Misunderstood("reading needs a file: text of a spectrometer or a light meter");
        }
        var options = fileSwitches.Of(parsed, out string? wrong);
        options = meterSwitches.Of(options, parsed, out string? wrongMeter) with
        {
            IsCorrected = parsed.GetValue(corrected) switch
            {
                "yes" => true,
                "no" => false,
                _ => null,
            },
        };
        wrong ??= wrongMeter;
        double? scaleNm = null;
        if (parsed.GetValue(scaledAt) is { } word)
        {
            wrong ??= NumberWord.Read(scaledAt.Name, [word], out double[] numbers);
            scaleNm = wrong is null ? NumberOf(word) : null;
        }
        var geometry = meterSwitches.GeometryOf(parsed, out string? wrongGeometry, out bool isNotAllowed);
        wrong ??= wrongGeometry;
        if (wrong is not null)
        {
            if (isNotAllowed)
            {
                surroundings.Complain(wrong);
                return ExitCode.Content;
            }
            return Misunderstood(wrong);
        }
        int code = ExitCode.Done;
        var steps = new ReadingSteps(surroundings);
        if (!Prepare(steps, options, parsed, ref code))
        {
            return code;
        }
        ReadingFigures? other = null;
        if (parsed.GetValue(against) is { } otherFile)
        {
            other = FiguresOf(steps.ReadSpectrum(otherFile, options, ref code), steps, ref code);
            if (other is null)
            {
                return code;
            }
        }
        return ReadAll(names, options, steps, other, scaleNm, geometry, parsed, code);
    }

    private int ReadAll(
        string[] names,
        ReadingOptions options,
        ReadingSteps steps,
        ReadingFigures? other,
        double? scaleNm,
        MeterGeometry? geometry,
        ParseResult parsed,
        int code
    )
    {
        var told = new List<ReadingAnswer>();
        foreach (string file in names)
        {
            surroundings.Stop.ThrowIfCancellationRequested();
            if (steps.Read(file, options, ref code) is not { } outcome)
            {
                continue;
            }
            ReadingAnswer? answer = outcome.Decay is { } decay
                ? new(null, null, DecayFigures.Of(geometry?.ToLuminance(decay) ?? decay), geometry)
                : Answer(outcome.Spectrum, steps, other, scaleNm, parsed, ref code);
            if (answer is null)
            {
                continue;
            }
            if (!parsed.GetValue(json))
            {
                Print(answer, parsed, isFirst: told.Count == 0);
                surroundings.Out.Flush();
            }
            told.Add(answer);
        }
        if (parsed.GetValue(json) && (names.Length > 1 || told.Count == 1))
        {
            surroundings.Out.Write(names.Length > 1 ? ReadingJson.Array(told) : ReadingJson.Object(told[0]));
        }
        return code;
    }

    private ReadingAnswer? Answer(
        SpectralReading? reading,
        ReadingSteps steps,
        ReadingFigures? other,
        double? scaleNm,
        ParseResult parsed,
        ref int code
    )
    {
        if (FiguresOf(reading, steps, ref code) is not { } figures)
        {
            return null;
        }
        if (other is null)
        {
            return new(figures, null, null, null);
        }
        // Power in a stated unit is equal exposure by nature.
        bool arePowers =
            figures.Reading.Unit == SpectralUnit.WPerM2Nm && other.Reading.Unit == SpectralUnit.WPerM2Nm;
        double? atNm = parsed.GetValue(equalExposure) ? null : scaleNm ?? (arePowers ? null : UsualScaleNm);
        var comparison = SpectrumComparison.Of(figures, other, atNm, out string? problem);
        if (problem is not null)
        {
            code = Math.Max(
                code,
                Problems.Tell([new Problem(figures.Reading.File, null, problem)], surroundings)
            );
        }
        return new(figures, comparison, null, null);
    }

    private ReadingFigures? FiguresOf(SpectralReading? reading, ReadingSteps steps, ref int code)
    {
        if (reading is null || steps.Apply(reading, ref code) is not { } done)
        {
            return null;
        }
        var figures = ReadingFigures.Of(done);
        if (figures is null)
        {
            string text = ReadingTexts.NothingVisible(done.Spectrum.FirstNm, done.Spectrum.LastNm);
            code = Math.Max(code, Problems.Tell([new Problem(done.File, null, text)], surroundings));
        }
        return figures;
    }

    // What every reading is put through; false when the user has been told what is wrong.
    private bool Prepare(ReadingSteps steps, ReadingOptions options, ParseResult parsed, ref int code)
    {
        // Columns and lines are those of the readings; other files are looked at afresh.
        var plain = new ReadingOptions { Kind = ReadingKind.Spectrum, IsLenient = options.IsLenient };
        if (parsed.GetValue(darkWindow) is { } window)
        {
            if (RangeWord.Read(window) is not var (fromNm, toNm))
            {
                code = Misunderstood(
                    $"{darkWindow.Name}: {ProblemTexts.Quote(window)} is no range in nm; write it such as 340-380"
                );
                return false;
            }
            steps.DarkWindow = new(fromNm, toNm);
        }
        if (parsed.GetValue(dark) is { } darkFile)
        {
            steps.Dark = steps.ReadSpectrum(darkFile, options, ref code);
            if (steps.Dark is null)
            {
                return false;
            }
        }
        return PrepareSurface(steps, plain, parsed, ref code)
            && PrepareLamp(steps, options, parsed, ref code);
    }

    private bool PrepareSurface(ReadingSteps steps, ReadingOptions plain, ParseResult parsed, ref int code)
    {
        if (parsed.GetValue(reflectance) is not { } surface)
        {
            return true;
        }
        if (NumberText.TryRead(surface, out double share))
        {
            if (share is not (> 0 and <= 1))
            {
                surroundings.Complain($"{reflectance.Name}: {SpectralTexts.Reflectance(share)}");
                code = ExitCode.Content;
                return false;
            }
            steps.Reflectance = share;
            return true;
        }
        steps.ReflectanceTable = steps.ReadSpectrum(surface, plain, ref code)?.Spectrum;
        return steps.ReflectanceTable is not null;
    }

    private bool PrepareLamp(ReadingSteps steps, ReadingOptions options, ParseResult parsed, ref int code)
    {
        if (parsed.GetValue(knownLamp) is not { Length: 2 } lamp)
        {
            return true;
        }
        if (options.IsCorrected == true)
        {
            code = Misunderstood($"{corrected.Name} yes and {knownLamp.Name} exclude each other");
            return false;
        }
        var shelf = runner.PredictorFor(new FolderMaterials("", surroundings)).Shelf;
        if (InstrumentResponse.LampNamed(lamp[0], shelf) is not { } spectrum)
        {
            surroundings.Complain(
                $"{knownLamp.Name}: {SpectralTexts.NoLamp(lamp[0], shelf.Names(MaterialKind.Lamp))}"
            );
            code = ExitCode.Content;
            return false;
        }
        if (
            steps.ReadSpectrum(lamp[1], options, ref code) is not { } lampReading
            || steps.WithoutDark(lampReading, ref code) is not { } net
        )
        {
            return false;
        }
        steps.Response = InstrumentResponse.From(net, spectrum);
        return true;
    }

    private void Print(ReadingAnswer answer, ParseResult parsed, bool isFirst)
    {
        var sheet = surroundings.Sheet(parsed.GetValue(ascii));
        if (!isFirst)
        {
            sheet.Blank();
            sheet.Blank();
        }
        if (answer.Decay is { } decay)
        {
            new DecayReadingSheet(decay, answer.Geometry, sheet).Print();
        }
        else
        {
            new ReadingSheet(answer.Spectrum!, answer.Comparison, sheet).Print();
        }
        if (!parsed.GetValue(plot))
        {
            return;
        }
        foreach (Plot drawing in ReadingPlots.Of(answer))
        {
            sheet.Blank();
            foreach (string line in drawing.Draw(surroundings.PlotColumns, sheet.Style.Ascii))
            {
                sheet.Line(line);
            }
        }
    }

    private int Misunderstood(string text)
    {
        surroundings.Complain(text);
        surroundings.Complain($"Try 'glowmix {Name} --help'.");
        return ExitCode.Usage;
    }

    private static double NumberOf(string word) => NumberText.TryRead(word, out double number) ? number : 0;
}
