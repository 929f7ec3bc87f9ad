using System.Globalization;

namespace GlowMix.Readings.Files;

/// <summary>
/// A cell of a table read as a time of the clock or a duration: h:mm:ss, h:mm, with or without a date in front, AM or PM or the
/// offset of a time zone behind.
/// </summary>
internal static class ClockCell
{
    private const double MinutesPerHour = 60;
    private const double SecondsPerMinute = 60;

    /// <summary>Reads a trimmed cell.</summary>
    /// <param name="cell">The cell; a date in front of the time is passed over.</param>
    /// <param name="minutes">Minutes since 0:00.</param>
    public static bool TryRead(ReadOnlySpan<char> cell, out double minutes)
    {
        bool isHalf = HalfOfDay(ref cell, out bool isAfternoon);
        bool isTime = TryReadTime(cell, out minutes);
        if (!isHalf || !isTime)
        {
            return isTime;
        }
        const double Noon = 12 * MinutesPerHour;
        isTime = minutes < Noon + MinutesPerHour;
        minutes = (minutes % Noon) + (isAfternoon ? Noon : 0);
        return isTime;
    }

    // '8:05 PM', '8:05:30 a.m.'.
    private static bool HalfOfDay(ref ReadOnlySpan<char> cell, out bool isAfternoon)
    {
        isAfternoon = false;
        foreach (string mark in (ReadOnlySpan<string>)["am", "pm", "a.m.", "p.m."])
        {
            if (cell.EndsWith(mark, StringComparison.OrdinalIgnoreCase))
            {
                isAfternoon = mark[0] == 'p';
                cell = cell[..^mark.Length].TrimEnd();
                return true;
            }
        }
        return false;
    }

    private static bool TryReadTime(ReadOnlySpan<char> cell, out double minutes)
    {
        minutes = 0;
        int dateEnd = cell.LastIndexOfAny(' ', 'T');
        if (dateEnd > 0)
        {
            if (!IsDate(cell[..dateEnd]))
            {
                return false;
            }
            cell = cell[(dateEnd + 1)..].TrimEnd('Z');
            // '20:05:00+01:00', the same on every row.
            int zone = cell.IndexOfAny('+', '-');
            cell = zone > 0 ? cell[..zone] : cell;
        }
        int first = cell.IndexOf(':');
        if (first is < 1 or > 3 || !IsWhole(cell[..first], out double hours))
        {
            return false;
        }
        var rest = cell[(first + 1)..];
        int second = rest.IndexOf(':');
        if (second < 0)
        {
            // h:mm.
            if (rest.Length != 2 || !IsWhole(rest, out double only) || only >= MinutesPerHour)
            {
                return false;
            }
            minutes = (hours * MinutesPerHour) + only;
            return true;
        }
        if (
            second is < 1 or > 2
            || !IsWhole(rest[..second], out double wholeMinutes)
            || !NumberCell.TryRead(
                rest[(second + 1)..],
                rest.Contains(',') ? ',' : '.',
                out NumberCell seconds
            )
            || wholeMinutes >= MinutesPerHour
            || seconds.Value is < 0 or >= SecondsPerMinute
        )
        {
            return false;
        }
        minutes = (hours * MinutesPerHour) + wholeMinutes + (seconds.Value / SecondsPerMinute);
        return true;
    }

    /// <summary>A trimmed cell holds a date of digits: 2026-11-25, 25.11.2026, 11/25/2026.</summary>
    public static bool IsDate(ReadOnlySpan<char> cell)
    {
        int digits = 0;
        int marks = 0;
        foreach (char c in cell)
        {
            digits += char.IsAsciiDigit(c) ? 1 : 0;
            marks += c is '-' or '.' or '/' ? 1 : 0;
        }
        return marks == 2 && digits is >= 4 and <= 8 && digits + marks == cell.Length;
    }

    private static bool IsWhole(ReadOnlySpan<char> text, out double number) =>
        double.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number);
}
