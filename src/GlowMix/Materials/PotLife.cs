namespace GlowMix.Materials;

/// <summary>How long a mix can be worked.</summary>
/// <param name="Minutes">Minutes.</param>
/// <param name="MassG">For this mass in one vessel, g: a larger one heats itself and sets sooner.</param>
/// <param name="TemperatureC">From this temperature, °C.</param>
public readonly record struct PotLife(double Minutes, double MassG, double TemperatureC);
