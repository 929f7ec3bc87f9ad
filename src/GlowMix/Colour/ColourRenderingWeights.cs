using GlowMix.Spectra;

namespace GlowMix.Colour;

/// <summary>
/// For one grid: what makes X, Y, Z of a lamp, and of each test colour sample under it, and the same of the components of
/// daylight, so that a reference of daylight costs no sums.
/// </summary>
internal sealed class ColourRenderingWeights
{
    /// <summary>Number of test colour samples of CIE 13.3-1995 in use.</summary>
    public const int SampleCount = 14;

    // CIE 13.3-1995 sums over this range. Outside of it a lamp's table may have nothing where the reference has light.
    private const double FirstNm = 380;
    private const double LastNm = 780;

    private readonly double[] wavelengthsNm;
    private readonly double[][] x;
    private readonly double[][] y;
    private readonly double[][] z;
    private readonly Tristimulus[] s0;
    private readonly Tristimulus[] s1;
    private readonly Tristimulus[] s2;

    /// <param name="wavelengthsNm">The grid, nm.</param>
    /// <param name="x">Weights of X on it; y, z likewise.</param>
    /// <param name="y">Weights of Y.</param>
    /// <param name="z">Weights of Z.</param>
    public ColourRenderingWeights(double[] wavelengthsNm, double[] x, double[] y, double[] z)
    {
        this.wavelengthsNm = wavelengthsNm;
        ShippedTable table = ShippedTable.Read("cie/cri_samples_tcs01_to_14");
        this.x = new double[SampleCount + 1][];
        this.y = new double[SampleCount + 1][];
        this.z = new double[SampleCount + 1][];
        double[] inRange = [.. wavelengthsNm.Select(nm => nm is >= FirstNm and <= LastNm ? 1.0 : 0)];
        (this.x[0], this.y[0], this.z[0]) = (Product(x, inRange), Product(y, inRange), Product(z, inRange));
        for (int sample = 1; sample <= SampleCount; sample++)
        {
            // Column 0 is the wavelength.
            double[] radianceFactor = At(table.Spectrum(table.Names[sample]));
            this.x[sample] = Product(this.x[0], radianceFactor);
            this.y[sample] = Product(this.y[0], radianceFactor);
            this.z[sample] = Product(this.z[0], radianceFactor);
        }
        s0 = Of(At(DaylightPhase.S0));
        s1 = Of(At(DaylightPhase.S1));
        s2 = Of(At(DaylightPhase.S2));
    }

    /// <summary>X, Y, Z of a light (first) and of the 14 samples under it.</summary>
    public Tristimulus[] Of(ReadOnlySpan<double> light)
    {
        var values = new Tristimulus[SampleCount + 1];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = new(
                DotProduct.Of(light, x[i]),
                DotProduct.Of(light, y[i]),
                DotProduct.Of(light, z[i])
            );
        }
        return values;
    }

    /// <summary>The same for a black body.</summary>
    public Tristimulus[] OfPlanckRadiator(double temperatureK)
    {
        var light = new double[wavelengthsNm.Length];
        for (int i = 0; i < light.Length; i++)
        {
            light[i] = PlanckRadiator.RelativeTo560Nm(wavelengthsNm[i], temperatureK);
        }
        return Of(light);
    }

    /// <summary>The same for a phase of daylight.</summary>
    public Tristimulus[] OfDaylight(DaylightPhase phase)
    {
        var values = new Tristimulus[SampleCount + 1];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = new(
                s0[i].X + (phase.M1 * s1[i].X) + (phase.M2 * s2[i].X),
                s0[i].Y + (phase.M1 * s1[i].Y) + (phase.M2 * s2[i].Y),
                s0[i].Z + (phase.M1 * s1[i].Z) + (phase.M2 * s2[i].Z)
            );
        }
        return values;
    }

    private double[] At(TabulatedSpectrum table)
    {
        var values = new double[wavelengthsNm.Length];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = table.ValueAtNm(wavelengthsNm[i]);
        }
        return values;
    }

    private static double[] Product(double[] a, double[] b)
    {
        var product = new double[a.Length];
        for (int i = 0; i < product.Length; i++)
        {
            product[i] = a[i] * b[i];
        }
        return product;
    }
}
