using System.Numerics;

namespace GlowMix.Optics.Grains;

/// <summary>
/// Scattering of a plane wave by one homogeneous sphere: the coefficients a_n and b_n of the Lorenz–Mie series, and the
/// efficiencies that follow from them. The readable form; the average over many sizes (<see cref="GrainTable"/>) computes the same
/// in vectors.
/// </summary>
/// <remarks>
/// Bohren &amp; Huffman (1983), chapter 4: time factor exp(−iωt), so that an index n + ik with k &gt; 0 absorbs, and
/// ξ_n = ψ_n − iχ_n. Their program leaves two things to be desired, both done otherwise here: ψ_n comes by upward recurrence
/// only as far as that is stable, n ≤ x; and absorption is a sum of positive terms instead of the difference of extinction and
/// scattering, which has no digit left for small or nearly clear grains.
/// </remarks>
public sealed class LorenzMie
{
    private readonly Complex[] a;
    private readonly Complex[] b;
    private readonly double sizeParameter;
    private readonly double absorptionSum;

    /// <param name="sizeParameter">Circumference over the wavelength in the medium around, 0.001 to 20000.</param>
    /// <param name="index">Index of the sphere over that of the medium, n + ik with n &gt; 0 and k ≥ 0.</param>
    private LorenzMie(double sizeParameter, Complex index)
    {
        this.sizeParameter = sizeParameter;
        TermCount = TermsFor(sizeParameter);
        a = new Complex[TermCount + 1];
        b = new Complex[TermCount + 1];
        Complex[] derivative = LogarithmicDerivatives(TermCount, index * sizeParameter);
        double[] psi = RiccatiPsi(TermCount, sizeParameter);
        double[] chi = RiccatiChi(TermCount, sizeParameter);

        // From the last term down: the small ones first keeps the last digits of the sum.
        for (int n = TermCount; n >= 1; n--)
        {
            // Bohren & Huffman (1983), eq. 4.88.
            Complex electric = (derivative[n] / index) + (n / sizeParameter);
            Complex magnetic = (derivative[n] * index) + (n / sizeParameter);
            a[n] = Ratio(electric, out double electricLoss);
            b[n] = Ratio(magnetic, out double magneticLoss);
            absorptionSum += ((2 * n) + 1) * (electricLoss + magneticLoss);

            // With P = Aψ_n − ψ_{n−1} and Q = Aχ_n − χ_{n−1} the coefficient is P / (P − iQ). What the sphere keeps of this
            // term, Re a − |a|², is −Im(P Q*) / |P − iQ|²; the Wronskian ψ_{n−1}χ_n − ψ_nχ_{n−1} = 1 makes that −Im A over it.
            Complex Ratio(Complex admittance, out double loss)
            {
                Complex p = (admittance * psi[n]) - psi[n - 1];
                Complex q = (admittance * chi[n]) - chi[n - 1];
                Complex denominator = p - (Complex.ImaginaryOne * q);
                loss = -admittance.Imaginary / MagnitudeSquared(denominator);
                return p / denominator;
            }
        }
    }

    /// <summary>Number of terms kept.</summary>
    public int TermCount { get; }

    /// <summary>a_1 to a_N at 1 to N (the electric multipoles); nothing at 0.</summary>
    public ReadOnlySpan<Complex> Electric => a;

    /// <summary>b_1 to b_N at 1 to N (the magnetic multipoles); nothing at 0.</summary>
    public ReadOnlySpan<Complex> Magnetic => b;

    /// <summary>The series of one sphere.</summary>
    /// <param name="sizeParameter">Circumference over the wavelength in the medium around, 0.001 to 20000.</param>
    /// <param name="index">Index of the sphere over that of the medium, n + ik with n &gt; 0 and k ≥ 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or |index| over 100.</exception>
    public static LorenzMie SeriesOf(double sizeParameter, Complex index)
    {
        if (sizeParameter is not (>= 1e-3 and <= LargestSizeParameter))
        {
            throw new ArgumentOutOfRangeException(
                nameof(sizeParameter),
                sizeParameter,
                "The size parameter must be 0.001 to 20000."
            );
        }
        if (index.Real is not (> 0 and <= 100) || index.Imaginary is not (>= 0 and <= 100))
        {
            throw new ArgumentOutOfRangeException(
                nameof(index),
                index,
                "The relative index n + ik must have 0 < n ≤ 100 and 0 ≤ k ≤ 100."
            );
        }
        return new LorenzMie(sizeParameter, index);
    }

    /// <summary>The largest size parameter that is computed.</summary>
    public const double LargestSizeParameter = 20_000;

