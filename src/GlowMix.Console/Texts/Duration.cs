namespace GlowMix.Console.Texts;

/// <summary>Minutes in words, two digits: minutes to three hours, hours to two days, days to two years, then years.</summary>
internal static class Duration
{
    /// <summary>The model looks no further: 10⁷ min.</summary>
    private const double LongestMinutes = 1e7;

    private const double MinutesPerHour = 60;
    private const double MinutesPerDay = 24 * MinutesPerHour;
    private const double MinutesPerYear = 365.25 * MinutesPerDay;
    private const double HoursFromMinutes = 3 * MinutesPerHour;
    private const double DaysFromMinutes = 2 * MinutesPerDay;
    private const double YearsFromMinutes = 2 * MinutesPerYear;

    /// <summary>Number and unit: '25 min', '4.2 h', '3.9 days', 'under 1 min', 'over 19 years'.</summary>
    public static string Of(double? minutes)
    {
        var (number, unit) = Parts(minutes);
        return unit.Length == 0 ? number : $"{number} {unit}";
    }

    /// <summary>Number and unit apart, so that a row of times can name a common unit once; what has no unit has an empty one.</summary>
    public static (string Number, string Unit) Parts(double? minutes) =>
        minutes switch
        {
            null => (Digits.None, ""),
            0 => ("0", "min"),
            < 1 => ("under 1", "min"),
            < HoursFromMinutes => (Digits.Two(minutes), "min"),
            < DaysFromMinutes => (Digits.Two(minutes / MinutesPerHour), "h"),
            < YearsFromMinutes => (Digits.Two(minutes / MinutesPerDay), "days"),
            >= LongestMinutes => ("over 19", "years"),
            _ => (Digits.Two(minutes / MinutesPerYear), "years"),
        };
}
