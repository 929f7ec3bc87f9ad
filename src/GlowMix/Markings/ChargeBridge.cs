namespace GlowMix.Markings;

/// <summary>The recipe's charge in terms of daylight: which minutes of it bring the same glow after 10 minutes. Likely values. Immutable.</summary>
public sealed record ChargeBridge
{
    /// <summary>Illuminance of the daylight it is put in terms of, lx.</summary>
    public const double DaylightLx = 1000;

    /// <summary>The recipe's charge in words.</summary>
    public required string ChargedBy { get; init; }

    /// <summary>Luminance 10 minutes after the recipe's charge, mcd/m².</summary>
    public required double TenMinuteMcdPerM2 { get; init; }

    /// <summary>
    /// Minutes of 1000 lx daylight, from empty traps, that bring as much; null where that is all it ever brings, to a thousandth,
    /// or more: minutes then say nothing.
    /// </summary>
    public required double? DaylightMinutes { get; init; }

    /// <summary>Minutes of 1000 lx daylight until 90 % of what it ever brings.</summary>
    public required double? DaylightMinutesTo90Percent { get; init; }

    /// <summary>Illuminance × time of the recipe's charge, lx·h; null where its own LEDs shine, whose light falls from below.</summary>
    public required double? LuxHours { get; init; }

    /// <summary>Illuminance × time of that daylight, lx·h.</summary>
    public double? DaylightLuxHours => DaylightMinutes * DaylightLx / 60;

    /// <summary>Minutes of the last light until 90 % of what it can bring; null if it brings nothing.</summary>
    public required double? MinutesTo90Percent { get; init; }

    /// <summary>Minutes of the last light in the recipe.</summary>
    public required double LastLightMinutes { get; init; }

    /// <summary>A longer charge by the last light adds less than a tenth.</summary>
    public bool LongerAddsLittle => MinutesTo90Percent <= LastLightMinutes;
}
