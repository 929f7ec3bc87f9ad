namespace GlowMix.Colour;

/// <summary>
/// CIE 1931 tristimulus values in absolute terms: K_m times the sums of spectrum times x̄, ȳ, z̄. For a spectrum in W/nm
/// Y is the luminous flux in lm, for one in W/(m² nm) the illuminance or exitance in lm/m².
/// </summary>
/// <param name="X">K_m ∫ S x̄ dλ.</param>
/// <param name="Y">K_m ∫ S ȳ dλ.</param>
/// <param name="Z">K_m ∫ S z̄ dλ.</param>
/// <remarks>CIE 015:2018, with K_m = 683.002 lm/W.</remarks>
public readonly record struct Tristimulus(double X, double Y, double Z)
{
    /// <summary>The chromaticity; null where there is no light, or where the noise of a reading outweighs it.</summary>
    public Chromaticity? Chromaticity
    {
        get
        {
            double sum = X + Y + Z;
            // The last sum is the denominator of u, v; negative noise can turn it alone.
            return sum > 0 && Y > 0 && X + (15 * Y) + (3 * Z) > 0
                ? Colour.Chromaticity.FromXy(X / sum, Y / sum)
                : null;
        }
    }
}
