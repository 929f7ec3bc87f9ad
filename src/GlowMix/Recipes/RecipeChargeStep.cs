namespace GlowMix.Recipes;

/// <summary>One stretch of time under constant light, or in the dark.</summary>
public sealed record RecipeChargeStep
{
    /// <summary>The piece's own LEDs are on.</summary>
    public bool OwnLeds { get; init; }

    /// <summary>The lamp that shines from above, alone or with the LEDs: a material's name or the path of its file; or null.</summary>
    public string? LampName { get; init; }

    /// <summary>Neither.</summary>
    public bool IsDark => !OwnLeds && LampName is null;

    /// <summary>Illuminance by the lamp at the surface, lx; null without a lamp or if the irradiance is given.</summary>
    public double? IlluminanceLx { get; init; }

    /// <summary>Two standard deviations of the illuminance, % of it.</summary>
    public double? IlluminanceTolerancePercent { get; init; }

    /// <summary>Irradiance by the lamp at the surface, W/m², 340 to 780 nm; null without a lamp or if the illuminance is given.</summary>
    public double? IrradianceWPerM2 { get; init; }

    /// <summary>Two standard deviations of the irradiance, % of it.</summary>
    public double? IrradianceTolerancePercent { get; init; }

    /// <summary>How long, min; above 0.</summary>
    public required double Minutes { get; init; }

    /// <summary>Temperature of the piece, °C.</summary>
    public double? TemperatureC { get; init; }
}
