namespace GlowMix.Colour;

/// <summary>How true colours look under a lamp, against a black body or daylight of the same CCT.</summary>
/// <remarks>
/// CIE 13.3-1995: CIE 1960 u, v and U*V*W*, adaptation by von Kries with Judd's c and d, R = 100 − 4.6 ΔE, summed from 380 to
/// 780 nm. Test colour samples every 5 nm, linear between.
/// </remarks>
public sealed class ColourRendering
{
    /// <summary>From this CCT on the reference is a phase of daylight, below it a black body, K.</summary>
    public const double DaylightFromK = 5000;

    /// <summary>
    /// The method's own limit: a lamp farther from its reference than this in u, v is no longer a white of the same kind,
    /// and its Ra says little (CIE 13.3-1995).
    /// </summary>
    public const double LargestReferenceDistance = 5.4e-3;

    private readonly double[] special;

    private ColourRendering(double[] special, double referenceDistance) =>
        (this.special, ReferenceDistance) = (special, referenceDistance);

    /// <summary>General index: mean of R1 to R8, 100 at best, below 0 at worst.</summary>
    public double Ra
    {
        get
        {
            double sum = 0;
            for (int i = 0; i < 8; i++)
            {
                sum += special[i];
            }
            return sum / 8;
        }
    }

    /// <summary>Distance of lamp and reference in CIE 1960 u, v.</summary>
    public double ReferenceDistance { get; }

    /// <summary>The lamp is near enough to its reference for Ra to be told by itself.</summary>
    public bool IsMeaningful => ReferenceDistance <= LargestReferenceDistance;

    /// <summary>Special index of one test colour sample; R9 is the saturated red.</summary>
    /// <param name="sample">1 to 14.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such sample.</exception>
    public double R(int sample) =>
        sample is >= 1 and <= ColourRenderingWeights.SampleCount
            ? special[sample - 1]
            : throw new ArgumentOutOfRangeException(nameof(sample), sample, "Samples are 1 to 14.");

    /// <summary>Colour rendering of a lamp.</summary>
    /// <param name="samples">The lamp's spectrum, on the grid of the weights.</param>
    /// <param name="weights">Weights of that grid.</param>
    /// <returns>Null for a lamp without a CCT.</returns>
    public static ColourRendering? Of(ReadOnlySpan<double> samples, ObserverWeights weights) =>
        ColourPoint.Of(samples, weights).CctK is { } cctK ? Of(samples, weights, cctK) : null;

    /// <param name="samples">The lamp's spectrum, on the grid of the weights.</param>
    /// <param name="weights">Weights of that grid.</param>
    /// <param name="cctK">The lamp's own CCT, not rounded.</param>
    internal static ColourRendering Of(ReadOnlySpan<double> samples, ObserverWeights weights, double cctK)
    {
        ColourRenderingWeights rendering = weights.Rendering;
        return Between(
            rendering.Of(samples),
            cctK < DaylightFromK
                ? rendering.OfPlanckRadiator(cctK)
                : rendering.OfDaylight(DaylightPhase.AtK(Math.Min(cctK, DaylightPhase.HighestCctK)))
        );
    }

    /// <param name="lamp">X, Y, Z of the lamp and of the 14 samples under it.</param>
    /// <param name="reference">The same of the reference.</param>
    internal static ColourRendering Between(Tristimulus[] lamp, Tristimulus[] reference)
    {
        (double lampU, double lampV) = Uv(lamp[0]);
        (double referenceU, double referenceV) = Uv(reference[0]);
        (double lampC, double lampD) = Judd(lampU, lampV);
        (double referenceC, double referenceD) = Judd(referenceU, referenceV);
        var special = new double[ColourRenderingWeights.SampleCount];
        for (int i = 0; i < special.Length; i++)
        {
            // CIE 13.3-1995: the sample's colour under the lamp, as an eye sees it that is adapted to the reference.
            (double u, double v) = Uv(lamp[i + 1]);
            (double c, double d) = Judd(u, v);
            c *= referenceC / lampC;
            d *= referenceD / lampD;
            double denominator = 16.518 + (1.481 * c) - d;
            double adaptedU = (10.872 + (0.404 * c) - (4 * d)) / denominator;
            double adaptedV = 5.520 / denominator;
            double lampW = LightnessIndex(lamp[i + 1].Y / lamp[0].Y);

            (double sampleU, double sampleV) = Uv(reference[i + 1]);
            double referenceW = LightnessIndex(reference[i + 1].Y / reference[0].Y);

            double deltaU = 13 * ((referenceW * (sampleU - referenceU)) - (lampW * (adaptedU - referenceU)));
            double deltaV = 13 * ((referenceW * (sampleV - referenceV)) - (lampW * (adaptedV - referenceV)));
            double deltaW = referenceW - lampW;
            double deltaE = Math.Sqrt((deltaU * deltaU) + (deltaV * deltaV) + (deltaW * deltaW));
            special[i] = 100 - (4.6 * deltaE);
        }
        double distance = Math.Sqrt(
            ((lampU - referenceU) * (lampU - referenceU)) + ((lampV - referenceV) * (lampV - referenceV))
        );
        return new(special, distance);
    }

    private static (double U, double V) Uv(Tristimulus value)
    {
        double sum = value.X + (15 * value.Y) + (3 * value.Z);
        return (4 * value.X / sum, 6 * value.Y / sum);
    }

    private static (double C, double D) Judd(double u, double v) =>
        ((4 - u - (10 * v)) / v, ((1.708 * v) + 0.404 - (1.481 * u)) / v);

    /// <summary>W* of CIE 1964, for a luminance as a share of the lamp's.</summary>
    private static double LightnessIndex(double share) => (25 * Math.Cbrt(100 * share)) - 17;
}
