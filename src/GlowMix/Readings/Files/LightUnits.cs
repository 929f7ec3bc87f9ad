using System.Text.RegularExpressions;

namespace GlowMix.Readings.Files;

/// <summary>Units of the light of a spectrum in the words of a header, however they are typed.</summary>
internal static partial class LightUnits
{
    // Joules of a mole of photons at 1 nm: N_A h c in SI 2019 is 0.1196266 J m.
    private const double WattsNmPerMicromolePerS = 119.6266;

    private static readonly string[] Counts = ["cts", "cps", "adc", "adu", "dn", "digits"];

    private static readonly string[] CountStems =
    [
        "count",
        "zählrate",
        "impuls",
        "импульс",
        "отсчет",
        "отсчёт",
        "计数",
        "カウント",
        "카운트",
    ];

    private static readonly string[] RelativeStems =
    [
        "rel",
        "norm",
        "a.u.",
        "arb",
        "%",
        "отн.",
        "相对",
        "相対",
    ];

    /// <summary>The unit that a text tells: what it counts, the factor to W/(m² nm) or to nothing, whether it counts photons.</summary>
    public static LightUnit? Of(string name)
    {
        string text = HeaderUnits.Plain(name);
        return text.Contains("umol", StringComparison.Ordinal)
            || text.Contains("photons", StringComparison.Ordinal)
                ? new("photons", SpectralUnit.Relative, WattsNmPerMicromolePerS, IsPhotons: true)
            : MayHoldWatt(text) && PowerOf(text) is { } power ? power
            : Array.Exists(CountStems, s => text.Contains(s, StringComparison.Ordinal))
            || Array.Exists(Counts, s => HeaderWords.StandsAlone(text, s))
                ? new("counts", SpectralUnit.Counts, 1)
            : Array.Exists(RelativeStems, s => text.Contains(s, StringComparison.Ordinal))
                ? new("relative", SpectralUnit.Relative, 1)
            : null;
    }

    /// <summary>A text that speaks of a number is no name of a unit: 'total 3.2 W/m²'.</summary>
    public static bool HoldsNumber(string line)
    {
        for (int i = 0; i < line.Length; i++)
        {
            // The digit of 'm²', 'cm^2', 'nm-1' is none.
            if (
                char.IsAsciiDigit(line[i])
                && (i == 0 || !(char.IsLetter(line[i - 1]) || line[i - 1] is '^' or '/' or '-'))
            )
            {
                return true;
            }
        }
        return false;
    }

    // Most headers speak of wavelengths: they need no pattern.
    private static bool MayHoldWatt(string text)
    {
        for (int at = text.IndexOf('w'); at >= 0; at = text.IndexOf('w', at + 1))
        {
            var behind = text.AsSpan(at + 1);
            bool isWord =
                behind.Length >= 3
                && char.IsLetter(behind[0])
                && char.IsLetter(behind[1])
                && char.IsLetter(behind[2]);
            if (!isWord || behind.StartsWith("att", StringComparison.Ordinal))
            {
                return true;
            }
        }
        return false;
    }

    private static LightUnit? PowerOf(string text)
    {
        foreach (Match match in Watt().Matches(text))
        {
            string rest = Between().Replace(text[(match.Index + match.Length)..], " ");
            rest = Words().Replace(rest, m => m.Value[0] == 's' ? "m2" : "nm");
            Match area = Area().Match(rest);
            if (!area.Success || rest.Contains("sr", StringComparison.Ordinal))
            {
                // Radiance and the flux of a whole lamp are no irradiance; their colour is the same.
                if (area.Success || FirstLength().IsMatch(rest))
                {
                    return new(area.Success ? "radiance" : "W/nm", SpectralUnit.Relative, 1);
                }
                continue;
            }
            string metres = area.Groups["area"].Value;
            string length = Length().Match(rest.Remove(area.Groups["area"].Index, metres.Length)).Value;
            if (PowerOfTen().IsMatch(text[..match.Index]) || length.Any(char.IsAsciiDigit))
            {
                return new("a power of ten beside the unit, not read", SpectralUnit.Relative, 1);
            }
            string prefix = match.Groups["prefix"].Value;
            bool isPerMicrometre = length.StartsWith('u');
            var (perM2, areaWord) = AreaOf(metres);
            return new(
                $"{prefix.Replace('u', 'µ')}W/{areaWord}{(metres[^1] == '3' ? "" : isPerMicrometre ? "/µm" : "/nm")}",
                SpectralUnit.WPerM2Nm,
                perM2 * FactorOf(prefix) * (isPerMicrometre ? 1e-3 : 1)
            );
        }
        return null;
    }

    private static (double PerM2, string Word) AreaOf(string metres) =>
        metres switch
        {
            ['c', ..] => (1e4, "cm²"),
            ['m', 'm', ..] => (1e6, "mm²"),
            [.., '3'] => (1e-9, "m³"),
            _ => (1, "m²"),
        };

    private static double FactorOf(string prefix) =>
        prefix switch
        {
            "n" or "nano" => 1e-9,
            "u" or "micro" => 1e-6,
            "m" or "milli" => 1e-3,
            "k" or "kilo" => 1e3,
            _ => 1,
        };

    [GeneratedRegex(
        @"(?<![\p{L}\d])(?<prefix>[numk]|nano|micro|milli|kilo)?(?:watts?|w)(?!atts|\p{L}\p{L}\p{L})"
    )]
    private static partial Regex Watt();

    // What people put between units.
    [GeneratedRegex(@"[\s^·*⋅._({/)\]]+|per ")]
    private static partial Regex Between();

    [GeneratedRegex("(?:square|sq) ?(?:metre|meter|m)s?|nanomet(?:re|er)s?")]
    private static partial Regex Words();

    [GeneratedRegex(@"^ *(?:(?:sr|nm|um)(?:-1)? *)*(?<area>[cm]?m ?-?[23])")]
    private static partial Regex Area();

    [GeneratedRegex("^ *[nu]m")]
    private static partial Regex FirstLength();

    [GeneratedRegex(@"(?:\d+ ?)?[nu]m")]
    private static partial Regex Length();

    // '×10⁻³ W/m²/nm', '1E-3 W/m²/nm': whether it multiplies the values or divides them nobody knows.
    [GeneratedRegex(@"10 ?\^? ?[({]?[-+]?\d{1,2}[)}]?[^\p{L}]*$|1e[-+]?\d+[^\p{L}]*$")]
    private static partial Regex PowerOfTen();
}
