using GlowMix.Spectra;

namespace GlowMix.Colour;

/// <summary>
/// The standard eyes' curves at the wavelengths of one grid, times the width each sample stands for: every figure of a
/// spectrum on that grid is then a sum of products. Even grids are summed as the CIE sums, uneven ones by trapezoids.
/// </summary>
/// <remarks>
/// A reading's colour is computed on the reading's own grid: a line lamp's 5 nm table taken to 1 nm moves by up to 7 K.
/// Light beyond the grid is not known and counts as none, in lumens, watts and lumens a watt alike.
/// </remarks>
public sealed class ObserverWeights
{
    private readonly double[] x;
    private readonly double[] y;
    private readonly double[] z;
    private readonly double[] scotopicLmPerW;
    private readonly double[] stepsNm;
    private readonly Lazy<ColourRenderingWeights> rendering;

    private ObserverWeights(ReadOnlySpan<double> wavelengthsNm)
    {
        double[] nm = wavelengthsNm.ToArray();
        stepsNm = WavelengthSteps.OfNm(nm);
        x = Weighted(StandardObserver.XBar, LuminousEfficacy.PhotopicPeakLmPerW);
        y = Weighted(StandardObserver.YBar, LuminousEfficacy.PhotopicPeakLmPerW);
        z = Weighted(StandardObserver.ZBar, LuminousEfficacy.PhotopicPeakLmPerW);
        scotopicLmPerW = Weighted(StandardObserver.VPrime, LuminousEfficacy.ScotopicPeakLmPerW);
        rendering = new(() => new(nm, x, y, z));

        double[] Weighted(TabulatedSpectrum curve, double factor)
        {
            var weights = new double[nm.Length];
            for (int i = 0; i < weights.Length; i++)
            {
                weights[i] = factor * stepsNm[i] * curve.ValueAtNm(nm[i]);
            }
            return weights;
        }
    }

    /// <summary>The weights of the model's grid.</summary>
    public static ObserverWeights ModelGrid { get; } = OfModelGrid();

    /// <summary>Number of samples of the grid.</summary>
    public int Count => stepsNm.Length;

    internal ColourRenderingWeights Rendering => rendering.Value;

    /// <summary>The weights of another grid, to be kept for all spectra on it.</summary>
    public static ObserverWeights For(TabulatedSpectrum table)
    {
        ArgumentNullException.ThrowIfNull(table);
        return new(table.WavelengthsNm);
    }

    /// <summary>X, Y, Z; Y in lm for samples in W/nm.</summary>
    /// <param name="samples">One a wavelength of the grid.</param>
    public Tristimulus TristimulusOf(ReadOnlySpan<double> samples)
    {
        Check(samples);
        return new(DotProduct.Of(samples, x), DotProduct.Of(samples, y), DotProduct.Of(samples, z));
    }

    /// <summary>Photopic luminous flux, lm for samples in W/nm.</summary>
    /// <param name="samples">One a wavelength of the grid.</param>
    public double PhotopicLm(ReadOnlySpan<double> samples)
    {
        Check(samples);
        return DotProduct.Of(samples, y);
    }

    /// <summary>Scotopic luminous flux, scotopic lm for samples in W/nm.</summary>
    /// <param name="samples">One a wavelength of the grid.</param>
    public double ScotopicLm(ReadOnlySpan<double> samples)
    {
        Check(samples);
        return DotProduct.Of(samples, scotopicLmPerW);
    }

    /// <summary>Radiant flux inside the grid, W for samples in W/nm.</summary>
    /// <param name="samples">One a wavelength of the grid.</param>
    public double RadiantW(ReadOnlySpan<double> samples)
    {
        Check(samples);
        return DotProduct.Of(samples, stepsNm);
    }

    /// <summary>
    /// Standard deviation of a figure whose slopes in X, Y and Z are known, for independent noise of 1 in every sample.
    /// </summary>
    internal double DeviationOf(double perX, double perY, double perZ)
    {
        double squares = 0;
        for (int i = 0; i < Count; i++)
        {
            double perSample = (perX * x[i]) + (perY * y[i]) + (perZ * z[i]);
            squares += perSample * perSample;
        }
        return Math.Sqrt(squares);
    }

    private static ObserverWeights OfModelGrid()
    {
        Span<double> wavelengthsNm = stackalloc double[WavelengthGrid.Count];
        for (int i = 0; i < wavelengthsNm.Length; i++)
        {
            wavelengthsNm[i] = WavelengthGrid.NmAt(i);
        }
        return new(wavelengthsNm);
    }

    private void Check(ReadOnlySpan<double> samples)
    {
        if (samples.Length != Count)
        {
            throw new ArgumentException($"The grid has {Count} samples, not {samples.Length}.");
        }
    }
}
