using System.Text;

namespace GlowMix.Readings.Files;

/// <summary>Units in the words of a header, however they are typed.</summary>
internal static class HeaderUnits
{
    // Joules of a mole of photons at 1 nm: N_A h c in SI 2019 is 0.1196266 J m.
    private const double WattsNmPerMicromolePerS = 119.6266;

    /// <summary>The unit of wavelengths that a name tells; null without one, or where the name counts something per nm.</summary>
    public static LengthUnit? LengthOf(string name)
    {
        string text = Plain(name);
        return IsLength(text, "nm") || text.Contains("nanom", StringComparison.Ordinal) ? LengthUnit.Nanometre
            : IsLength(text, "um")
            || text.Contains("microm", StringComparison.Ordinal)
            || text.Contains("mikrom", StringComparison.Ordinal)
                ? LengthUnit.Micrometre
            : HeaderWords.StandsAlone(text, "å") || text.Contains("angstr", StringComparison.Ordinal)
                ? LengthUnit.Angstrom
            : text.EndsWith("[m]", StringComparison.Ordinal) || text.EndsWith("(m)", StringComparison.Ordinal)
                ? LengthUnit.Metre
            : null;
    }

    /// <summary>The unit of light that a text tells: what it counts, the factor to W/(m² nm) or to nothing, whether it counts photons.</summary>
    public static LightUnit? LightOf(string name)
    {
        string text = Compact(name);
        if (
            text.Contains("umol", StringComparison.Ordinal)
            || text.Contains("photons", StringComparison.Ordinal)
        )
        {
            return new("photons", Readings.SpectralUnit.Relative, WattsNmPerMicromolePerS, IsPhotons: true);
        }
        // Radiance and the flux of a whole lamp are no irradiance; their colour is the same.
        bool isIrradiance = !text.Contains("sr", StringComparison.Ordinal);
        double perNm =
            text.Contains("/um", StringComparison.Ordinal) || text.Contains("um-1", StringComparison.Ordinal)
                ? 1e-3
                : 1;
        foreach (var (unit, factor) in Powers)
        {
            if (text.Contains(unit, StringComparison.Ordinal))
            {
                return isIrradiance
                    ? new(NameOf(unit, perNm == 1), Readings.SpectralUnit.WPerM2Nm, factor * perNm)
                    : new("radiance", Readings.SpectralUnit.Relative, 1);
            }
        }
        string lower = Plain(name);
        return lower.Contains("count", StringComparison.Ordinal)
            || HeaderWords.StandsAlone(lower, "cts")
            || HeaderWords.StandsAlone(lower, "cps")
            || lower.Contains("zählrate", StringComparison.Ordinal)
            || HeaderWords.StandsAlone(lower, "adc")
            || HeaderWords.StandsAlone(lower, "adu")
            || HeaderWords.StandsAlone(lower, "dn")
            || HeaderWords.StandsAlone(lower, "digits")
                ? new("counts", Readings.SpectralUnit.Counts, 1)
            : lower.Contains("rel", StringComparison.Ordinal)
            || lower.Contains("norm", StringComparison.Ordinal)
            || lower.Contains("a.u.", StringComparison.Ordinal)
            || lower.Contains("arb", StringComparison.Ordinal)
            || lower.Contains('%')
                ? new("relative", Readings.SpectralUnit.Relative, 1)
            : text.Contains("w/nm", StringComparison.Ordinal)
            || text.Contains("wnm-1", StringComparison.Ordinal)
                ? new("W/nm", Readings.SpectralUnit.Relative, 1)
            : null;
    }

    /// <summary>Two units of one sort are the same, however they are typed.</summary>
    public static bool AreSame(string one, string other) =>
        LengthOf(one) == LengthOf(other) && LightOf(one) == LightOf(other) && DecayOf(one) == DecayOf(other);

    /// <summary>The unit of times that a name tells.</summary>
    public static TimeUnit? TimeOf(string name)
    {
        string text = Plain(name);
        return Alone(text, "min", "mins") || Starts(text, "minut") ? TimeUnit.Minute
            : Alone(text, "s", "sec", "secs", "sek", "seg")
            || Starts(text, "second", "sekund", "segund", "секунд")
                ? TimeUnit.Second
            : Alone(text, "h", "hr", "hrs", "std") || Starts(text, "hour", "stunde", "heure", "hora")
                ? TimeUnit.Hour
            : null;
    }

