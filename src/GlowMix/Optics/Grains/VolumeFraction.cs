namespace GlowMix.Optics.Grains;

/// <summary>Conversions between the pigment's share of a mix by mass and by volume.</summary>
public static class VolumeFraction
{
    /// <summary>Share of the mix's volume that the pigment takes.</summary>
    /// <param name="massFraction">Pigment mass over mass of the whole mix, 0 to 0.8.</param>
    /// <param name="pigmentDensityGPerCm3">Density of the pigment's grains, over 0.</param>
    /// <param name="resinDensityGPerCm3">Density of the resin, over 0.</param>
    /// <returns>0 to 1; exactly 0 for clear resin.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges.</exception>
    public static double FromMass(
        double massFraction,
        double pigmentDensityGPerCm3,
        double resinDensityGPerCm3
    )
    {
        if (massFraction is not (>= 0 and <= 0.8))
        {
            throw new ArgumentOutOfRangeException(
                nameof(massFraction),
                massFraction,
                "The pigment's share of the mix by mass must be 0 to 0.8."
            );
        }
        RequireDensity(pigmentDensityGPerCm3, nameof(pigmentDensityGPerCm3));
        RequireDensity(resinDensityGPerCm3, nameof(resinDensityGPerCm3));
        double pigment = massFraction / pigmentDensityGPerCm3;
        double resin = (1 - massFraction) / resinDensityGPerCm3;
        return pigment / (pigment + resin);
    }

    /// <summary>Share of the mix's mass that the pigment has.</summary>
    /// <param name="volumeFraction">Pigment volume over volume of the mix, 0 to 1.</param>
    /// <param name="pigmentDensityGPerCm3">Density of the pigment's grains, over 0.</param>
    /// <param name="resinDensityGPerCm3">Density of the resin, over 0.</param>
    /// <returns>0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges.</exception>
    public static double ToMass(
        double volumeFraction,
        double pigmentDensityGPerCm3,
        double resinDensityGPerCm3
    )
    {
        if (volumeFraction is not (>= 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(
                nameof(volumeFraction),
                volumeFraction,
                "The pigment's share of the mix by volume must be 0 to 1."
            );
        }
        RequireDensity(pigmentDensityGPerCm3, nameof(pigmentDensityGPerCm3));
        RequireDensity(resinDensityGPerCm3, nameof(resinDensityGPerCm3));
        double pigment = volumeFraction * pigmentDensityGPerCm3;
        double resin = (1 - volumeFraction) * resinDensityGPerCm3;
        return pigment / (pigment + resin);
    }

    private static void RequireDensity(double gPerCm3, string parameter)
    {
        if (gPerCm3 is not (> 0 and < double.PositiveInfinity))
        {
            throw new ArgumentOutOfRangeException(parameter, gPerCm3, "A density must be over 0 g/cm³.");
        }
    }
}
