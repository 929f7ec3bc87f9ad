using System.CommandLine;
using GlowMix.Documents;
using GlowMix.Readings;

namespace GlowMix.Console.Commands;

/// <summary>Options that say how a file of readings is written; each overrules what would be found.</summary>
internal sealed class FileSwitches
{
    private static readonly (string Word, char Value)[] delimiters =
    [
        ("tab", '\t'),
        ("semicolon", ';'),
        ("comma", ','),
        ("bar", '|'),
        ("blank", ' '),
    ];

    private static readonly (string Word, LengthUnit Value)[] lengths =
    [
        ("nm", LengthUnit.Nanometre),
        ("um", LengthUnit.Micrometre),
        ("angstrom", LengthUnit.Angstrom),
        ("m", LengthUnit.Metre),
    ];

    private static readonly (string Word, TimeUnit Value)[] times =
    [
        ("s", TimeUnit.Second),
        ("min", TimeUnit.Minute),
        ("h", TimeUnit.Hour),
    ];

    private static readonly (
        string Word,
        (SpectralUnit? Spectral, DecayUnit? Decay, double Factor) Value
    )[] units =
    [
        ("counts", (SpectralUnit.Counts, null, 1)),
        ("relative", (SpectralUnit.Relative, DecayUnit.Relative, 1)),
        ("w", (SpectralUnit.WPerM2Nm, null, 1)),
        ("mw", (SpectralUnit.WPerM2Nm, null, 1e-3)),
        ("uw", (SpectralUnit.WPerM2Nm, null, 1e-2)),
        ("mcd", (null, DecayUnit.McdPerM2, 1)),
        ("cd", (null, DecayUnit.McdPerM2, 1e3)),
        ("lux", (null, DecayUnit.Lux, 1)),
    ];

    private readonly Option<string> wavelengthColumn = new("--wavelength-column")
    {
        HelpName = "COLUMN",
        Description = "column of the wavelengths: its number from 1, or its name",
    };
    private readonly Option<string> timeColumn = new("--time-column")
    {
        HelpName = "COLUMN",
        Description = "column of the times of a decay",
    };
    private readonly Option<string> column = new("--column")
    {
        HelpName = "COLUMN",
        Description = "column of the light",
    };
    private readonly Option<string> darkColumn = new("--dark-column")
    {
        HelpName = "COLUMN",
        Description = "column of a dark reading, to be taken off the light",
    };
    private readonly Option<string> delimiter = Word(
        "--delimiter",
        "what separates columns",
        WordsOf(delimiters)
    );
    private readonly Option<string> decimalMark = Word("--decimal", "the decimal mark", ["point", "comma"]);
    private readonly Option<string> lines = new("--lines")
    {
        HelpName = "A-B",
        Description = "take rows of these lines only",
    };
    private readonly Option<bool> lenient = new("--lenient")
    {
        Description = "leave out lines that cannot be read, average values of one wavelength",
    };
    private readonly Option<string> wavelengthUnit = Word(
        "--wavelength-unit",
        "unit of the wavelengths",
        WordsOf(lengths)
    );
    private readonly Option<string> unit = Word(
        "--unit",
        "unit of the light; w, mw, uw for W/m²/nm, mW/m²/nm, µW/cm²/nm; mcd, cd, lux for a decay",
        WordsOf(units)
    );
    private readonly Option<bool> decay = new("--decay")
    {
        Description = "the file is a decay: light over time",
    };
    private readonly Option<string> timeUnit = Word(
        "--time-unit",
        "unit of the times of a decay",
        WordsOf(times)
    );

    /// <summary>All of them, in the order of the help.</summary>
    public IEnumerable<Option> All =>
        [
            wavelengthColumn,
            timeColumn,
            column,
            darkColumn,
            wavelengthUnit,
            unit,
            delimiter,
            decimalMark,
            lines,
            lenient,
            decay,
            timeUnit,
        ];

    /// <summary>What they say.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="wrong">What cannot be understood, or null.</param>
    public ReadingOptions Of(ParseResult parsed, out string? wrong)
    {
        wrong = null;
        (int First, int Last)? range = null;
        if (parsed.GetValue(lines) is { } text)
        {
            if (
                RangeWord.Read(text) is var (first, last)
                && first == Math.Floor(first)
                && last == Math.Floor(last)
            )
            {
                range = ((int)Math.Min(first, int.MaxValue), (int)Math.Min(last, int.MaxValue));
            }
            else
            {
                wrong =
                    $"{lines.Name}: {ProblemTexts.Quote(text)} is no range of lines; write it such as 20-420";
            }
        }
        string? asTime = parsed.GetValue(timeColumn);
        if (asTime is not null && parsed.GetValue(wavelengthColumn) is not null)
        {
            wrong ??= $"{wavelengthColumn.Name} and {timeColumn.Name} exclude each other";
        }
        var (spectral, glow, factor) = ValueOf(parsed.GetValue(unit), units) ?? (null, null, 1);
        bool isDecay = parsed.GetValue(decay) || asTime is not null || (glow is not null && spectral is null);
        return new()
        {
            Kind =
                isDecay ? ReadingKind.Decay
                : parsed.GetValue(wavelengthColumn) is not null || parsed.GetValue(wavelengthUnit) is not null
                    ? ReadingKind.Spectrum
                : null,
            Delimiter = ValueOf(parsed.GetValue(delimiter), delimiters),
            DecimalMark = parsed.GetValue(decimalMark) switch
            {
                "point" => '.',
                "comma" => ',',
                _ => null,
            },
            AlongColumn = asTime ?? parsed.GetValue(wavelengthColumn),
            LightColumn = parsed.GetValue(column),
            DarkColumn = parsed.GetValue(darkColumn),
            Lines = range,
            IsLenient = parsed.GetValue(lenient),
            WavelengthUnit = ValueOf(parsed.GetValue(wavelengthUnit), lengths),
            SpectralUnit = spectral,
            DecayUnit = glow,
            LightFactor = parsed.GetValue(unit) is null ? null : factor,
            TimeUnit = ValueOf(parsed.GetValue(timeUnit), times),
        };
    }

    private static string[] WordsOf<T>((string Word, T Value)[] choices) =>
        Array.ConvertAll(choices, c => c.Word);

    private static T? ValueOf<T>(string? word, (string Word, T Value)[] choices)
        where T : struct => word is null ? null : Array.Find(choices, c => c.Word == word).Value;

    /// <summary>An option that takes one of a few words.</summary>
    public static Option<string> Word(string name, string description, string[] words)
    {
        var option = new Option<string>(name)
        {
            HelpName = "WORD",
            Description = $"{description}: {string.Join(", ", words)}",
        };
        option.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: var word }] && !words.Contains(word))
            {
                result.AddError(ProblemTexts.NotOneOf(name, word, words));
            }
        });
        return option;
    }
}
