using System.CommandLine;
using GlowMix.Documents;
using GlowMix.Readings;
using GlowMix.Readings.Decay;

namespace GlowMix.Console.Commands;

/// <summary>Options that say how a light meter looked at a glow.</summary>
internal sealed class MeterSwitches
{
    private const string ContactWord = "contact";
    private const string MaskWord = "contact-mask";
    private const string DiscWord = "disc-at";

    private readonly Option<string> geometry = FileSwitches.Word(
        "--geometry",
        "how a lux meter looked at the glow: flat on it and covered by it (1 lx is 318 mcd/m²), through a hole in a mask, or from a distance at a disc",
        [ContactWord, MaskWord, DiscWord]
    );
    private readonly Option<string> hole = Length("--hole-mm", "diameter of the mask's hole");
    private readonly Option<string> sensor = Length("--sensor-mm", "diameter of the sensor behind a mask");
    private readonly Option<string> disc = Length("--disc-mm", "diameter of the glowing disc");
    private readonly Option<string> distance = Length("--distance-mm", "from the disc to the sensor");
    private readonly Option<string> step = new("--display-step")
    {
        HelpName = "N",
        Description =
            "step of the meter's display in the file's unit, else by the digits. A 0.1 lx meter in contact sees steps of 32 mcd/m² and can be used "
            + "down to 160 mcd/m², the first minutes of a good glow; it cannot see the 0.3 mcd/m² of the standards. One of 0.001 lx can be used to 1.6 mcd/m²",
    };
    private readonly Option<string> darkFrom = new("--dark-from")
    {
        HelpName = "TIME",
        Description = "when the light went off, on the file's clock: minutes, or h:mm:ss",
    };

    /// <summary>All of them, in the order of the help.</summary>
    public IEnumerable<Option> All => [geometry, hole, sensor, disc, distance, step, darkFrom];

    /// <summary>Adds what they say of a file.</summary>
    /// <param name="options">What the others say.</param>
    /// <param name="parsed">The command line.</param>
    /// <param name="wrong">What cannot be understood, or null.</param>
    public ReadingOptions Of(ReadingOptions options, ParseResult parsed, out string? wrong)
    {
        wrong = Read(step, parsed, out double? displayStep);
        double? start = null;
        if (parsed.GetValue(darkFrom) is { } time)
        {
            start = DarknessTime(time);
            wrong ??= start is null
                ? $"{darkFrom.Name}: {ProblemTexts.Quote(time)} is no time; write minutes such as 1.5, or h:mm:ss"
                : null;
        }
        return options with { DisplayStep = displayStep, DarkFromMinutes = start };
    }

    /// <summary>The geometry.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="wrong">What is missing or out of range, or null.</param>
    /// <param name="isNotAllowed">The words were understood; a number is out of range.</param>
    /// <returns>Null where none is told, or if something is wrong.</returns>
    public MeterGeometry? GeometryOf(ParseResult parsed, out string? wrong, out bool isNotAllowed)
    {
        isNotAllowed = false;
        wrong = Read(hole, parsed, out double? holeMm);
        wrong ??= Read(sensor, parsed, out double? _);
        wrong ??= Read(disc, parsed, out double? _);
        wrong ??= Read(distance, parsed, out double? _);
        _ = Read(sensor, parsed, out double? sensorMm);
        _ = Read(disc, parsed, out double? discMm);
        _ = Read(distance, parsed, out double? distanceMm);
        string? word = parsed.GetValue(geometry);
        wrong ??= word switch
        {
            MaskWord when holeMm is null || sensorMm is null =>
                $"{geometry.Name} {MaskWord} needs {hole.Name} and {sensor.Name}",
            DiscWord when discMm is null || distanceMm is null =>
                $"{geometry.Name} {DiscWord} needs {disc.Name} and {distance.Name}",
            _ => null,
        };
        if (wrong is not null || word is null)
        {
            return null;
        }
        try
        {
            return word switch
            {
                MaskWord => MeterGeometry.ContactMask(holeMm!.Value, sensorMm!.Value),
                DiscWord => MeterGeometry.DiscAt(discMm!.Value, distanceMm!.Value),
                _ => MeterGeometry.Contact,
            };
        }
        catch (ArgumentOutOfRangeException e)
        {
            isNotAllowed = true;
            wrong = $"{geometry.Name} {word}: {e.Message.Split('\n', '(')[0].Trim().TrimEnd('.')}";
            return null;
        }
    }

    private static double? DarknessTime(string word)
    {
        if (NumberText.TryRead(word, out double minutes))
        {
            return minutes;
        }
        string[] parts = word.Split(':');
        return
            parts.Length == 3
            && NumberText.TryRead(parts[0], out double hours)
            && NumberText.TryRead(parts[1], out double whole)
            && NumberText.TryRead(parts[2], out double seconds)
            ? (hours * 60) + whole + (seconds / 60)
            : null;
    }

    private static string? Read(Option<string> option, ParseResult parsed, out double? number)
    {
        number = null;
        if (parsed.GetValue(option) is not { } word)
        {
            return null;
        }
        string? wrong = NumberWord.Read(option.Name, [word], out double[] numbers);
        number = wrong is null ? numbers[0] : null;
        return wrong ?? (number < 0 ? $"{option.Name} is {word}; allowed: 0 or more" : null);
    }

    private static Option<string> Length(string name, string description) =>
        new(name) { HelpName = "MM", Description = description };
}
