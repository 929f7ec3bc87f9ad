using MathNet.Numerics.Distributions;

namespace GlowMix.Optics.Grains;

/// <summary>
/// A log-normal distribution of grain diameters, given by mass: half of the pigment's mass is in grains below the median.
/// </summary>
/// <remarks>The default value is no distribution; a table refuses it.</remarks>
public readonly record struct GrainSizes
{
    // Nodes of equal probability cut off the tails, which costs the scattering of 40 sizes up to 1 %. Spread as for a normal of
    // twice the variance, with the weights that make up for it, they err by 0.1 to 0.6 % at single wavelengths, by 0.02 % on
    // average over them.
    private static readonly double Spread = Math.Sqrt(2);

    private const double RoundingOfShares = 1e-14;

    private GrainSizes(double medianUm, double geometricStandardDeviation, double fromShare, double toShare)
    {
        MedianUm = medianUm;
        GeometricStandardDeviation = geometricStandardDeviation;
        FromShare = fromShare;
        ToShare = toShare;
    }

    /// <summary>Median diameter by mass of the whole distribution, µm.</summary>
    public double MedianUm { get; }

    /// <summary>exp of the standard deviation of ln d, 1 (all grains alike) or more.</summary>
    public double GeometricStandardDeviation { get; }

    /// <summary>Share of the whole pigment's mass in grains finer than these; 0 unless this is a class.</summary>
    public double FromShare { get; }

    /// <summary>Share of the whole pigment's mass up to the coarsest of these; 1 unless this is a class.</summary>
    public double ToShare { get; }

    /// <summary>A log-normal distribution by mass.</summary>
    /// <param name="medianUm">Median diameter, 0.1 to 300 µm.</param>
    /// <param name="geometricStandardDeviation">1 to 4.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges.</exception>
    public static GrainSizes ByMass(double medianUm, double geometricStandardDeviation)
    {
        if (medianUm is not (>= 0.1 and <= 300))
        {
            throw new ArgumentOutOfRangeException(
                nameof(medianUm),
                medianUm,
                "The median grain diameter must be 0.1 to 300 µm."
            );
        }
        if (geometricStandardDeviation is not (>= 1 and <= 4))
        {
            throw new ArgumentOutOfRangeException(
                nameof(geometricStandardDeviation),
                geometricStandardDeviation,
                "The geometric standard deviation of the grain diameter must be 1 to 4."
            );
        }
        return new GrainSizes(medianUm, geometricStandardDeviation, 0, 1);
    }

    /// <summary>The grains of one of several classes of equal mass, as where coarse grains settle and fine ones stay.</summary>
    /// <param name="index">0 (the finest) to <paramref name="count"/> − 1.</param>
    /// <param name="count">Number of classes, 1 to 20.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges.</exception>
    public GrainSizes MassClass(int index, int count)
    {
        if (count is not (>= 1 and <= 20))
        {
            throw new ArgumentOutOfRangeException(
                nameof(count),
                count,
                "There can be 1 to 20 classes of grain."
            );
        }
        if (index < 0 || index >= count)
        {
            throw new ArgumentOutOfRangeException(
                nameof(index),
                index,
                $"The class of grain must be 0 to {count - 1}."
            );
        }
        double width = (ToShare - FromShare) / count;
        return new GrainSizes(
            MedianUm,
            GeometricStandardDeviation,
            FromShare + (index * width),
            index == count - 1 ? ToShare : FromShare + ((index + 1) * width)
        );
    }

    /// <summary>The distribution as single sizes.</summary>
    /// <remarks>
    /// A class takes those sizes of the whole distribution that lie in it, and of one across its edge the share of the mass
    /// within: all classes together are the whole, size for size.
    /// </remarks>
    /// <param name="count">Number of diameters of the whole distribution; one where all grains are alike, whatever is asked for.</param>
    internal SizeNodes Nodes(int count)
    {
        if (GeometricStandardDeviation == 1)
        {
            return new([MedianUm], [1]);
        }
        var whole = WholeNodes(count);
        if (FromShare == 0 && ToShare == 1)
        {
            return whole;
        }
        var diametersUm = new List<double>();
        var shares = new List<double>();
        double below = 0;
        for (int i = 0; i < count; i++)
        {
            double upTo = i == count - 1 ? 1 : below + whole.MassShares[i];
            double within = (Math.Min(upTo, ToShare) - Math.Max(below, FromShare)) / (ToShare - FromShare);
            if (within > RoundingOfShares)
            {
                diametersUm.Add(whole.DiametersUm[i]);
                shares.Add(within);
            }
            below = upTo;
        }
        return new([.. diametersUm], [.. shares]);
    }

    private SizeNodes WholeNodes(int count)
    {
        var diametersUm = new double[count];
        var shares = new double[count];
        double logDeviation = Math.Log(GeometricStandardDeviation);
        double sum = 0;
        for (int i = 0; i < count; i++)
        {
            double deviate = Normal.InvCDF(0, Spread, (i + 0.5) / count);
            diametersUm[i] = MedianUm * Math.Exp(logDeviation * deviate);
            shares[i] = Math.Exp(-0.5 * deviate * deviate * (1 - (1 / (Spread * Spread))));
            sum += shares[i];
        }
        return new(diametersUm, Array.ConvertAll(shares, share => share / sum));
    }
}
