using System.Runtime.Intrinsics;

namespace GlowMix.Optics.Grains;

/// <summary>Squares of the Wigner 3j symbols that couple two orders of the Lorenz–Mie series to a Legendre moment.</summary>
/// <remarks>
/// <para>
/// Start at l = d from the closed form of a stretched symbol (Edmonds 1957, table 2), then Schulten &amp; Gordon (1975, J. Math.
/// Phys. 16, 1961), eqs 5 and 6, whose three terms become, for these magnetic numbers,
/// α_{l+1} f_{l+1} = 2(2l + 1) f_l − α_l f_{l−1} with α_l² = (l² − d²)((2n + d + 1)² − l²), up to the sign of every other f.
/// Upward from l = d is stable: these symbols oscillate over the whole range.
/// </para>
/// <para>
/// The roots go, and all stays near one, by f_l = v_l / Π β with β_l² = (1 − d²/l²)(1 − l²/(2n + d + 1)²) = (α_l / l(2n + d + 1))².
/// </para>
/// </remarks>
internal static class Squared3j
{
    /// <summary>
    /// (l n n+d; 0 1 −1)² for one n and d and all l from 0 to the span's end; 0 where the triangle of l, n and n + d does not close.
    /// </summary>
    public static void Fill(int n, int d, Span<double> squares)
    {
        squares.Clear();
        Span<double> starts = stackalloc double[d + 1];
        Stretched(n, starts);
        double edge = (2.0 * n) + d + 1;
        double before = 0;
        double current = 1;
        double betaSquared = 0;
        double norm = starts[d];
        for (int l = d; l < squares.Length && l < edge; l++)
        {
            squares[l] = norm * current * current;
            int up = l + 1;
            double next = ((2 * (l + up) / edge * current) - (l * betaSquared * before)) / up;
            (before, current) = (current, next);
            betaSquared = (1 - ((double)d * d / (up * up))) * (1 - (up / edge * (up / edge)));
            norm /= betaSquared;
        }
    }

    /// <summary>The same for four neighbouring d, one in each lane.</summary>
    /// <param name="n">Order of the first coefficient, 1 or more.</param>
    /// <param name="firstD">The d of the first lane.</param>
    /// <param name="stretched">From <see cref="Stretched"/>, up to the last lane's d at least.</param>
    /// <param name="squares">Receives l = <paramref name="firstD"/>, … up to its end.</param>
    public static void FillFour(
        int n,
        int firstD,
        ReadOnlySpan<double> stretched,
        Span<Vector256<double>> squares
    )
    {
        Vector256<double> d = Vector256.Create(firstD, firstD + 1, firstD + 2, firstD + 3.0);
        Vector256<double> start = Vector256.Create(stretched.Slice(firstD, 4));
        Vector256<double> dSquared = d * d;
        Vector256<double> edge = d + Vector256.Create((2.0 * n) + 1);
        Vector256<double> inverseEdge = Vector256<double>.One / edge;
        Vector256<double> inverseEdgeSquared = inverseEdge * inverseEdge;
        Vector256<double> before = Vector256<double>.Zero;
        Vector256<double> current = Vector256<double>.Zero;
        Vector256<double> betaSquared = Vector256<double>.Zero;
        Vector256<double> norm = Vector256<double>.Zero;
        for (int i = 0; i < squares.Length; i++)
        {
            int l = firstD + i;
            if (i < 4)
            {
                Vector256<double> starts = Vector256.Equals(d, Vector256.Create((double)l));
                current = Vector256.ConditionalSelect(starts, Vector256<double>.One, current);
                norm = Vector256.ConditionalSelect(starts, start, norm);
            }
            squares[i] = norm * current * current;
            double up = l + 1;
            Vector256<double> next =
                ((2 * (l + up) / up) * inverseEdge * current) - ((l / up) * betaSquared * before);
            (before, current) = (current, next);
            betaSquared =
                (Vector256<double>.One - (dSquared * (1 / (up * up))))
                * (Vector256<double>.One - ((up * up) * inverseEdgeSquared));
            // Zero before a lane's first l and past its last, where β² is 0 to rounding or negative; elsewhere it is 0.01 or more.
            norm = Vector256.ConditionalSelect(
                Vector256.GreaterThan(betaSquared, Vector256.Create(1e-12)),
                norm / betaSquared,
                Vector256<double>.Zero
            );
        }
    }

    /// <summary>The stretched symbols (d n n+d; 0 1 −1)² for d from 0 to the span's end.</summary>
    public static void Stretched(int n, Span<double> squares)
    {
        double square = 1 / ((2.0 * n) + 1);
        for (int d = 0; d < squares.Length; d++)
        {
            squares[d] = square;
            square *=
                ((2.0 * d) + 1)
                * (n + d + 2.0)
                * (n + d)
                / ((d + 1.0) * ((2.0 * n) + (2 * d) + 3) * (n + d + 1.0));
        }
    }
}
