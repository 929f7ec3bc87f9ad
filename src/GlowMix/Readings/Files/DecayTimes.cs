using GlowMix.Documents;
using GlowMix.Predictions;

namespace GlowMix.Readings.Files;

/// <summary>The unit of the times of a decay: as the user says, as told, else guessed.</summary>
internal sealed class DecayTimes(
    ColumnChoice choice,
    CellTable table,
    ReadingOptions options,
    List<Warning> warnings
)
{
    private const double MinutesPerDay = 1440;
    private const double SecondsPerMinute = 60;
    private const double MinutesPerHour = 60;

    /// <summary>What makes minutes of the times as read, and the unit in words.</summary>
    public (double ToMinutes, string Word) ScaleOf(List<ReadRow> rows)
    {
        if (choice.Along.IsDuration)
        {
            return (1, "told with each");
        }
        if (choice.Along.IsClock)
        {
            return ClockScale(rows);
        }
        if (Told() is { } told)
        {
            return told;
        }
        // A glow is read for hours: what would be more than a day in minutes is seconds.
        bool areSeconds = rows.Max(r => r.Along) > MinutesPerDay;
        warnings.Add(
            new(
                "time_unit_guessed",
                null,
                $"times are taken as {(areSeconds ? "seconds" : "minutes")}; no unit is told, say --time-unit s, min or h"
            )
        );
        return areSeconds ? (1 / SecondsPerMinute, "s") : (1, "min");
    }

    private (double ToMinutes, string Word)? Told() =>
        options.TimeUnit switch
        {
            TimeUnit.Second => (1 / SecondsPerMinute, "s"),
            TimeUnit.Minute => (1, "min"),
            TimeUnit.Hour => (MinutesPerHour, "h"),
            _ => HeaderUnits.TimeOf(choice.Along.Name)
                ?? table
                    .HeaderLines.Where(l =>
                        l.Contains("time", StringComparison.OrdinalIgnoreCase) && !LightUnits.HoldsNumber(l)
                    )
                    .Select(HeaderUnits.TimeOf)
                    .FirstOrDefault(u => u is not null),
        };

    // Three parts are hours, minutes, seconds. Two may be hours and minutes, or minutes and seconds.
    private (double ToMinutes, string Word) ClockScale(List<ReadRow> rows)
    {
        string first = table.TextAt(rows[0].Row, choice.Along.Index);
        if (first.Count(c => c == ':') != 1)
        {
            return (1, "h:mm:ss");
        }
        string name = choice.Along.Name.ToLowerInvariant();
        bool areTold =
            name.Contains("m:ss", StringComparison.Ordinal)
            || name.Contains("min:s", StringComparison.Ordinal);
        bool isTold = areTold || name.Contains("h:mm", StringComparison.Ordinal);
        const double EarlyMorning = 6 * MinutesPerHour;
        bool areSeconds =
            options.TimeUnit is TimeUnit.Minute or TimeUnit.Second
            || areTold
            || (
                options.TimeUnit is null
                && !isTold
                && (rows.Min(r => r.Along) < EarlyMorning || rows.Max(r => r.Along) >= MinutesPerDay)
            );
        if (!isTold && options.TimeUnit is null)
        {
            warnings.Add(
                new(
                    "time_unit_guessed",
                    null,
                    $"times such as {ProblemTexts.Quote(first)} are taken as {(areSeconds ? "minutes and seconds" : "hours and minutes")}; say --time-unit {(areSeconds ? "h for hours and minutes" : "min for minutes and seconds")}"
                )
            );
        }
        return areSeconds ? (1 / SecondsPerMinute, "m:ss") : (1, "h:mm");
    }
}
