using System.CommandLine;
using System.Globalization;
using GlowMix.Console.Tables;
using GlowMix.Console.Texts;
using GlowMix.Materials.Calibrations;
using GlowMix.Readings;
using GlowMix.Readings.Files;
using GlowMix.Readings.Fit;
using GlowMix.Readings.Sets;
using GlowMix.Recipes;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix fit FILE`: from readings to a calibration that the recipe can take.</summary>
internal sealed class FitCommand : FileCommand
{
    private readonly Option<string> readings = new("--readings")
    {
        HelpName = "SET",
        Description =
            "a file that tells which reading belongs to which state of the recipe; if not given, NAME.readings.yaml beside the recipe, "
            + "else readings called as 'batch --test-tiles' calls them",
    };
    private readonly Option<string> bare = File("--bare", "spectrum of the bare board, lit");
    private readonly Option<string> potted = File("--potted", "spectrum of the recipe's piece, lit");
    private readonly Option<string> decay = File("--decay", "decay of the recipe's piece after its charge");
    private readonly Option<string> corrected = new("--corrected")
    {
        HelpName = "yes|no",
        Description =
            "whether the spectrometer corrects for its response; without, raw counts give ratios only",
    };
    private readonly Option<bool> onlySay = new("--only-say") { Description = "write no file" };
    private readonly Option<bool> json = new("--json")
    {
        Description = "the result for programs, nothing else",
    };
    private readonly Option<bool> ascii = new("--ascii") { Description = "letters of ASCII only" };
    private readonly MeterSwitches meter = new();

    public FitCommand(IReadOnlyList<string> args, Surroundings surroundings, IRecipeRunner runner)
        : base(
            "fit",
            "From your readings to a calibration, so that the next prediction is nearer and surer.",
            "a recipe file (YAML)",
            args,
            surroundings,
            runner
        )
    {
        corrected.AcceptOnlyFromAmong("yes", "no");
        Add([readings, bare, potted, decay, corrected, .. meter.All, onlySay, json, ascii]);
        FileArguments.NeedsName(readings, "a set of readings");
        foreach (var option in (ReadOnlySpan<Option<string>>)[bare, potted, decay])
        {
            FileArguments.NeedsName(option, "a file");
        }
        Command.Validators.Add(result =>
        {
            bool named =
                (result.GetValue(bare) ?? result.GetValue(potted) ?? result.GetValue(decay)) is not null;
            if (result.GetValue(readings) is not null && named)
            {
                result.AddError(
                    "--readings names all readings in its file; leave out --bare, --potted, --decay"
                );
            }
            if (result.GetValue(potted) is not null && result.GetValue(bare) is null)
            {
                result.AddError("--potted says nothing without --bare, read by the same spectrometer");
            }
        });
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        if (RecipeOf(parsed, out int code) is not { } text)
        {
            return code;
        }
        var document = RecipeDocument.Read(text);
        if (document.Recipe is not { } recipe)
        {
            return Problems.Tell(document.Problems, Surroundings);
        }
        if (SetOf(parsed, text.Name, recipe, out string folder, out code) is not { } set)
        {
            return code;
        }
        bool isWritten = !parsed.GetValue(onlySay);
        var target = new CalibrationTarget(text.Name, Surroundings);
        if (isWritten && target.WrongWith() is { } wrong)
        {
            return Problems.Tell([wrong], Surroundings);
        }
        var predictor = Runner.PredictorFor(FolderMaterials.BesideFile(text.Name, Surroundings));
        var assembled = SetAssembly.Of(
            document,
            set,
            predictor,
            path => UserFile.ReadBytes(Path.Combine(folder, path), ReadingFile.LongestBytes, Surroundings)
        );
        code = Problems.Tell(assembled.Problems, Surroundings);
        if (assembled.Readings is not { } fitted)
        {
            return code;
        }
        var (result, refusal) = new Fitter(predictor).Fit(fitted);
        if (result is null)
        {
            return Problems.Tell([new(text.Name, null, refusal!)], Surroundings);
        }
        Surroundings.Stop.ThrowIfCancellationRequested();
        bool tellsNothing = result.Numbers.IsEmpty && result.Shares.IsEmpty;
        if (isWritten && !tellsNothing)
        {
            var calibration = result.ToCalibration(
                target.FileName,
                Path.GetFileName(text.Name),
                Surroundings.Today().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
                [
                    .. assembled.Hashes.Select(h =>
                        h with
                        {
                            File = target.PathTo(Path.Combine(folder, h.File)),
                        }
                    ),
                ]
            );
            if (target.Write(CalibrationText.Of(calibration)) is { } unwritten)
            {
                return Math.Max(code, Problems.Tell([unwritten], Surroundings));
            }
        }
        string? written = isWritten && !tellsNothing ? target.Name : null;
        if (parsed.GetValue(json))
        {
            Surroundings.Out.Write(FitJson.Of(result, text.Name, written));
        }
        else
        {
            new FitSheet(result, assembled.Hashes.Length, Surroundings.Sheet(parsed.GetValue(ascii))).Print(
                text.Name,
                written,
                isTaken: recipe.CalibrationPath == target.FileName
            );
        }
        return code;
    }

    private ReadingsSet? SetOf(
        ParseResult parsed,
        string recipeName,
        Recipe recipe,
        out string folder,
        out int code
    )
    {
        code = ExitCode.Usage;
        folder = "";
        var geometry = meter.GeometryOf(parsed, out string? wrong, out bool isNotAllowed);
        var options = meter.Of(ReadingOptions.Found, parsed, out string? other);
        if ((wrong ?? other) is { } complaint)
        {
            Surroundings.Complain(complaint);
            code = isNotAllowed ? ExitCode.Content : ExitCode.Usage;
            return null;
        }
        bool? isCorrected = parsed.GetValue(corrected) switch
        {
            "yes" => true,
            "no" => false,
            _ => null,
        };
        var named = new List<SetReading>();
        if (parsed.GetValue(bare) is { } b)
        {
            named.Add(new(b, ReadingState.Bare));
        }
        if (parsed.GetValue(potted) is { } p)
        {
            bool hasPigment = recipe.Layers.Any(l => l is { PigmentName: not null, LoadingPercent: > 0 });
            named.Add(new(p, hasPigment ? ReadingState.Pigmented : ReadingState.Potted));
        }
        if (parsed.GetValue(decay) is { } d)
        {
            named.Add(AsTheMeterSaw(new(d, ReadingState.Decay)));
        }
        if (named.Count > 0)
        {
            return Set(recipeName, named);
        }
        string besides = Path.GetDirectoryName(recipeName) ?? "";
        string name = Path.GetFileNameWithoutExtension(recipeName);
        string path = parsed.GetValue(readings) ?? Path.Combine(besides, TileFiles.SetOf(name));
        if (parsed.GetValue(readings) is not null || IsThere(path))
        {
            folder = Path.GetDirectoryName(path) ?? "";
            var (set, problems) = ReadingsSetFile.Read(UserFile.Read(path, Surroundings));
            code = Problems.Tell(problems, Surroundings);
            return set is null ? null : set with { IsCorrected = isCorrected ?? set.IsCorrected };
        }
        folder = besides;
        SetReading[] tiles =
        [
            .. TileFiles.Of(name).Where(r => IsThere(Path.Combine(besides, r.File))).Select(AsTheMeterSaw),
        ];
        if (tiles.Length > 0)
        {
            return Set(recipeName, tiles);
        }
        code = Misunderstood(
            $"fit needs readings: --bare and --potted, --decay, --readings, or {TileFiles.SetOf(name)} beside the recipe"
        );
        return null;

        SetReading AsTheMeterSaw(SetReading reading) =>
            reading.State == ReadingState.Decay
                ? reading with
                {
                    Geometry = geometry,
                    DisplayStep = options.DisplayStep,
                    DarkFromMinutes = options.DarkFromMinutes,
                }
                : reading;

        ReadingsSet Set(string of, IEnumerable<SetReading> all) =>
            new()
            {
                Name = of,
                IsCorrected = isCorrected,
                Readings = [.. all],
            };
    }

    private bool IsThere(string path) => System.IO.File.Exists(Surroundings.FullPath(path));

    private static Option<string> File(string name, string description) =>
        new(name) { HelpName = "FILE", Description = description };
}
