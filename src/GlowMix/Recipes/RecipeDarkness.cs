namespace GlowMix.Recipes;

/// <summary>The dark after the last light.</summary>
public sealed record RecipeDarkness
{
    /// <summary>Temperature of the piece, °C.</summary>
    public double? TemperatureC { get; init; }

    /// <summary>The user's own limit of visibility, mcd/m².</summary>
    public double? LimitMcdPerM2 { get; init; }
}
