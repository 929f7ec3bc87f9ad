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

    /// <summary>Averages at each wavelength of the model. The result does not depend on the number of cores.</summary>
    public static GrainAverage[] OverWavelengths(
        Spectrum pigmentIndex,
        Spectrum pigmentAbsorptionPerMm,
        Spectrum resinIndex,
        SizeNodes sizes,
        int highestMoment
    )
    {
        double largest = LargestSizeParameter(sizes, resinIndex);
        using var coupling = new CouplingTable(LorenzMie.TermsFor(largest), highestMoment);
        var averages = new GrainAverage[WavelengthGrid.Count];
        // One by one in order: short waves take longest and go first.
        OrderablePartitioner<int> wavelengths = Partitioner.Create(
            Enumerable.Range(0, averages.Length),
            EnumerablePartitionerOptions.NoBuffering
        );
        Parallel.ForEach(
            wavelengths,
            () => new AveragedProducts(sizes, coupling),
            (i, _, products) =>
            {
                double nm = WavelengthGrid.NmAt(i);
                double k = pigmentAbsorptionPerMm[i] * nm / (4 * Math.PI * NmPerMm);
                var index = new Complex(pigmentIndex[i] / resinIndex[i], k / resinIndex[i]);
                double perUm = SizeParameterPerUm(resinIndex[i], nm);
                averages[i] = FourSpheres.IsSupported
                    ? FourAtATime(index, perUm, products)
                    : OneByOne(index, perUm, sizes, coupling);
                return products;
            },
            products => products.Dispose()
        );
        return averages;
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
    public static GrainAverage OneByOne(
        Complex index,
        double sizeParameterPerUm,
        SizeNodes sizes,
        CouplingTable coupling
    )
    {
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
                for (int d = 0; d <= l; d++)
                {
                    moments[l] += coupling.Weight(n, d, l) * products[(n * width) + d];
                }
            }
        }
        return new GrainAverage(absorption, scattering, PhaseMoments.Normalised(moments));
    }

    /// <summary>The average from four spheres at a time.</summary>
    public static GrainAverage FourAtATime(
        Complex index,
        double sizeParameterPerUm,
        AveragedProducts products
    )
    {
        double absorbed = products.Load(index, sizeParameterPerUm);
        double[] moments = products.Moments();
        // An efficiency is 2/x² times the sum over orders; π d²/4 over π d³/6 is 1.5/d, and x = d times the size parameter per µm.
        double perSum = 3 * UmPerMm / (sizeParameterPerUm * sizeParameterPerUm);
        return new GrainAverage(perSum * absorbed, perSum * moments[0], PhaseMoments.Normalised(moments));
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
                Complex aOther = Complex.Conjugate(a[n + d]);
                Complex bOther = Complex.Conjugate(b[n + d]);
                double same = weight * ((a[n] * aOther) + (b[n] * bOther)).Real;
                double crossed = weight * ((a[n] * bOther) + (b[n] * aOther)).Real;
                int at = (n * width) + d;
                even[at] += int.IsEvenInteger(d) ? same : crossed;
                odd[at] += int.IsEvenInteger(d) ? crossed : same;
            }
        }
    }
}
