namespace GlowMix.Optics.Grains;

/// <summary>Squares of the Wigner 3j symbols that couple two orders of the Lorenz–Mie series to a Legendre moment.</summary>
internal static class Squared3j
{
    /// <summary>
    /// Squared 3j symbols (l n n+d; 0 1 −1) for one n and d and all l from 0 to <paramref name="squares"/>.Length − 1; 0 where
    /// the triangle of l, n and n + d does not close.
    /// </summary>
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
    public static void Fill(int n, int d, Span<double> squares)
    {
        squares.Clear();
        double start = 1 / ((2.0 * n) + 1);
        for (int k = 0; k < d; k++)
        {
            start *=
                2
                * ((2.0 * k) + 1)
                / (k + 1)
                * (n + k + 2.0)
                * (n + k)
                / (((2.0 * n) + (2 * k) + 3) * (2 * (n + k + 1.0)));
        }
        double edge = (2.0 * n) + d + 1;
        double before = 0;
        double current = 1;
        double betaSquared = 0;
        double norm = start;
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
}
