namespace GlowMix.Colour;

/// <summary>How far two chromaticities lie apart.</summary>
public static class ColourDifference
{
    /// <summary>
    /// Δu′v′, distance in the CIE 1976 diagram. A step of 0.0011 is the unit of the n-step circles of CIE TN 001:2014.
    /// </summary>
    public static double UPrimeVPrime(Chromaticity a, Chromaticity b) =>
        Math.Sqrt(Squared(a.UPrime - b.UPrime) + Squared(a.VPrime - b.VPrime));

    /// <summary>Distance in the CIE 1960 diagram, in which Duv is measured.</summary>
    internal static double Uv1960(Chromaticity a, Chromaticity b) =>
        Math.Sqrt(Squared(a.U - b.U) + Squared(a.V - b.V));

    private static double Squared(double difference) => difference * difference;
}