    /// <summary>The unit of the light of a decay, and the factor to mcd/m² or lx.</summary>
    public static (DecayUnit Unit, double Factor)? DecayOf(string name)
    {
        string text = Compact(name);
        return text.Contains("mcd", StringComparison.Ordinal) ? (DecayUnit.McdPerM2, 1)
            : text.Contains("ucd/m2", StringComparison.Ordinal) ? (DecayUnit.McdPerM2, 1e-3)
            : text.Contains("cd/m2", StringComparison.Ordinal)
            || text.Contains("cdm-2", StringComparison.Ordinal)
            || Alone(Plain(name), "nit", "nits")
                ? (DecayUnit.McdPerM2, 1e3)
            : Alone(Plain(name), "mlx", "mlux") ? (DecayUnit.Lux, 1e-3)
            : Alone(Plain(name), "klx", "klux") ? (DecayUnit.Lux, 1e3)
            : Alone(Plain(name), "lx", "lux") || Starts(text, "illuminan", "beleuchtung", "éclairement")
                ? (DecayUnit.Lux, 1)
            : text.Contains("rel", StringComparison.Ordinal)
            || text.Contains("norm", StringComparison.Ordinal)
            || text.Contains("a.u.", StringComparison.Ordinal)
            || text.Contains('%')
                ? (DecayUnit.Relative, 1)
            : null;
    }

    // Per m² and nm; the longer words stand first, for they hold the shorter ones.
    private static readonly (string Unit, double WPerM2)[] Powers =
    [
        ("uw/cm2", 1e-2),
        ("uwcm-2", 1e-2),
        ("uw/(cm2", 1e-2),
        ("mw/cm2", 10),
        ("mwcm-2", 10),
        ("mw/(cm2", 10),
        ("w/cm2", 1e4),
        ("wcm-2", 1e4),
        ("uw/m2", 1e-6),
        ("uwm-2", 1e-6),
        ("uw/(m2", 1e-6),
        ("mw/m2", 1e-3),
        ("mwm-2", 1e-3),
        ("mw/(m2", 1e-3),
        ("w/m2", 1),
        ("wm-2", 1),
        ("w/(m2", 1),
    ];

    // 'uwcm-2' as people write it.
    private static string NameOf(string unit, bool isPerNm)
    {
        string watts = unit[..unit.IndexOf('w', StringComparison.Ordinal)] switch
        {
            "u" => "µW",
            "m" => "mW",
            _ => "W",
        };
        return $"{watts}/{(unit.Contains("cm", StringComparison.Ordinal) ? "cm²" : "m²")}/{(isPerNm ? "nm" : "µm")}";
    }

    /// <summary>Lower case, with µ as u, raised digits on the line, and a minus as a hyphen.</summary>
    private static string Plain(string name)
    {
        var text = new StringBuilder(name.Length);
        foreach (char c in name.ToLowerInvariant())
        {
            text.Append(
                c switch
                {
                    'µ' or 'μ' => 'u',
                    '²' => '2',
                    '³' => '3',
                    '¹' => '1',
                    '⁻' or '−' or '–' => '-',
                    '\u212B' => 'å',
                    _ => c,
                }
            );
        }
        return text.ToString();
    }

    /// <summary>The same without what people put between units.</summary>
    private static string Compact(string name) =>
        Plain(name)
            .Replace("^", "", StringComparison.Ordinal)
            .Replace(" ", "", StringComparison.Ordinal)
            .Replace("·", "", StringComparison.Ordinal)
            .Replace("*", "", StringComparison.Ordinal)
            .Replace("⋅", "", StringComparison.Ordinal)
            .Replace("_", "", StringComparison.Ordinal);

    // 'nm' of '[nm]' or 'lambda_nm', but not of '/nm' or 'nm-1'.
    private static bool IsLength(string text, string unit)
    {
        for (
            int at = text.IndexOf(unit, StringComparison.Ordinal);
            at >= 0;
            at = text.IndexOf(unit, at + 1, StringComparison.Ordinal)
        )
        {
            int end = at + unit.Length;
            string before = text[..at].TrimEnd();
            bool isPer =
                before.EndsWith('/') && !IsWavelength(before)
                || before.EndsWith("per", StringComparison.Ordinal)
                || before.EndsWith('*')
                || before.EndsWith('·')
                || before.EndsWith("m2", StringComparison.Ordinal)
                || before.EndsWith("-2", StringComparison.Ordinal);
            bool isPower = end < text.Length && (text[end] is '-' or '^');
            bool startsAlone = at == 0 || !char.IsLetterOrDigit(text[at - 1]);
            bool endsAlone = end == text.Length || !char.IsLetterOrDigit(text[end]);
            if (startsAlone && endsAlone && !isPer && !isPower)
            {
                return true;
            }
        }
        return false;
    }

    // 'λ/nm': a quantity divided by its unit, as standards write it.
    private static bool IsWavelength(string text)
    {
        string folded = HeaderFold.Of(text);
        return HeaderWords.Has(folded, HeaderVocabulary.Wavelength) || folded is "λ/" or "lambda/" or "l/";
    }

    private static bool Alone(string text, params ReadOnlySpan<string> words)
    {
        foreach (string word in words)
        {
            if (HeaderWords.StandsAlone(text, word))
            {
                return true;
            }
        }
        return false;
    }

    private static bool Starts(string text, params ReadOnlySpan<string> words)
    {
        foreach (string word in words)
        {
            if (text.Contains(word, StringComparison.Ordinal))
            {
                return true;
            }
        }
        return false;
    }
}
