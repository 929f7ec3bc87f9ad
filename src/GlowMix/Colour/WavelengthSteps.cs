namespace GlowMix.Colour;

/// <summary>The width in nm that each sample of a grid stands for in a sum.</summary>
internal static class WavelengthSteps
{
    // A grid written with three decimals is even although its differences are not, to the last bit.
    private const double EvenToNm = 1e-3;

    /// <summary>
    /// On an even grid one step for each sample, the first and the last too, as the CIE sums its tables; on an uneven one
    /// the trapezoid rule.
    /// </summary>
    /// <param name="wavelengthsNm">Ascending wavelengths, nm; at least two.</param>
    /// <remarks>
    /// CIE 015:2018 sums at 1 nm, or at 5 nm. The two rules differ by half a step at each end, which is nothing where the
    /// light ends inside the grid.
    /// </remarks>
    public static double[] OfNm(ReadOnlySpan<double> wavelengthsNm)
    {
        var steps = new double[wavelengthsNm.Length];
        double stepNm = (wavelengthsNm[^1] - wavelengthsNm[0]) / (wavelengthsNm.Length - 1);
        bool even = true;
        for (int i = 1; i < steps.Length; i++)
        {
            double widthNm = wavelengthsNm[i] - wavelengthsNm[i - 1];
            even &= Math.Abs(widthNm - stepNm) <= EvenToNm;
            steps[i - 1] += widthNm / 2;
            steps[i] += widthNm / 2;
        }
        for (int i = 0; even && i < steps.Length; i++)
        {
            steps[i] = stepNm;
        }
        return steps;
    }
}
