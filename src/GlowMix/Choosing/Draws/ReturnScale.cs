using GlowMix.LitState;
using GlowMix.Materials;
using GlowMix.Spectra;

namespace GlowMix.Choosing.Draws;

/// <summary>A package that converts more or less of the light sent back to it: the entries below the diagonal times a factor.</summary>
internal static class ReturnScale
{
    /// <summary>The matrix with stronger or weaker conversion; what comes back unchanged stays.</summary>
    public static ReturnMatrix Scaled(ReturnMatrix matrix, double factor) =>
        ReturnMatrix.From(
            matrix[0, 0],
            factor * matrix[1, 0],
            factor * matrix[2, 0],
            matrix[1, 1],
            factor * matrix[2, 1],
            matrix[2, 2]
        );

    /// <summary>
    /// The strongest conversion that the bare spectrum leaves room for: a package cannot send out more of a band than it is seen
    /// to, nor return more light than it gets.
    /// </summary>
    /// <param name="led">The package.</param>
    /// <param name="resinIndex">Of the resin that fills or covers it.</param>
    /// <returns>The greatest factor, 0 or more; infinite where nothing is converted.</returns>
    public static double Greatest(LedBands led, Spectrum resinIndex)
    {
        double greatest = double.PositiveInfinity;
        for (int from = 0; from < LedBands.Count; from++)
        {
            double converted = 0;
            for (int into = from + 1; into < LedBands.Count; into++)
            {
                converted += led.Returned[into, from];
            }
            if (converted > 0)
            {
                greatest = Math.Min(greatest, (1 - led.Returned[from, from]) / converted);
            }
        }
        // The first pass falls in a straight line with the factor.
        var now = FirstPass.Of(led, resinIndex);
        var without = FirstPass.Of(led with { Returned = Diagonal(led.Returned) }, resinIndex);
        for (int j = 0; j < LedBands.Count; j++)
        {
            for (int i = 0; i < WavelengthGrid.Count; i++)
            {
                double fall = without[j][i] - now[j][i];
                if (fall > 0)
                {
                    greatest = Math.Min(greatest, without[j][i] / fall);
                }
            }
        }
        return Math.Max(0, greatest);
    }

    private static double[,] Diagonal(double[,] matrix)
    {
        var diagonal = new double[LedBands.Count, LedBands.Count];
        for (int j = 0; j < LedBands.Count; j++)
        {
            diagonal[j, j] = matrix[j, j];
        }
        return diagonal;
    }
}
