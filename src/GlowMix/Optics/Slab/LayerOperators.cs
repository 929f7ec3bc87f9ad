using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace GlowMix.Optics.Slab;

/// <summary>
/// A layer of stated depth: how it reflects and transmits light that meets its faces, and the light inside it once both faces
/// are known.
/// </summary>
/// <remarks>
/// Each mode is split into a part even and a part odd about mid-depth, cosh and sinh over cosh of half the depth, so that
/// every number stays bounded from no depth to any depth and from no loss to full loss (the purpose of the scaled exponentials
/// of Stamnes &amp; Conklin 1984). R + T follows from the even part, R − T from the odd one.
/// </remarks>
internal sealed class LayerOperators
{
    /// <summary>k τ below which a mode is kept as a polynomial over the layer.</summary>
    internal const double ThinRate = 0.1;

    private readonly int n;
    private readonly double[] evenRates;
    private readonly double[] oddRates;
    private readonly double[] factor;
    private readonly double[] evenAmplitudes;
    private readonly double[] oddAmplitudes;
    private readonly double[] work;
    private StreamQuadrature? quadrature;

    public LayerOperators(int nodes)
    {
        n = nodes;
        evenRates = new double[n];
        oddRates = new double[n];
        work = new double[n];
        factor = new double[n * n];
        evenAmplitudes = new double[n * n];
        oddAmplitudes = new double[n * n];
        Reflection = new double[n * n];
        Transmission = new double[n * n];
        StraightThrough = new double[n];
    }

    public LayerModes Modes { get; private set; } = null!;

    public double DepthMm { get; private set; }

    public double OpticalDepth { get; private set; }

    /// <summary>R in √(w μ) scale, symmetric; only where the layer scatters.</summary>
    public double[] Reflection { get; }

    /// <summary>T in √(w μ) scale, symmetric; only where the layer scatters.</summary>
    public double[] Transmission { get; }

    /// <summary>exp(−τ/μ) per direction; only where the layer does not scatter.</summary>
    public double[] StraightThrough { get; }

    public void Prepare(LayerModes modes, double depthMm, StreamQuadrature nodes)
    {
        Modes = modes;
        quadrature = nodes;
        DepthMm = depthMm;
        OpticalDepth = modes.ExtinctionPerMm * depthMm;
        if (!modes.Scatters)
        {
            for (int i = 0; i < n; i++)
            {
                StraightThrough[i] = Math.Exp(-OpticalDepth * modes.Rates[i]);
            }
            return;
        }
        for (int j = 0; j < n; j++)
        {
            double k = modes.Rates[j];
            double half = Math.Tanh(k * OpticalDepth / 2);
            evenRates[j] = k * half;
            oddRates[j] = k * OpticalDepth < 1e-6 ? OpticalDepth / 2 : half / k;
        }
        Solve(evenAmplitudes, Reflection, modes.SumGram, evenRates, modes.Sum);
        Solve(oddAmplitudes, Transmission, modes.DifferenceGram, oddRates, modes.Difference);
        for (int i = 0; i < n; i++)
        {
            for (int j = i; j < n; j++)
            {
                double even = Reflection[(i * n) + j];
                double odd = Transmission[(i * n) + j];
                Reflection[(i * n) + j] = even - odd;
                Reflection[(j * n) + i] = even - odd;
                Transmission[(i * n) + j] = even + odd;
                Transmission[(j * n) + i] = even + odd;
            }
            Transmission[(i * n) + i] -= 1;
        }
    }

    /// <summary>target = T vector.</summary>
    public void Transmit(Span<double> target, ReadOnlySpan<double> vector)
    {
        if (Modes.Scatters)
        {
            RowMath.MultiplyTransposed(target, Transmission, vector);
            return;
        }
        for (int i = 0; i < n; i++)
        {
            target[i] = StraightThrough[i] * vector[i];
        }
    }

    /// <summary>target = R vector.</summary>
    public void Reflect(Span<double> target, ReadOnlySpan<double> vector)
    {
        if (Modes.Scatters)
        {
            RowMath.MultiplyTransposed(target, Reflection, vector);
        }
        else
        {
            target.Clear();
        }
    }

    /// <summary>Amplitudes of the even and odd parts of all modes from the light that enters through both faces.</summary>
    /// <param name="inside">Written; for a clear layer the light through the lower and upper face itself.</param>
    /// <param name="upAtLowerFace">Light entering from below, √(w μ) scale.</param>
    /// <param name="downAtUpperFace">Light entering from above.</param>
    public void Inside(
        LayerLight inside,
        ReadOnlySpan<double> upAtLowerFace,
        ReadOnlySpan<double> downAtUpperFace
    )
    {
        if (!Modes.Scatters)
        {
            upAtLowerFace.CopyTo(inside.Even);
            downAtUpperFace.CopyTo(inside.Odd);
            return;
        }
        for (int i = 0; i < n; i++)
        {
            work[i] = downAtUpperFace[i] + upAtLowerFace[i];
        }
        RowMath.Multiply(inside.Even, evenAmplitudes, work);
        for (int i = 0; i < n; i++)
        {
            work[i] = downAtUpperFace[i] - upAtLowerFace[i];
        }
        RowMath.Multiply(inside.Odd, oddAmplitudes, work);
    }

