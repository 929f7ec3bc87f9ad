namespace GlowMix.Materials;

/// <summary>Viscosity of the fresh mix without pigment.</summary>
/// <param name="MPaS">mPa·s.</param>
/// <param name="TemperatureC">At this temperature, °C.</param>
public readonly record struct Viscosity(double MPaS, double TemperatureC);
