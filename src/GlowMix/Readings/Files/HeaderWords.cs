namespace GlowMix.Readings.Files;

/// <summary>What words of a header mean, by the lists of <see cref="HeaderVocabulary"/>.</summary>
internal static class HeaderWords
{
    private const int ShortWord = 3;

    // From here on a letter is a syllable or a word.
    private const char FirstSyllable = '\u0E00';

    /// <summary>What a column's name says.</summary>
    public static ColumnRole RoleOf(string name)
    {
        string text = HeaderFold.Of(name);
        return text.Length == 0 ? ColumnRole.Unknown
            : OfCapital(name.Trim()) is { } role ? role
            : Has(text, HeaderVocabulary.Wavelength) ? ColumnRole.Wavelength
            : Has(text, HeaderVocabulary.Weighted) ? ColumnRole.Weighted
            : Has(text, HeaderVocabulary.Aside) ? ColumnRole.Aside
            : Has(text, HeaderVocabulary.Lambda) ? RoleOfLambda(text)
            : IsTimeWithUnit(text) ? ColumnRole.Time
            : Has(text, HeaderVocabulary.Net) && !Has(text, HeaderVocabulary.NotNet) || IsDifference(text)
                ? ColumnRole.Net
            : Has(text, HeaderVocabulary.Raw) ? ColumnRole.Raw
            : IsDark(text) ? ColumnRole.Dark
            : Has(text, HeaderVocabulary.Logarithm) ? ColumnRole.Logarithm
            : Has(text, HeaderVocabulary.OtherScale) ? ColumnRole.OtherScale
            : Has(text, HeaderVocabulary.Share) ? ColumnRole.Share
            : Has(text, HeaderVocabulary.Mean) ? ColumnRole.Mean
            : Has(text, HeaderVocabulary.Reference) ? ColumnRole.Reference
            : LightUnits.Of(name) is { Unit: SpectralUnit.WPerM2Nm } ? ColumnRole.Light
            : HeaderUnits.LengthOf(name) is not null ? ColumnRole.Wavelength
            : Has(text, HeaderVocabulary.Light) || LightUnits.Of(name) is not null ? ColumnRole.Light
            : Has(text, HeaderVocabulary.Time) ? ColumnRole.Time
            : Has(text, HeaderVocabulary.Index) ? ColumnRole.Index
            : ColumnRole.Unknown;
    }

    // Capitals are no units: S is the sample and not the second.
    private static ColumnRole? OfCapital(string name) =>
        name switch
        {
            "S" => ColumnRole.Light,
            "D" => ColumnRole.Dark,
            "T" => ColumnRole.Unknown,
            "MW" => ColumnRole.Mean,
            _ => null,
        };

    /// <summary>A word with no letter or digit at either side.</summary>
    public static bool StandsAlone(string text, string word)
    {
        for (
            int at = text.IndexOf(word, StringComparison.Ordinal);
            at >= 0;
            at = text.IndexOf(word, at + 1, StringComparison.Ordinal)
        )
        {
            int end = at + word.Length;
            if (
                (at == 0 || !char.IsLetterOrDigit(text[at - 1]))
                && (end == text.Length || !char.IsLetterOrDigit(text[end]))
            )
            {
                return true;
            }
        }
        return false;
    }

    /// <summary>A folded text holds one of the words; a short one must stand by itself, but for syllables.</summary>
    public static bool Has(string text, string[] words)
    {
        foreach (string word in words)
        {
            if (
                text.Contains(word, StringComparison.Ordinal)
                && (word.Length > ShortWord || word[0] >= FirstSyllable || StandsAlone(text, word))
            )
            {
                return true;
            }
        }
        return false;
    }

    // 'λ (nm)' is a wavelength; 'E(λ)', 'S_λ' and 'I λ' are what depends on one.
    private static ColumnRole RoleOfLambda(string text)
    {
        string before = text[..Math.Max(text.IndexOf('λ'), text.IndexOf("lambda", StringComparison.Ordinal))]
            .TrimEnd('(', '[', '_', ' ', ',', '{');
        return before.Length == 0 || !char.IsLetter(before[^1]) ? ColumnRole.Wavelength
            : before is "t" or "r" or "ρ" or "τ" ? ColumnRole.Share
            : before is "a" ? ColumnRole.Logarithm
            : ColumnRole.Light;
    }

    // 'Minutes in the dark' are times; 'dark (100 ms)' is none, nor are 'counts (100 ms)'.
    private static bool IsTimeWithUnit(string text) =>
        Has(text, HeaderVocabulary.Time)
        && HeaderUnits.TimeOf(text) is not null
        && !LightUnits.HoldsNumber(text)
        && !Has(text, HeaderVocabulary.Light);

    /// <summary>'Scope-Dark', 'S − D': something minus its dark reading.</summary>
    private static bool IsDifference(string text)
    {
        int minus = text.IndexOfAny(['-', '\u2212', '\u2013']);
        return minus > 0 && IsDark(text[(minus + 1)..]) && !IsDark(text[..minus]);
    }

    private static bool IsDark(string text) =>
        Has(text, HeaderVocabulary.Dark) && !Has(text, HeaderVocabulary.NotDark);
}
