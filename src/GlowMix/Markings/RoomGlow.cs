using GlowMix.Predictions;

namespace GlowMix.Markings;

/// <summary>The glow in the recipe's own room: its charge, its darkness, its limit. Immutable.</summary>
/// <param name="ChargedBy">The charge in words.</param>
/// <param name="DarknessTemperatureC">Temperature of the darkness, °C.</param>
/// <param name="LimitMcdPerM2">The recipe's limit, mcd/m².</param>
/// <param name="MinutesToLimit">Minutes above it.</param>
public sealed record RoomGlow(
    string ChargedBy,
    double DarknessTemperatureC,
    double LimitMcdPerM2,
    Band MinutesToLimit
);
