namespace GlowMix.Recipes;

/// <summary>How the resin is mixed.</summary>
public sealed record RecipeMixing
{
    /// <summary>Temperature of the room and the parts, °C.</summary>
    public double? TemperatureC { get; init; }

    /// <summary>How far that may be off, K; two standard deviations.</summary>
    public double? TemperatureToleranceC { get; init; }

    /// <summary>Mix made over and above what the pour takes, % of it.</summary>
    public double? WastePercent { get; init; }

    /// <summary>Time under vacuum, min.</summary>
    public double? VacuumMin { get; init; }

    /// <summary>The smallest step the scale shows, g.</summary>
    public double? ScaleStepG { get; init; }
}
