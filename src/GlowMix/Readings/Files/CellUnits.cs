using System.Collections.Frozen;

namespace GlowMix.Readings.Files;

/// <summary>Units that may stand behind a number in its own cell.</summary>
internal static class CellUnits
{
    private static readonly FrozenDictionary<string, double> Minutes = Times(
        (1.0 / 60_000, "ms|msec|millis|milliseconds|millisekunden"),
        (
            1.0 / 60,
            "s|s.|sec|sec.|secs|second|seconds|sek|sek.|sekunde|sekunden|seconde|secondes|seg|segundo|segundos|secondi"
        ),
        (1.0 / 60, "с|сек|сек.|секунд|秒|초"),
        (
            1,
            "min|min.|mins|minute|minutes|minuten|minuto|minutos|minuti|minuut|minut|мин|мин.|минут|分|分钟|분"
        ),
        (1440, "d|day|days|tag|tage|jour|jours|сут|天|日"),
        (
            60,
            "h|hr|hrs|hour|hours|std|std.|stunde|stunden|heure|heures|hora|horas|ora|ore|uur|ч|час|часов|小时|時間|시간"
        )
    );

    private static readonly FrozenSet<string> Others = (
        "nm|um|µm|μm|å|pm|angstrom|%|lx|lux|mlx|klx|mcd/m²|mcd/m2|mcd/m^2|cd/m²|cd/m2|cd/m^2|µcd/m²|ucd/m2|mcd|nit|nits|counts|count|cts"
        + "|cps|counts/s|unit|units|a.u.|au|arb.|arb.u.|rel.|einheiten|dn|adu|lm|mlm"
    )
        .Split('|')
        .ToFrozenSet();

    private static readonly FrozenDictionary<string, double>.AlternateLookup<ReadOnlySpan<char>> MinutesOf =
        Minutes.GetAlternateLookup<ReadOnlySpan<char>>();

    private static readonly FrozenSet<string>.AlternateLookup<ReadOnlySpan<char>> OtherUnits =
        Others.GetAlternateLookup<ReadOnlySpan<char>>();

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
        return OtherUnits.Contains(small) || MinutesOf.ContainsKey(small) || IsPower(text);
    }

    /// <summary>Minutes of a unit of time; null where it is none.</summary>
    public static double? MinutesIn(ReadOnlySpan<char> unit)
    {
        if (unit.Length is 0 or > LongestUnit)
        {
            return null;
        }
        Span<char> small = stackalloc char[LongestUnit];
        return MinutesOf.TryGetValue(small[..unit.ToLowerInvariant(small)], out double minutes)
            ? minutes
            : null;
    }

    private static FrozenDictionary<string, double> Times(params (double Minutes, string Words)[] units) =>
        units
            .SelectMany(u => u.Words.Split('|').Select(w => KeyValuePair.Create(w, u.Minutes)))
            .ToFrozenDictionary();

    // 'W', 'mW', 'µW/cm²/nm': what is per what is told by the header or not at all.
    private static bool IsPower(ReadOnlySpan<char> text)
    {
        var watts = text is ['m' or 'u' or 'µ' or 'μ' or 'n', .. var rest] ? rest : text;
        return watts is ['W' or 'w'] or ['W' or 'w', '/' or ' ' or '·' or '*', ..];
    }
}
