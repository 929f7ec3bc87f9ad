namespace GlowMix.Choosing.Draws;

/// <summary>How much of the variance of a result one input, or a group of inputs, makes.</summary>
/// <param name="FirstOrder">By itself: what would be gone, on average, if it were known. 0 to 1 but for chance.</param>
/// <param name="FirstOrderError">Standard error.</param>
/// <param name="TotalOrder">With all that it does together with others: what would be left if all others were known.</param>
/// <param name="TotalOrderError">Standard error.</param>
public readonly record struct SobolIndices(
    double FirstOrder,
    double FirstOrderError,
    double TotalOrder,
    double TotalOrderError
)
{
    /// <summary>The indices from a model run on two sets of points and on their mixture.</summary>
    /// <param name="a">Results at the points of set A.</param>
    /// <param name="b">At those of set B.</param>
    /// <param name="mixed">At those of A with the inputs in question taken from B.</param>
    /// <returns>All 0 where nothing varies.</returns>
    /// <remarks>
    /// First order: Saltelli et al. (2010), Comput. Phys. Commun. 181, 259, table 2, row (b). Total order: Jansen (1999), Comput.
    /// Phys. Commun. 117, 35, row (f) of that table. The variance is that of both sets together; standard errors are those of a
    /// ratio of means over independent rows, more than evenly spread points are off.
    /// </remarks>
    public static SobolIndices Of(ReadOnlySpan<double> a, ReadOnlySpan<double> b, ReadOnlySpan<double> mixed)
    {
        int count = a.Length;
        if (count < 2 || b.Length != count || mixed.Length != count)
        {
            throw new ArgumentException("Needed: three sets of results, each of the same two or more rows.");
        }
        double mean = 0;
        for (int i = 0; i < count; i++)
        {
            mean += (a[i] + b[i]) / (2 * count);
        }
        var first = new double[count];
        var total = new double[count];
        var variance = new double[count];
        for (int i = 0; i < count; i++)
        {
            // The mean taken away first: nothing in exact numbers, much less chance in few of them.
            first[i] = (b[i] - mean) * (mixed[i] - a[i]);
            total[i] = Square(a[i] - mixed[i]) / 2;
            variance[i] = (Square(a[i] - mean) + Square(b[i] - mean)) / 2;
        }
        var (s, errorOfS) = Ratio(first, variance);
        var (t, errorOfT) = Ratio(total, variance);
        return new(s, errorOfS, t, errorOfT);
    }

    private static (double Ratio, double Error) Ratio(double[] upper, double[] lower)
    {
        double below = lower.Average();
        if (below <= 0)
        {
            return (0, 0);
        }
        double ratio = upper.Average() / below;
        double squares = upper.Zip(lower, (u, l) => Square(u - (ratio * l))).Sum();
        return (ratio, Math.Sqrt(squares / (upper.Length - 1) / upper.Length) / below);
    }

    private static double Square(double x) => x * x;
}
