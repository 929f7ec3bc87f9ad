using System.Numerics;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace GlowMix.Optics.Grains;

/// <summary>
/// The series of <see cref="LorenzMie"/> for four spheres of one index at once, one in each lane of a vector. Same recurrences,
/// same starts.
/// </summary>
/// <remarks>
/// A lane whose own series has ended before the longest goes on, harmlessly, and is set to zero there: its χ_n may overflow.
/// </remarks>
internal static unsafe class FourSpheres
{
    /// <summary>Vectors that one order takes in the result.</summary>
    public const int VectorsPerOrder = 4;

    /// <summary>Whether this processor has what it takes (AVX2 and FMA).</summary>
    public static bool IsSupported => Avx2.IsSupported && Fma.IsSupported;

    /// <summary>Vectors that the recurrences take up to the order <paramref name="terms"/>.</summary>
    public static int ScratchVectors(int terms) => 3 * (terms + 1);

    /// <summary>Vectors that the coefficients take from order 0 to <paramref name="terms"/>.</summary>
    public static int OrderVectors(int terms) => VectorsPerOrder * (terms + 1);

    /// <summary>Computes the coefficients.</summary>
    /// <param name="sizeParameters">Size parameters in rising order.</param>
    /// <param name="index">Relative index.</param>
    /// <param name="factors">Factor on each sphere's coefficients.</param>
    /// <param name="scratch">Room for the recurrences.</param>
    /// <param name="orders">
    /// Receives, for n = 0 … terms of the largest sphere, Re and Im of a_n + b_n, then of a_n − b_n, each times the factor.
    /// </param>
    /// <returns>Σ (2n + 1)(Re a_n − |a_n|² + Re b_n − |b_n|²) of each sphere: x²/2 times its absorption efficiency.</returns>
    public static Vector256<double> Coefficients(
        Vector256<double> sizeParameters,
        Complex index,
        Vector256<double> factors,
        Span<Vector256<double>> scratch,
        Span<Vector256<double>> orders
    )
    {
        int terms = LorenzMie.TermsFor(sizeParameters[3]);
        ArgumentOutOfRangeException.ThrowIfLessThan(scratch.Length, ScratchVectors(terms));
        ArgumentOutOfRangeException.ThrowIfLessThan(orders.Length, OrderVectors(terms));
        int turning = Math.Min(terms, (int)sizeParameters[0]);
        fixed (Vector256<double>* derivatives = scratch)
        fixed (Vector256<double>* coefficients = orders)
        {
            Vector256<double>* ratios = derivatives + (2 * (terms + 1));
            LogarithmicDerivatives(terms, sizeParameters, index, derivatives);
            Ratios(terms, turning, sizeParameters, ratios);
            return Upward(terms, turning, sizeParameters, index, factors, derivatives, ratios, coefficients);
        }
    }

    private static void LogarithmicDerivatives(
        int terms,
        Vector256<double> x,
        Complex index,
        Vector256<double>* kept
    )
    {
        Complex inverse = 1 / index;
        Vector256<double> stepRe = Vector256.Create(inverse.Real) / x;
        Vector256<double> stepIm = Vector256.Create(inverse.Imaginary) / x;
        Vector256<double> re = Vector256<double>.Zero;
        Vector256<double> im = Vector256<double>.Zero;
        for (int n = LorenzMie.DerivativeStart(terms, index.Magnitude * x[3]); n >= 1; n--)
        {
            Vector256<double> order = Vector256.Create((double)n);
            Vector256<double> sumRe = Fma.MultiplyAdd(order, stepRe, re);
            Vector256<double> sumIm = Fma.MultiplyAdd(order, stepIm, im);
            Vector256<double> inverseSquare =
                Vector256<double>.One / Fma.MultiplyAdd(sumRe, sumRe, sumIm * sumIm);
            re = Fma.MultiplyAddNegated(sumRe, inverseSquare, order * stepRe);
            im = Fma.MultiplyAdd(sumIm, inverseSquare, order * stepIm);
            if (n <= terms + 1)
            {
                kept[2 * (n - 1)] = re;
                kept[(2 * (n - 1)) + 1] = im;
            }
        }
    }

    private static void Ratios(int terms, int turning, Vector256<double> x, Vector256<double>* ratios)
    {
        Vector256<double> inverse = Vector256<double>.One / x;
        Vector256<double> ratio = Vector256<double>.Zero;
        for (int n = LorenzMie.RatioStart(terms, x[3]); n > turning; n--)
        {
            ratio =
                Vector256<double>.One / Fma.MultiplySubtract(Vector256.Create((2.0 * n) + 1), inverse, ratio);
            if (n <= terms)
            {
                ratios[n] = ratio;
            }
        }
    }

