namespace GlowMix.Colour;

/// <summary>A colour without its brightness. The default is x = y = 0, which no light has.</summary>
/// <remarks>
/// CIE 015:2018. CIE 1960 u, v serves CCT, Duv and colour rendering; CIE 1976 u′, v′ (v′ = 1.5 v) serves differences.
/// </remarks>
public readonly record struct Chromaticity
{
    private Chromaticity(double x, double y) => (X, Y) = (x, y);

    /// <summary>CIE 1931 x.</summary>
    public double X { get; }

    /// <summary>CIE 1931 y.</summary>
    public double Y { get; }

    /// <summary>CIE 1960 u.</summary>
    public double U => 4 * X / Denominator;

    /// <summary>CIE 1960 v.</summary>
    public double V => 6 * Y / Denominator;

    /// <summary>CIE 1976 u′, the same as u.</summary>
    public double UPrime => U;

    /// <summary>CIE 1976 v′.</summary>
    public double VPrime => 9 * Y / Denominator;

    private double Denominator => 3 - (2 * X) + (12 * Y);

    /// <summary>From CIE 1931 x, y.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not finite, or without a place in the u, v plane.</exception>
    public static Chromaticity FromXy(double x, double y)
    {
        Chromaticity point = new(x, y);
        return double.IsFinite(x) && double.IsFinite(y) && point.Denominator > 0
            ? point
            : throw new ArgumentOutOfRangeException(
                nameof(x),
                FormattableString.Invariant($"x, y of {x}, {y} is no chromaticity.")
            );
    }

    /// <summary>From CIE 1960 u, v.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not finite, or without a place in the x, y plane.</exception>
    public static Chromaticity FromUv1960(double u, double v)
    {
        double denominator = (2 * u) - (8 * v) + 4;
        return denominator > 0
            ? FromXy(3 * u / denominator, 2 * v / denominator)
            : throw new ArgumentOutOfRangeException(
                nameof(u),
                FormattableString.Invariant($"u, v of {u}, {v} is no chromaticity.")
            );
    }

    /// <summary>From CIE 1976 u′, v′.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not finite, or without a place in the x, y plane.</exception>
    public static Chromaticity FromUPrimeVPrime(double uPrime, double vPrime) =>
        FromUv1960(uPrime, vPrime / 1.5);
}
