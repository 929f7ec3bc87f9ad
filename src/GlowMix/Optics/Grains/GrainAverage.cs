using System.Collections.Concurrent;
using System.Numerics;
using GlowMix.Spectra;

namespace GlowMix.Optics.Grains;

/// <summary>One wavelength of a <see cref="GrainTable"/>: cross-sections over grain volume, and the moments of the phase function.</summary>
/// <remarks>
/// The moments of a mixture of sizes are those of the single sizes, weighted by their scattering cross-sections; and they are
/// linear in the products of two coefficients. So the products are averaged over the sizes first and coupled once.
/// </remarks>
internal sealed record GrainAverage(double AbsorptionPerMm, double ScatteringPerMm, double[] Moments)
{
    private const double NmPerMm = 1e6;
    private const double NmPerUm = 1e3;
    private const double UmPerMm = 1e3;

    /// <summary>
    /// Averages at each wavelength of the model, or at every so many of them from the first on. The result does not depend on the
    /// number of cores.
    /// </summary>
    public static GrainAverage[] OverWavelengths(
        Spectrum pigmentIndex,
        Spectrum pigmentAbsorptionPerMm,
        Spectrum resinIndex,
        SizeNodes sizes,
        int highestMoment,
        int every = 1
    )
    {
        double largest = LargestSizeParameter(sizes, resinIndex);
        using var coupling = new CouplingTable(LorenzMie.TermsFor(largest), highestMoment);
        var averages = new GrainAverage[((WavelengthGrid.Count - 1) / every) + 1];
        if (FourSpheres.IsSupported)
        {
            // Two neighbours at a time, in order: short waves take longest and go first.
            OrderablePartitioner<int> pairs = Partitioner.Create(
                Enumerable.Range(0, (averages.Length + 1) / 2),
                EnumerablePartitionerOptions.NoBuffering
            );
            Parallel.ForEach(
                pairs,
                () =>
                    (
                        One: new AveragedProducts(sizes, coupling),
                        Other: new AveragedProducts(sizes, coupling)
                    ),
                (pair, _, products) =>
                {
                    int i = 2 * pair;
                    int neighbour = Math.Min(i + 1, averages.Length - 1);
                    (averages[i], averages[neighbour]) = FourAtATime(Sphere(i), Sphere(neighbour), products);
                    return products;
                },
                products =>
                {
                    products.One.Dispose();
                    products.Other.Dispose();
                }
            );
        }
        else
        {
            Parallel.For(0, averages.Length, i => averages[i] = OneByOne(Sphere(i), sizes, coupling));
        }
        return averages;

        GrainOptics Sphere(int average)
        {
            int i = every * average;
            double nm = WavelengthGrid.NmAt(i);
            double k = pigmentAbsorptionPerMm[i] * nm / (4 * Math.PI * NmPerMm);
            var index = new Complex(pigmentIndex[i] / resinIndex[i], k / resinIndex[i]);
            return new(index, SizeParameterPerUm(resinIndex[i], nm));
        }
    }

    /// <summary>Size parameter of the largest grain at the wavelength where it is greatest.</summary>
    public static double LargestSizeParameter(SizeNodes sizes, Spectrum resinIndex)
    {
        double perUm = 0;
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            perUm = Math.Max(perUm, SizeParameterPerUm(resinIndex[i], WavelengthGrid.NmAt(i)));
        }
        return sizes.DiametersUm[^1] * perUm;
    }

    /// <summary>The average from one sphere after the other, in plain arithmetic.</summary>
    public static GrainAverage OneByOne(GrainOptics optics, SizeNodes sizes, CouplingTable coupling)
    {
        (Complex index, double sizeParameterPerUm) = optics;
        int terms = LorenzMie.TermsFor(sizes.DiametersUm[^1] * sizeParameterPerUm);
        int width = coupling.HighestMoment + 1;
        var even = new double[(terms + 1) * width];
        var odd = new double[even.Length];
        double absorption = 0;
        double scattering = 0;
        for (int i = 0; i < sizes.Count; i++)
        {
            double diameterUm = sizes.DiametersUm[i];
            LorenzMie sphere = LorenzMie.SeriesOf(diameterUm * sizeParameterPerUm, index);
            SphereScattering efficiencies = sphere.Efficiencies();
            // π d²/4 over π d³/6, 1/mm.
            double discPerVolume = sizes.MassShares[i] * 1.5 * UmPerMm / diameterUm;
            absorption += discPerVolume * efficiencies.AbsorptionEfficiency;
            scattering += discPerVolume * efficiencies.ScatteringEfficiency;
            AddProducts(sphere, sizes.MassShares[i] / Math.Pow(diameterUm, 3), even, odd, width);
        }
        var moments = new double[coupling.HighestMoment + 1];
        for (int n = terms; n >= 1; n--)
        {
            for (int l = 0; l <= coupling.HighestMoment; l++)
            {
                double[] products = int.IsEvenInteger(l) ? even : odd;
                moments[l] += coupling.Coupled(n, l, products.AsSpan(n * width, l + 1));
            }
        }
        return new GrainAverage(absorption, scattering, PhaseMoments.Normalised(moments));
    }

    /// <summary>The averages at two wavelengths from four spheres at a time.</summary>
    public static (GrainAverage One, GrainAverage Other) FourAtATime(
        GrainOptics one,
        GrainOptics other,
        (AveragedProducts One, AveragedProducts Other) products
    )
    {
        double absorbed = products.One.Load(one.Index, one.SizeParameterPerUm);
        double otherAbsorbed = products.Other.Load(other.Index, other.SizeParameterPerUm);
        AveragedProducts.Couple(products.One, products.Other);
        return (
            FromSums(absorbed, products.One.Moments(), one.SizeParameterPerUm),
            FromSums(otherAbsorbed, products.Other.Moments(), other.SizeParameterPerUm)
        );
    }

    // An efficiency is 2/x² times the sum over orders; π d²/4 over π d³/6 is 1.5/d, and x = d times the size parameter per µm.
    private static GrainAverage FromSums(double absorbed, double[] moments, double sizeParameterPerUm)
    {
        double perSum = 3 * UmPerMm / (sizeParameterPerUm * sizeParameterPerUm);
        return new(perSum * absorbed, perSum * moments[0], PhaseMoments.Normalised(moments));
    }

    private static double SizeParameterPerUm(double resinIndex, double nm) =>
        Math.PI * resinIndex * NmPerUm / nm;

    private static void AddProducts(LorenzMie sphere, double weight, double[] even, double[] odd, int width)
    {
        ReadOnlySpan<Complex> a = sphere.Electric;
        ReadOnlySpan<Complex> b = sphere.Magnetic;
        for (int n = 1; n <= sphere.TermCount; n++)
        {
            int highest = Math.Min(width - 1, sphere.TermCount - n);
            for (int d = 0; d <= highest; d++)
            {
                double same = weight * (RealProduct(a[n], a[n + d]) + RealProduct(b[n], b[n + d]));
                double crossed = weight * (RealProduct(a[n], b[n + d]) + RealProduct(b[n], a[n + d]));
                int at = (n * width) + d;
                even[at] += int.IsEvenInteger(d) ? same : crossed;
                odd[at] += int.IsEvenInteger(d) ? crossed : same;
            }
        }
    }

    // Re(c d*)
    private static double RealProduct(Complex c, Complex d) =>
        (c.Real * d.Real) + (c.Imaginary * d.Imaginary);
}