    /// <summary>Flux absorbed in the whole layer.</summary>
    public double Absorbed(LayerLight inside)
    {
        double sum = 0;
        if (!Modes.Scatters)
        {
            for (int i = 0; i < n; i++)
            {
                double lost = -Expm1Of(-OpticalDepth * Modes.Rates[i]);
                sum += quadrature!.FluxRoots[i] * (inside.Even[i] + inside.Odd[i]) * lost;
            }
            return Math.Tau * sum;
        }
        for (int j = 0; j < n; j++)
        {
            sum += Modes.Coupling[j] * inside.Even[j] * 2 * oddRates[j];
        }
        return Math.Tau * Modes.AbsorbedShare * sum;
    }

    /// <summary>
    /// Turns the amplitudes into two exponentials a mode, ready to be read at many depths; modes that hardly change over the
    /// layer stay polynomials, where the two exponentials would cancel.
    /// </summary>
    public void PrepareFluence(LayerLight inside)
    {
        bool clear = !Modes.Scatters;
        inside.ThinModes = 0;
        for (int j = 0; j < n; j++)
        {
            double k = Modes.Rates[j];
            double coupling = Math.Tau * Modes.Coupling[j];
            if (clear)
            {
                double scale = Math.Tau * quadrature!.FluenceRoots[j];
                inside.FromBelow[j] = scale * inside.Even[j];
                inside.FromAbove[j] = scale * inside.Odd[j];
            }
            else if (k * OpticalDepth < ThinRate)
            {
                inside.FromBelow[j] = 0;
                inside.FromAbove[j] = 0;
                inside.ThinIndex[inside.ThinModes++] = j;
            }
            else
            {
                double share = coupling / (1 + Math.Exp(-k * OpticalDepth));
                inside.FromBelow[j] = share * (inside.Even[j] - (inside.Odd[j] / k));
                inside.FromAbove[j] = share * (inside.Even[j] + (inside.Odd[j] / k));
            }
        }
    }

    /// <summary>Fluence, ∫ radiance dΩ, at a height above the layer's lower face; never below zero.</summary>
    /// <remarks>
    /// Behind many optical depths the two parts cancel down to rounding, some 1e-16 of the light at the bright face: what is
    /// left there may come out as zero.
    /// </remarks>
    public double Fluence(LayerLight inside, double heightMm) => Math.Max(0, SignedFluence(inside, heightMm));

    /// <summary>The same for a part of the light, which may be below zero.</summary>
    public double SignedFluence(LayerLight inside, double heightMm)
    {
        double t = Modes.ExtinctionPerMm * heightMm;
        double rest = OpticalDepth - t;
        var below = Vector256.Create(-t);
        var above = Vector256.Create(-rest);
        var total = Vector256<double>.Zero;
        ref double rates = ref Modes.Rates[0];
        ref double fromBelow = ref inside.FromBelow[0];
        ref double fromAbove = ref inside.FromAbove[0];
        for (nuint j = 0; j < (nuint)n; j += 4)
        {
            var k = Vector256.LoadUnsafe(ref rates, j);
            total += Vector256.LoadUnsafe(ref fromBelow, j) * Exponential.Of(k * below);
            total += Vector256.LoadUnsafe(ref fromAbove, j) * Exponential.Of(k * above);
        }
        double sum = Vector256.Sum(total);
        for (int i = 0; i < inside.ThinModes; i++)
        {
            sum += ThinFluence(inside, inside.ThinIndex[i], t);
        }
        return sum;
    }

    private double ThinFluence(LayerLight inside, int j, double t)
    {
        double k = Modes.Rates[j];
        var (cosh, sinhOverRate) = ThinMode(k, t - (OpticalDepth / 2));
        double scale = Math.Tau * Modes.Coupling[j] / Math.Cosh(k * OpticalDepth / 2);
        return scale * ((inside.Even[j] * cosh) + (inside.Odd[j] * sinhOverRate));
    }

    /// <summary>cosh(k x) and sinh(k x) / k as series, for k x well under 1.</summary>
    internal static (double Cosh, double SinhOverRate) ThinMode(double k, double x)
    {
        double square = k * k * x * x;
        return (
            1 + (square / 2 * (1 + (square / 12 * (1 + (square / 30))))),
            x * (1 + (square / 6 * (1 + (square / 20 * (1 + (square / 42))))))
        );
    }

    /// <summary>With H = gram + diagonal, amplitudes ← H⁻¹ modesᵀ and response ← modes H⁻¹ modesᵀ, on and above its diagonal.</summary>
    private void Solve(
        double[] amplitudes,
        double[] response,
        double[] gram,
        double[] diagonal,
        double[] modes
    )
    {
        gram.CopyTo(factor, 0);
        for (int j = 0; j < n; j++)
        {
            factor[(j * n) + j] += diagonal[j];
        }
        RowMath.Cholesky(factor, n);
        RowMath.Transpose(amplitudes, modes, n);
        RowMath.SolveUpperTransposed(amplitudes, factor, n);
        RowMath.UpperGram(response, amplitudes, n);
        RowMath.SolveUpper(amplitudes, factor, n);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static double Expm1Of(double x)
    {
        // The framework's own ExpM1 is Exp − 1 and keeps no digits near zero; away from it that is quicker.
        if (x is < -0.5 or > 0.5)
        {
            return Math.Exp(x) - 1;
        }
        double half = Math.Tanh(x / 2);
        return 2 * half / (1 - half);
    }
}
