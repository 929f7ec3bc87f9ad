namespace GlowMix.Readings.Files;

/// <summary>What words of a header mean, in the languages that instruments speak.</summary>
internal static class HeaderWords
{
    private const int ShortWord = 3;

    private static readonly string[] Wavelength = Words(
        "wavelength|wave length|wavel|lambda|λ|wellenl|longueur d|longitud de onda|lunghezza d|"
            + "golflengte|våglängd|vaglangd|bølgel|bolgel|aallonpit|comprimento de onda|długość fal|"
            + "dlugosc fal|vlnov|vlnová|hullámh|hullamh|длина волны|длины волн|波长|波長|파장|dalga boyu|wl"
    );

    private static readonly string[] Time = Words(
        "time|zeit|temps|tiempo|tempo|tijd|tid|czas|время|时间|時間|elapsed|duration|minute|second|sekund|"
            + "hour|stunde|heure|clock|uhr|t|s|sec|min|h|hh:mm|h:mm"
    );

    private static readonly string[] Net = Words(
        "net|netto|corrected|korrigiert|corrig|minus|subtracted|bereinigt|difference|neto|netta"
    );

    private static readonly string[] NotNet = ["uncorrected", "unkorrigiert", "not corrected"];

    private static readonly string[] Raw = Words(
        "raw|roh|brut|brute|crudo|grezz|scope|uncorrected|unkorrigiert|bruto"
    );

    private static readonly string[] Dark = Words(
        "dark|dunkel|background|untergrund|hintergrund|noir|obscur|fond|oscur|buio|mörk|donker|темн|"
            + "темнов|暗|bkg|bg|baseline|escuro|tmav|ciemn"
    );

    private static readonly string[] Reference = Words(
        "reference|referenz|référence|referencia|riferimento|ref|white|weiss|weiß|blank"
    );

    private static readonly string[] Share = Words(
        "transmi|reflect|reflex|réflect|remission|absorb|extinkt|extinction|optical density|%t|%r|od"
    );

    private static readonly string[] Aside = Words(
        "std|stdev|sigma|error|fehler|uncert|unsicher|deviation|abweichung|rms|snr|flag|status|"
            + "temperatur|quality|±|date|datum|+/-|fecha|remark|comment|bemerkung"
    );

    private static readonly string[] Index = Words(
        "index|pixel|pix|no|no.|nr|nr.|n°|#|kanal|channel|canal|row|zeile|id|num|punkt|point|lfd"
    );

    private static readonly string[] Light = Words(
        "irradiance|intensi|power|leistung|puissance|potencia|spectrum|spektrum|spectre|spectral|"
            + "spektral|signal|sample|count|cts|cps|zählrate|value|wert|valeur|valor|bestrahlung|radian|"
            + "strahl|flux|emission|relative|relativ|amplitude|probe|licht|light|lumière|energy|energie|"
            + "énergie|éclairement|irradian|luminan|leuchtdichte|illuminan|beleuchtung|lux|lx|mcd|cd/m|w/m|"
            + "w m|uw|µw|mw|a.u.|arb|adc|adu|y|i|e|мощность|интенсивность|强度|強度|luminosi|helligkeit|glow|signaal|"
            + "señal|segnale"
    );

    /// <summary>What a column's name says.</summary>
    public static ColumnRole RoleOf(string name)
    {
        string text = name.ToLowerInvariant();
        return text.Length == 0 ? ColumnRole.Unknown
            : Has(text, Wavelength) ? ColumnRole.Wavelength
            : Has(text, Net) && !Has(text, NotNet) || IsDifference(text) ? ColumnRole.Net
            : Has(text, Raw) ? ColumnRole.Raw
            : Has(text, Dark) ? ColumnRole.Dark
            : Has(text, Aside) ? ColumnRole.Aside
            : Has(text, Share) ? ColumnRole.Share
            : Has(text, Reference) ? ColumnRole.Reference
            : HeaderUnits.LengthOf(text) is not null ? ColumnRole.Wavelength
            : Has(text, Light) ? ColumnRole.Light
            : Has(text, Time) ? ColumnRole.Time
            : Has(text, Index) ? ColumnRole.Index
            : ColumnRole.Unknown;
    }

    /// <summary>'Scope-Dark', 'S − D': something minus its dark reading.</summary>
    private static bool IsDifference(string text)
    {
        int minus = text.IndexOfAny(['-', '\u2212', '\u2013']);
        return minus > 0 && Has(text[(minus + 1)..], Dark) && !Has(text[..minus], Dark);
    }

    private static string[] Words(string all) => all.Split('|');

    /// <summary>The text holds one of the words; a short one must stand by itself.</summary>
    private static bool Has(string text, string[] words)
    {
        foreach (string word in words)
        {
            if (
                text.Contains(word, StringComparison.Ordinal)
                && (word.Length > ShortWord || StandsAlone(text, word))
            )
            {
                return true;
            }
        }
        return false;
    }

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
}
