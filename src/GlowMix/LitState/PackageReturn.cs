using GlowMix.Optics;
using MathNet.Numerics.Integration;

namespace GlowMix.LitState;

/// <summary>How much of the light that the top of the pour sends down lands on the package it came from.</summary>
public static class PackageReturn
{
    private const int Nodes = 96;

    private static readonly Lazy<GaussLegendreRule> Rule = new(() => new(-Math.PI / 2, Math.PI / 2, Nodes));

    /// <summary>
    /// Share w(h) of Lambertian light from a disk that, sent back by the plane face above, lands on the disk again: the overlap
    /// of the disk with its mirror image, weighted with what the face sends back in each direction.
    /// </summary>
    /// <param name="depthMm">Resin over the package, 0 or more.</param>
    /// <param name="windowRadiusMm">Radius of the window, above 0.</param>
    /// <param name="index">Refractive index of the resin, above 1.</param>
    /// <returns>1 at no depth, falling with depth.</returns>
    public static double Share(double depthMm, double windowRadiusMm, double index)
    {
        if (!(depthMm >= 0) || !(windowRadiusMm > 0))
        {
            throw new ArgumentOutOfRangeException(
                nameof(depthMm),
                depthMm,
                "Depth must be 0 mm or more and the window's radius above 0 mm."
            );
        }
        double critical = Fresnel.CriticalCosine(index);
        double spread = 2 * depthMm / windowRadiusMm;
        // No overlap beyond spread · tan θ = 2.
        double steepest = spread / Math.Sqrt((spread * spread) + 4);
        double[] nodes = Rule.Value.Abscissas;
        double[] weights = Rule.Value.Weights;
        double returned = 0;
        double all = 0;
        foreach (var (from, to) in Ranges(critical, steepest))
        {
            for (int i = 0; i < Nodes; i++)
            {
                // Nodes crowd at both ends, where reflectance and overlap start like square roots.
                double cosine = from + ((to - from) * (1 + Math.Sin(nodes[i])) / 2);
                double weight = weights[i] * (to - from) / 2 * Math.Cos(nodes[i]);
                double sentBack = weight * 2 * cosine * Fresnel.Reflectance(cosine, 1 / index);
                all += sentBack;
                returned += sentBack * Overlap(spread * Math.Sqrt((1 - cosine) * (1 + cosine)) / cosine);
            }
        }
        return returned / all;
    }

    private static IEnumerable<(double From, double To)> Ranges(double a, double b)
    {
        double low = Math.Min(a, b);
        double high = Math.Max(a, b);
        if (low > 0)
        {
            yield return (0, low);
        }
        if (high > low)
        {
            yield return (low, high);
        }
        if (high < 1)
        {
            yield return (high, 1);
        }
    }

    /// <summary>Overlap of two equal disks, as a share of one, with their centres some radii apart.</summary>
    private static double Overlap(double distance) =>
        distance < 2
            ? 2
                / Math.PI
                * (Math.Acos(distance / 2) - (distance / 2 * Math.Sqrt(1 - (distance * distance / 4))))
            : 0;
}