    /// <summary>Efficiencies and mean cosine of the sphere.</summary>
    /// <remarks>Bohren &amp; Huffman (1983), eq. 4.61 and the sum for g at the end of section 4.5.</remarks>
    public SphereScattering Efficiencies()
    {
        double scattering = 0;
        double cosine = 0;
        for (int n = TermCount; n >= 1; n--)
        {
            scattering += ((2 * n) + 1) * (MagnitudeSquared(a[n]) + MagnitudeSquared(b[n]));
            cosine += ((2 * n) + 1.0) / (n * (n + 1.0)) * RealProduct(a[n], b[n]);
            if (n < TermCount)
            {
                cosine +=
                    n * (n + 2.0) / (n + 1.0) * (RealProduct(a[n], a[n + 1]) + RealProduct(b[n], b[n + 1]));
            }
        }
        double perDisc = 2 / (sizeParameter * sizeParameter);
        return new(
            perDisc * scattering,
            perDisc * absorptionSum,
            scattering > 0 ? 2 * cosine / scattering : 0
        );
    }

    /// <summary>
    /// Legendre moments χ_0 = 1, χ_1 = g, … of the phase function: χ_l = ½∫ p(μ) P_l(μ) dμ with ½∫ p dμ = 1.
    /// </summary>
    /// <param name="highest">Highest order l, 0 to 1000.</param>
    /// <returns>χ_0 to χ_highest of a sphere that scatters; χ_0 = 1 and all others 0 of one that does not.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public double[] Moments(int highest) =>
        highest is >= 0 and <= 1000
            ? PhaseMoments.Of(this, highest)
            : throw new ArgumentOutOfRangeException(
                nameof(highest),
                highest,
                "The highest Legendre moment must be 0 to 1000."
            );

    /// <summary>Terms after which the rest of the series is below rounding.</summary>
    /// <remarks>Wiscombe (1980), Appl. Opt. 19, 1505, with his largest constant at every size.</remarks>
    internal static int TermsFor(double sizeParameter) =>
        (int)(sizeParameter + (4.05 * Math.Cbrt(sizeParameter)) + 2);

    /// <summary>
    /// Where the downward recurrence for ψ′/ψ at an argument of this magnitude starts, so that it has forgotten its start at
    /// <paramref name="terms"/>.
    /// </summary>
    /// <remarks>
    /// The usual 15 steps above are short for large, nearly clear spheres: an error shrinks only once n is past |mx| by some
    /// cube roots of it.
    /// </remarks>
    internal static int DerivativeStart(int terms, double magnitude) =>
        (int)(Math.Max(terms, magnitude) + (8 * Math.Cbrt(magnitude)) + 16);

    /// <summary>Where the downward recurrence for ψ_n / ψ_{n−1} starts.</summary>
    internal static int RatioStart(int terms, double sizeParameter) =>
        (int)(terms + (8 * Math.Cbrt(sizeParameter)) + 16);

    // D_n = ψ_n′/ψ_n at z = mx, n = 0 … terms. Bohren & Huffman (1983), eq. 4.89.
    private static Complex[] LogarithmicDerivatives(int terms, Complex z)
    {
        var kept = new Complex[terms + 1];
        Complex current = Complex.Zero;
        for (int n = DerivativeStart(terms, z.Magnitude); n >= 1; n--)
        {
            Complex step = n / z;
            current = step - (1 / (current + step));
            if (n <= terms + 1)
            {
                kept[n - 1] = current;
            }
        }
        return kept;
    }

    // ψ_n = x j_n(x), n = 0 … terms.
    private static double[] RiccatiPsi(int terms, double x)
    {
        var psi = new double[terms + 1];
        psi[0] = Math.Sin(x);
        int turning = Math.Min(terms, (int)x);
        double before = Math.Cos(x);
        for (int n = 1; n <= turning; n++)
        {
            psi[n] = (((2 * n) - 1) / x * psi[n - 1]) - (n == 1 ? before : psi[n - 2]);
        }
        // Past the turning point ψ falls steeply and upward recurrence would pick up χ: go on by ratios, found from above.
        double ratio = 0;
        for (int n = RatioStart(terms, x); n > turning; n--)
        {
            ratio = 1 / ((((2 * n) + 1) / x) - ratio);
            if (n <= terms)
            {
                psi[n] = ratio;
            }
        }
        for (int n = turning + 1; n <= terms; n++)
        {
            psi[n] *= psi[n - 1];
        }
        return psi;
    }

    // χ_n = −x y_n(x), n = 0 … terms: upward recurrence is stable at every n.
    private static double[] RiccatiChi(int terms, double x)
    {
        var chi = new double[terms + 1];
        chi[0] = Math.Cos(x);
        double before = -Math.Sin(x);
        for (int n = 1; n <= terms; n++)
        {
            chi[n] = (((2 * n) - 1) / x * chi[n - 1]) - (n == 1 ? before : chi[n - 2]);
        }
        return chi;
    }

    private static double MagnitudeSquared(Complex c) => (c.Real * c.Real) + (c.Imaginary * c.Imaginary);

    // Re(c d*)
    private static double RealProduct(Complex c, Complex d) =>
        (c.Real * d.Real) + (c.Imaginary * d.Imaginary);
}
