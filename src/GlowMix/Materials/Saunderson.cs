using GlowMix.Optics;

namespace GlowMix.Materials;

/// <summary>Reflectance of a coat in air against that of the same coat under a clear medium of its index.</summary>
/// <remarks>
/// Saunderson 1942, J. Opt. Soc. Am. 32, 727: R = k₁ + (1 − k₁)(1 − k₂) ρ / (1 − k₂ ρ), with diffuse light from outside (k₁)
/// and inside (k₂, there 0.596 at n = 1.5) and the surface's own reflection counted.
/// </remarks>
public static class Saunderson
{
    /// <summary>Reflectance under the medium of one measured in air; at n 1.5, 0.88 becomes 0.94.</summary>
    /// <param name="inAir">Measured with diffuse light, the gloss included, 0 to 1.</param>
    /// <param name="index">Index of the coat and of the medium.</param>
    /// <returns>0 to 1; 0 where the surface alone sends back as much as was measured.</returns>
    public static double UnderMedium(double inAir, double index)
    {
        Check(inAir);
        double outside = Fresnel.DiffuseFromOutside(index);
        double inside = Fresnel.DiffuseFromInside(index);
        double left = Math.Max(0, inAir - outside);
        return left / (((1 - outside) * (1 - inside)) + (inside * left));
    }

    /// <summary>The way back: reflectance in air of one under the medium.</summary>
    public static double InAir(double underMedium, double index)
    {
        Check(underMedium);
        double outside = Fresnel.DiffuseFromOutside(index);
        double inside = Fresnel.DiffuseFromInside(index);
        return outside + ((1 - outside) * (1 - inside) * underMedium / (1 - (inside * underMedium)));
    }

    private static void Check(double reflectance)
    {
        if (reflectance is not (>= 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(
                nameof(reflectance),
                reflectance,
                "A reflectance must be 0 to 1."
            );
        }
    }
}
