using System.CommandLine;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Readings;
using GlowMix.Readings.Spectral;

namespace GlowMix.Console.Commands;

/// <summary>Options that say what to take off spectra, and what to divide out of them.</summary>
internal sealed class StepSwitches
{
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

    private readonly Surroundings surroundings;
    private readonly IRecipeRunner runner;

    public StepSwitches(Surroundings surroundings, IRecipeRunner runner)
    {
        (this.surroundings, this.runner) = (surroundings, runner);
        FileArguments.NeedsName(dark, "a file");
    }

    /// <summary>All of them, in the order of the help.</summary>
    public IEnumerable<Option> All => [dark, darkWindow, reflectance, corrected, knownLamp];

    /// <summary>Adds what they say of a file.</summary>
    public ReadingOptions Of(ReadingOptions options, ParseResult parsed) =>
        options with
        {
            IsCorrected = parsed.GetValue(corrected) switch
            {
                "yes" => true,
                "no" => false,
                _ => null,
            },
        };

    /// <summary>What cannot be understood; null if all can.</summary>
    public string? Wrong(ParseResult parsed) =>
        parsed.GetValue(darkWindow) is { } window && RangeWord.Read(window) is null
            ? $"{darkWindow.Name}: {ProblemTexts.Quote(window)} is no range in nm; write it such as 340-380"
        : parsed.GetValue(corrected) is "yes" && parsed.GetValue(knownLamp) is { Length: > 0 }
            ? $"{corrected.Name} yes and {knownLamp.Name} exclude each other"
        : null;

    /// <summary>Reads the files that they name.</summary>
    /// <param name="options">How the readings are written.</param>
    /// <param name="parsed">A command line with nothing <see cref="Wrong"/>.</param>
    /// <param name="code">Raised where something is wrong with a file or a value.</param>
    /// <returns>Null when the user has been told what is wrong.</returns>
    public ReadingSteps? Prepare(ReadingOptions options, ParseResult parsed, ref int code)
    {
        var steps = new ReadingSteps(surroundings);
        if (parsed.GetValue(darkWindow) is { } window && RangeWord.Read(window) is var (fromNm, toNm))
        {
            steps.DarkWindow = new(fromNm, toNm);
        }
        if (parsed.GetValue(dark) is { } darkFile)
        {
            steps.Dark = steps.ReadSpectrum(darkFile, options with { IsDark = true }, ref code);
            if (steps.Dark is null)
            {
                return null;
            }
        }
        return
            PrepareSurface(steps, options, parsed, ref code) && PrepareLamp(steps, options, parsed, ref code)
            ? steps
            : null;
    }

    private bool PrepareSurface(ReadingSteps steps, ReadingOptions options, ParseResult parsed, ref int code)
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
        // Its columns and lines are its own, and are found afresh.
        var own = new ReadingOptions { IsLenient = options.IsLenient };
        steps.ReflectanceTable = steps.ReadSpectrum(surface, own, ref code)?.Spectrum;
        return steps.ReflectanceTable is not null;
    }

    private bool PrepareLamp(ReadingSteps steps, ReadingOptions options, ParseResult parsed, ref int code)
    {
        if (parsed.GetValue(knownLamp) is not { Length: 2 } lamp)
        {
            return true;
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
}
