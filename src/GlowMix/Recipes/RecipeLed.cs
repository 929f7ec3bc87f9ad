namespace GlowMix.Recipes;

/// <summary>The LEDs under the pour.</summary>
public sealed record RecipeLed
{
    /// <summary>What kind of LED: by name, by label or by spectrum.</summary>
    public required LedSource Source { get; init; }

    /// <summary>Number of packages, 1 or more.</summary>
    public int? Count { get; init; }

    /// <summary>Steady current through each package, mA.</summary>
    public double? DriveMa { get; init; }

    /// <summary>Two standard deviations of the current, % of it.</summary>
    public double? DriveTolerancePercent { get; init; }
}
