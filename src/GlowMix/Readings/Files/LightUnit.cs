namespace GlowMix.Readings.Files;

/// <summary>A unit of light found in a header.</summary>
/// <param name="Word">As recognised.</param>
/// <param name="Unit">What the values count after the factor.</param>
/// <param name="Factor">Makes W/(m² nm) of them; 1 where there is nothing to make.</param>
/// <param name="IsPhotons">They count photons: their power goes with 1/λ.</param>
internal sealed record LightUnit(string Word, SpectralUnit Unit, double Factor, bool IsPhotons = false);
