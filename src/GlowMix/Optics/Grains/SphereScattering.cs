namespace GlowMix.Optics.Grains;

/// <summary>What one sphere does to the light that falls on it.</summary>
/// <param name="ScatteringEfficiency">Scattering cross-section over the disc π d²/4.</param>
/// <param name="AbsorptionEfficiency">Absorption cross-section over the disc; exactly 0 for a clear sphere.</param>
/// <param name="Asymmetry">Mean cosine of the scattering angle, −1 to 1.</param>
public readonly record struct SphereScattering(
    double ScatteringEfficiency,
    double AbsorptionEfficiency,
    double Asymmetry
)
{
    /// <summary>Scattering and absorption together.</summary>
    public double ExtinctionEfficiency => ScatteringEfficiency + AbsorptionEfficiency;
}
