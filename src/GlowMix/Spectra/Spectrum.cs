namespace GlowMix.Spectra;

/// <summary>
/// 89 immutable samples on <see cref="WavelengthGrid"/>. What a sample means, and its unit, is in the name of whoever
/// holds it (<c>AbsorptionPerMm</c>, <c>EmittedWPerNm</c>).
/// </summary>
public sealed class Spectrum
{
    private readonly double[] samples;

    private Spectrum(double[] samples) => this.samples = samples;

    /// <summary>All samples zero.</summary>
    public static Spectrum Zero { get; } = Constant(0);

    /// <summary>All samples in order of wavelength.</summary>
    public ReadOnlySpan<double> Samples => samples;

    /// <summary>One sample.</summary>
    /// <param name="index">0 to 88.</param>
    public double this[int index] => samples[index];

    /// <summary>The same value at every wavelength.</summary>
    public static Spectrum Constant(double value) => FromIndex(_ => value);

    /// <summary>A sample from a function of the wavelength in nm.</summary>
    public static Spectrum FromNm(Func<double, double> valueAtNm)
    {
        ArgumentNullException.ThrowIfNull(valueAtNm);
        return FromIndex(i => valueAtNm(WavelengthGrid.NmAt(i)));
    }

    /// <summary>A sample from a function of its index, 0 to 88.</summary>
    /// <exception cref="ArgumentException">A sample is not a finite number.</exception>
    public static Spectrum FromIndex(Func<int, double> valueAt)
    {
        ArgumentNullException.ThrowIfNull(valueAt);
        var values = new double[WavelengthGrid.Count];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = valueAt(i);
        }
        return Checked(values);
    }

    /// <summary>A copy of 89 samples.</summary>
    /// <exception cref="ArgumentException">Not 89 samples, or one is not a finite number.</exception>
    public static Spectrum FromSamples(ReadOnlySpan<double> samples) => Checked(samples.ToArray());

    /// <summary>Sum of the samples times the step: the integral over wavelength, in the samples' unit times nm.</summary>
    public double IntegralOverNm()
    {
        double sum = 0;
        foreach (double sample in samples)
        {
            sum += sample;
        }
        return sum * WavelengthGrid.StepNm;
    }

    /// <summary>Integral over wavelength of the product with a weight, in the unit of the product times nm.</summary>
    public double IntegralOverNm(Spectrum weight) =>
        DotProduct.Of(samples, weight.samples) * WavelengthGrid.StepNm;

    /// <summary>Each sample through a function.</summary>
    public Spectrum Select(Func<double, double> map) => FromIndex(i => map(samples[i]));

    /// <summary>Sample by sample sum.</summary>
    public static Spectrum operator +(Spectrum a, Spectrum b) => FromIndex(i => a[i] + b[i]);

    /// <summary>Sample by sample difference.</summary>
    public static Spectrum operator -(Spectrum a, Spectrum b) => FromIndex(i => a[i] - b[i]);

    /// <summary>Sample by sample product.</summary>
    public static Spectrum operator *(Spectrum a, Spectrum b) => FromIndex(i => a[i] * b[i]);

    /// <summary>Every sample times a number.</summary>
    public static Spectrum operator *(double factor, Spectrum a) => FromIndex(i => factor * a[i]);

    private static Spectrum Checked(double[] values)
    {
        if (values.Length != WavelengthGrid.Count)
        {
            throw new ArgumentException(
                $"A spectrum has {WavelengthGrid.Count} samples, not {values.Length}."
            );
        }
        for (int i = 0; i < values.Length; i++)
        {
            if (!double.IsFinite(values[i]))
            {
                throw new ArgumentException(
                    $"The sample at {WavelengthGrid.NmAt(i)} nm is not a finite number."
                );
            }
        }
        return new(values);
    }
}
