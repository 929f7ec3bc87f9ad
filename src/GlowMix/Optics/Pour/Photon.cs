namespace GlowMix.Optics.Pour;

/// <summary>Photons and watts.</summary>
public static class Photon
{
    // SI 2019, exact: h in J s, c in m/s.
    private const double PlanckJouleSecond = 6.62607015e-34;
    private const double LightMetrePerSecond = 299792458;

    /// <summary>Photons per joule of light.</summary>
    /// <param name="wavelengthNm">In vacuum.</param>
    public static double PerJoule(double wavelengthNm) =>
        wavelengthNm * 1e-9 / (PlanckJouleSecond * LightMetrePerSecond);
}
