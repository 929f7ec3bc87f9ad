namespace GlowMix.Colour;

/// <summary>The temperature of the black body of the nearest colour, and how far from it and on which side.</summary>
/// <param name="CctK">Correlated colour temperature, K.</param>
/// <param name="Duv">
/// Distance to the Planckian locus in CIE 1960 u, v; positive above it (greenish), negative below (pinkish).
/// </param>
/// <remarks>
/// CIE 015:2018: nearest point in the CIE 1960 diagram. Duv as Ohno, LEUKOS 10 (2014) 47–55. Daylight lies off the locus by
/// nature: D65 has Duv +0.0032.
/// </remarks>
public readonly record struct CorrelatedColourTemperature(double CctK, double Duv)
{
    /// <summary>Farther from the locus than this a colour has no CCT (CIE 015).</summary>
    public const double LargestDuv = 0.05;

    // A black body of 25 000 K summed every 5 nm comes out at 25 003 K, the daylight of that CCT at 25 022 K: no more than
    // this beyond an end is the end.
    private const double EndTolerance = 1e-3;

    /// <summary>CCT and Duv of a colour.</summary>
    /// <returns>
    /// Null farther than <see cref="LargestDuv"/> from the locus, or when the nearest black body is not, give or take 0.1 %, from
    /// <see cref="PlanckianLocus.LowestCctK"/> to <see cref="PlanckianLocus.HighestCctK"/>.
    /// </returns>
    public static CorrelatedColourTemperature? Of(Chromaticity chromaticity) =>
        PlanckianLocus.NearestTo(chromaticity.U, chromaticity.V)
            is (
                >= PlanckianLocus.LowestCctK * (1 - EndTolerance)
                    and <= PlanckianLocus.HighestCctK * (1 + EndTolerance)
                    and var cctK,
                >= -LargestDuv
                    and <= LargestDuv
                    and var duv
            )
            ? new(cctK, duv)
            : null;
}
