namespace GlowMix.Colour;

/// <summary>Luminance for eyes between day and night vision.</summary>
/// <remarks>
/// CIE 191:2010, system MES2: L_mes = (m L_p + (1 − m) L_s V′(λ₀)) / (m + (1 − m) V′(λ₀)) with V′(λ₀) = 683/1699 and
/// m = 0.7670 + 0.3334 log₁₀ L_mes, cut to 0 to 1: scotopic below 0.005 cd/m², photopic above 5 cd/m². The published
/// iteration can fail to converge at very high S/P, the everyday case of blue-green afterglow; bisection cannot.
/// </remarks>
public static class Mesopic
{
    private const double ScotopicWeight = 683.0 / 1699.0;
    private const double Offset = 0.7670;
    private const double Slope = 0.3334;

    // ln L at which m is 0, and 1.
    private static readonly double ScotopicUpToLn = Math.Log(10) * (-Offset / Slope);
    private static readonly double PhotopicFromLn = Math.Log(10) * ((1 - Offset) / Slope);

    /// <summary>Mesopic luminance, cd/m².</summary>
    /// <param name="photopicCdPerM2">Photopic luminance, cd/m², 0 or more.</param>
    /// <param name="scotopicCdPerM2">Scotopic luminance, scotopic cd/m², 0 or more.</param>
    /// <returns>
    /// A luminance between the two. Below S/P 0.265 (deep yellow, red) the equation can have three solutions: the greatest
    /// is returned, which the published iteration, begun at m = 0.5, finds too.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A luminance is negative or not finite.</exception>
    public static double LuminanceCdPerM2(double photopicCdPerM2, double scotopicCdPerM2)
    {
        Check(photopicCdPerM2, nameof(photopicCdPerM2));
        Check(scotopicCdPerM2, nameof(scotopicCdPerM2));
        if (photopicCdPerM2 >= Math.Exp(PhotopicFromLn))
        {
            return photopicCdPerM2;
        }
        // Excess over ln L is convex (L_s < L_p) or rises (L_s ≥ L_p): its greatest zero lies above its least value.
        double leastLn = Zero(ExcessSlope, ScotopicUpToLn, PhotopicFromLn);
        return Excess(leastLn) >= 0 ? scotopicCdPerM2 : Mixed(Zero(Excess, leastLn, PhotopicFromLn));

        // What is left of L after the right-hand side of the equation is taken off.
        double Excess(double ln) => Math.Exp(ln) - Mixed(ln);

        double ExcessSlope(double ln)
        {
            double m = Adaptation(ln);
            double denominator = m + ((1 - m) * ScotopicWeight);
            double mixedPerM =
                ScotopicWeight * (photopicCdPerM2 - scotopicCdPerM2) / (denominator * denominator);
            return Math.Exp(ln) - (mixedPerM * Slope / Math.Log(10));
        }

        double Mixed(double ln)
        {
            double m = Adaptation(ln);
            double scotopicWeight = (1 - m) * ScotopicWeight;
            return ((m * photopicCdPerM2) + (scotopicWeight * scotopicCdPerM2)) / (m + scotopicWeight);
        }
    }

    /// <summary>m of the standard: 0 for an eye adapted to the dark, 1 for one adapted to the light.</summary>
    private static double Adaptation(double ln) => Math.Clamp(Offset + (Slope / Math.Log(10) * ln), 0, 1);

    /// <summary>Where a function turns from negative to positive; an end where it does not.</summary>
    private static double Zero(Func<double, double> function, double low, double high)
    {
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            if (function(middle) < 0)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }
        return low;
    }

    private static void Check(double luminanceCdPerM2, string name)
    {
        if (luminanceCdPerM2 is not (>= 0 and < double.PositiveInfinity))
        {
            throw new ArgumentOutOfRangeException(
                name,
                luminanceCdPerM2,
                "A luminance must be finite, 0 or more."
            );
        }
    }
}
