using System.Text;

namespace GlowMix.Readings.Files;

/// <summary>Units in the words of a header, however they are typed.</summary>
internal static class HeaderUnits
{
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
            : text.EndsWith("(a)", StringComparison.Ordinal) || text.EndsWith("[a]", StringComparison.Ordinal)
                ? LengthUnit.Angstrom
            : text.EndsWith("[m]", StringComparison.Ordinal) || text.EndsWith("(m)", StringComparison.Ordinal)
                ? LengthUnit.Metre
            : null;
    }

    /// <summary>Two units of one sort are the same, however they are typed.</summary>
    public static bool AreSame(string one, string other) =>
        LengthOf(one) == LengthOf(other)
        && LightUnits.Of(one) == LightUnits.Of(other)
        && DecayOf(one) == DecayOf(other);

    /// <summary>The unit of times that a name tells: minutes, and its word.</summary>
    public static (double Minutes, string Word)? TimeOf(string name)
    {
        // The unit stands behind the quantity: 't (s)'.
        string text = Plain(name);
        for (int end = text.Length; end > 0; end--)
        {
            int start = end;
            while (start > 0 && char.IsLetter(text[start - 1]))
            {
                start--;
            }
            if (start < end && CellUnits.MinutesIn(text.AsSpan(start, end - start)) is { } minutes)
            {
                return (minutes, text[start..end]);
            }
            end = Math.Min(end, start + 1);
        }
        return null;
    }

    /// <summary>The unit of the light of a decay, and the factor to mcd/m² or lx.</summary>
    public static (DecayUnit Unit, double Factor)? DecayOf(string name)
    {
        string text = Compact(name);
        foreach (var (word, unit, factor) in DecayWords)
        {
            if (
                word.Length > 4
                    ? text.Contains(word, StringComparison.Ordinal)
                    : HeaderWords.StandsAlone(Plain(name), word)
            )
            {
                return (unit, factor);
            }
        }
        return null;
    }

    // The first that is found; those of up to four letters stand by themselves.
    private static readonly (string Word, DecayUnit Unit, double Factor)[] DecayWords =
    [
        ("ucd/m2", DecayUnit.McdPerM2, 1e-3),
        ("mcd/m", DecayUnit.McdPerM2, 1),
        ("mcdm-2", DecayUnit.McdPerM2, 1),
        ("mcdm2", DecayUnit.McdPerM2, 1),
        ("mcd", DecayUnit.McdPerM2, 1),
        ("millicandela", DecayUnit.McdPerM2, 1),
        ("мккд/м", DecayUnit.McdPerM2, 1e-3),
        ("мкд/м", DecayUnit.McdPerM2, 1),
        ("毫坎德拉", DecayUnit.McdPerM2, 1),
        ("ミリカンデラ", DecayUnit.McdPerM2, 1),
        ("cd/m2", DecayUnit.McdPerM2, 1e3),
        ("cdm-2", DecayUnit.McdPerM2, 1e3),
        ("candela", DecayUnit.McdPerM2, 1e3),
        ("nit", DecayUnit.McdPerM2, 1e3),
        ("nits", DecayUnit.McdPerM2, 1e3),
        ("mlx", DecayUnit.Lux, 1e-3),
        ("mlux", DecayUnit.Lux, 1e-3),
        ("millilux", DecayUnit.Lux, 1e-3),
        ("klx", DecayUnit.Lux, 1e3),
        ("klux", DecayUnit.Lux, 1e3),
        ("kilolux", DecayUnit.Lux, 1e3),
        ("lx", DecayUnit.Lux, 1),
        ("lux", DecayUnit.Lux, 1),
        ("лк", DecayUnit.Lux, 1),
        ("勒克斯", DecayUnit.Lux, 1),
        ("ルクス", DecayUnit.Lux, 1),
        ("illuminan", DecayUnit.Lux, 1),
        ("beleuchtung", DecayUnit.Lux, 1),
        ("éclairement", DecayUnit.Lux, 1),
        ("relat", DecayUnit.Relative, 1),
        ("rel.", DecayUnit.Relative, 1),
        ("rel", DecayUnit.Relative, 1),
        ("normal", DecayUnit.Relative, 1),
        ("norm", DecayUnit.Relative, 1),
        ("a.u.", DecayUnit.Relative, 1),
        ("%", DecayUnit.Relative, 1),
    ];

    /// <summary>Lower case, with µ as u, raised digits on the line, and a minus as a hyphen.</summary>
    public static string Plain(string name)
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
}