    private static Vector256<double> Upward(
        int terms,
        int turning,
        Vector256<double> x,
        Complex index,
        Vector256<double> factors,
        Vector256<double>* derivatives,
        Vector256<double>* ratios,
        Vector256<double>* orders
    )
    {
        Complex inverseIndex = 1 / index;
        Vector256<double> mRe = Vector256.Create(index.Real);
        Vector256<double> mIm = Vector256.Create(index.Imaginary);
        Vector256<double> uRe = Vector256.Create(inverseIndex.Real);
        Vector256<double> uIm = Vector256.Create(inverseIndex.Imaginary);
        Vector256<double> inverse = Vector256<double>.One / x;
        Vector256<double> lastOrders = Vector256.Create(
            LorenzMie.TermsFor(x[0]),
            LorenzMie.TermsFor(x[1]),
            LorenzMie.TermsFor(x[2]),
            (double)terms
        );
        int shortest = (int)lastOrders[0];

        // ψ and χ of orders n − 1 and n − 2.
        (Vector256<double> psi, Vector256<double> psiBefore) = Vector256.SinCos(x);
        Vector256<double> chi = psiBefore;
        Vector256<double> chiBefore = -psi;
        Vector256<double> absorbed = Vector256<double>.Zero;
        for (int i = 0; i < VectorsPerOrder; i++)
        {
            orders[i] = Vector256<double>.Zero;
        }
        for (int n = 1; n <= terms; n++)
        {
            Vector256<double> order = Vector256.Create((double)n);
            Vector256<double> step = ((2.0 * n) - 1) * inverse;
            Vector256<double> psiNext = Fma.MultiplySubtract(step, psi, psiBefore);
            if (n > turning)
            {
                psiNext = Vector256.ConditionalSelect(
                    Vector256.LessThanOrEqual(order, x),
                    psiNext,
                    ratios[n] * psi
                );
            }
            Vector256<double> chiNext = Fma.MultiplySubtract(step, chi, chiBefore);
            (psiBefore, psi) = (psi, psiNext);
            (chiBefore, chi) = (chi, chiNext);

            Vector256<double> dRe = derivatives[2 * n];
            Vector256<double> dIm = derivatives[(2 * n) + 1];
            Vector256<double> perSize = order * inverse;
            Ratio(
                psi,
                psiBefore,
                chi,
                chiBefore,
                Fma.MultiplyAdd(dRe, uRe, Fma.MultiplyAddNegated(dIm, uIm, perSize)),
                Fma.MultiplyAdd(dRe, uIm, dIm * uRe),
                out Vector256<double> aRe,
                out Vector256<double> aIm,
                out Vector256<double> aLoss
            );
            Ratio(
                psi,
                psiBefore,
                chi,
                chiBefore,
                Fma.MultiplyAdd(dRe, mRe, Fma.MultiplyAddNegated(dIm, mIm, perSize)),
                Fma.MultiplyAdd(dRe, mIm, dIm * mRe),
                out Vector256<double> bRe,
                out Vector256<double> bIm,
                out Vector256<double> bLoss
            );
            Vector256<double> loss = ((2.0 * n) + 1) * (aLoss + bLoss);
            Vector256<double> sumRe = factors * (aRe + bRe);
            Vector256<double> sumIm = factors * (aIm + bIm);
            Vector256<double> differenceRe = factors * (aRe - bRe);
            Vector256<double> differenceIm = factors * (aIm - bIm);
            if (n > shortest)
            {
                Vector256<double> kept = Vector256.LessThanOrEqual(order, lastOrders);
                loss = Kept(kept, loss);
                sumRe = Kept(kept, sumRe);
                sumIm = Kept(kept, sumIm);
                differenceRe = Kept(kept, differenceRe);
                differenceIm = Kept(kept, differenceIm);
            }
            absorbed += loss;
            Vector256<double>* row = orders + (VectorsPerOrder * n);
            row[0] = sumRe;
            row[1] = sumIm;
            row[2] = differenceRe;
            row[3] = differenceIm;
        }
        return absorbed;

        static Vector256<double> Kept(Vector256<double> mask, Vector256<double> value) =>
            Vector256.ConditionalSelect(mask, value, Vector256<double>.Zero);

        // P / (P − iQ) with P = Aψ_n − ψ_{n−1}, Q = Aχ_n − χ_{n−1}.
        static void Ratio(
            Vector256<double> psi,
            Vector256<double> psiBefore,
            Vector256<double> chi,
            Vector256<double> chiBefore,
            Vector256<double> admittanceRe,
            Vector256<double> admittanceIm,
            out Vector256<double> re,
            out Vector256<double> im,
            out Vector256<double> loss
        )
        {
            Vector256<double> pRe = Fma.MultiplySubtract(admittanceRe, psi, psiBefore);
            Vector256<double> pIm = admittanceIm * psi;
            Vector256<double> downRe = Fma.MultiplyAdd(admittanceIm, chi, pRe);
            Vector256<double> downIm = pIm - Fma.MultiplySubtract(admittanceRe, chi, chiBefore);
            Vector256<double> inverseSquare =
                Vector256<double>.One / Fma.MultiplyAdd(downRe, downRe, downIm * downIm);
            re = Fma.MultiplyAdd(pRe, downRe, pIm * downIm) * inverseSquare;
            im = Fma.MultiplySubtract(pIm, downRe, pRe * downIm) * inverseSquare;
            loss = -admittanceIm * inverseSquare;
        }
    }
}
