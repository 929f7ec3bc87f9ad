using GlowMix.Documents;

namespace GlowMix.Materials;

/// <summary>Ranges that several kinds of material share.</summary>
internal static class MaterialRanges
{
    /// <summary>Wavelength of a point in a table, nm.</summary>
    public static NumberRange Nm { get; } = NumberRange.Between(200, 2000);

    /// <summary>Density of a solid or a liquid, g/cm³.</summary>
    public static NumberRange DensityGPerCm3 { get; } = NumberRange.Between(0.5, 10);

    /// <summary>Room and oven temperatures, °C.</summary>
    public static NumberRange TemperatureC { get; } = NumberRange.Between(-40, 120);

    /// <summary>A share, 0 to 1.</summary>
    public static NumberRange Share { get; } = NumberRange.Between(0, 1);
}
