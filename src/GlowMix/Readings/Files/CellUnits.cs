namespace GlowMix.Readings.Files;

/// <summary>Units that may stand behind a number in its own cell.</summary>
internal static class CellUnits
{
    private const int LongestUnit = 16;

    /// <summary>The text is such a unit.</summary>
    public static bool IsKnown(ReadOnlySpan<char> text)
    {
        if (text.Length is 0 or > LongestUnit)
        {
            return false;
        }
        Span<char> small = stackalloc char[LongestUnit];
        small = small[..text.ToLowerInvariant(small)];
        return IsOfLight(small) || MinutesOf(small) is not null || IsPower(text);
    }

    /// <summary>Minutes of a unit of time; null where it is none.</summary>
    public static double? MinutesIn(ReadOnlySpan<char> unit)
    {
        if (unit.Length is 0 or > LongestUnit)
        {
            return null;
        }
        Span<char> small = stackalloc char[LongestUnit];
        return MinutesOf(small[..unit.ToLowerInvariant(small)]);
    }

    private static double? MinutesOf(ReadOnlySpan<char> unit) =>
        unit switch
        {
            "ms" or "msec" or "millis" or "milliseconds" or "millisekunden" => 1.0 / 60_000,
            "s"
            or "s."
            or "sec"
            or "sec."
            or "secs"
            or "second"
            or "seconds"
            or "sek"
            or "sek."
            or "sekunde"
            or "sekunden"
            or "seconde"
            or "secondes"
            or "seg"
            or "segundo"
            or "segundos"
            or "secondi" => 1.0 / 60,
            "с" or "сек" or "сек." or "секунд" or "秒" or "초" => 1.0 / 60,
            "min"
            or "min."
            or "mins"
            or "minute"
            or "minutes"
            or "minuten"
            or "minuto"
            or "minutos"
            or "minuti"
            or "minuut"
            or "minut"
            or "мин"
            or "мин."
            or "минут"
            or "分"
            or "分钟"
            or "분" => 1,
            "d" or "day" or "days" or "tag" or "tage" or "jour" or "jours" or "сут" or "天" or "日" => 1440,
            "h"
            or "hr"
            or "hrs"
            or "hour"
            or "hours"
            or "std"
            or "std."
            or "stunde"
            or "stunden"
            or "heure"
            or "heures"
            or "hora"
            or "horas"
            or "ora"
            or "ore"
            or "uur"
            or "ч"
            or "час"
            or "часов"
            or "小时"
            or "時間"
            or "시간" => 60,
            _ => null,
        };

    private static bool IsOfLight(ReadOnlySpan<char> unit) =>
        unit
            is "nm"
                or "um"
                or "µm"
                or "μm"
                or "å"
                or "pm"
                or "angstrom"
                or "%"
                or "lx"
                or "lux"
                or "mlx"
                or "klx"
                or "mcd/m²"
                or "mcd/m2"
                or "mcd/m^2"
                or "cd/m²"
                or "cd/m2"
                or "cd/m^2"
                or "µcd/m²"
                or "ucd/m2"
                or "mcd"
                or "nit"
                or "nits"
                or "counts"
                or "count"
                or "cts"
                or "cps"
                or "counts/s"
                or "unit"
                or "units"
                or "a.u."
                or "au"
                or "arb."
                or "arb.u."
                or "rel."
                or "einheiten"
                or "dn"
                or "adu"
                or "lm"
                or "mlm";

    // 'W', 'mW', 'µW/cm²/nm': what is per what is told by the header or not at all.
    private static bool IsPower(ReadOnlySpan<char> text)
    {
        var watts = text is ['m' or 'u' or 'µ' or 'μ' or 'n', .. var rest] ? rest : text;
        return watts is ['W' or 'w'] or ['W' or 'w', '/' or ' ' or '·' or '*', ..];
    }
}
