using GlowMix.Spectra;

namespace GlowMix.Colour;

/// <summary>A phase of daylight: S(λ) = S₀(λ) + M₁ S₁(λ) + M₂ S₂(λ), 100 at 560 nm.</summary>
/// <param name="M1">Factor of the yellow–blue component.</param>
/// <param name="M2">Factor of the pink–green component.</param>
/// <remarks>
/// CIE 015:2018. Components every 5 nm from 300 to 830 nm, linear between. The tabulated D50, D55, D65 and D75 come of M₁
/// and M₂ rounded to three decimals, and of a temperature 1.4388/1.4380 above their name.
/// </remarks>
public readonly record struct DaylightPhase(double M1, double M2)
{
    /// <summary>The coolest and the warmest phase for which the CIE gives a locus, K.</summary>
    public const double LowestCctK = 4000;

    /// <inheritdoc cref="LowestCctK"/>
    public const double HighestCctK = 25_000;

    private static readonly ShippedTable Table = ShippedTable.Read("cie/daylight_components");

    internal static TabulatedSpectrum S0 { get; } = Table.Spectrum("s0");

    internal static TabulatedSpectrum S1 { get; } = Table.Spectrum("s1");

    internal static TabulatedSpectrum S2 { get; } = Table.Spectrum("s2");

    /// <summary>The phase of a nominal CCT.</summary>
    /// <param name="cctK">4000 to 25 000 K.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the locus of daylight.</exception>
    public static DaylightPhase AtK(double cctK)
    {
        Chromaticity d = ChromaticityAtK(cctK);
        double m = 0.0241 + (0.2562 * d.X) - (0.7341 * d.Y);
        return new(
            (-1.3515 - (1.7703 * d.X) + (5.9114 * d.Y)) / m,
            (0.0300 - (31.4424 * d.X) + (30.0717 * d.Y)) / m
        );
    }

    /// <summary>The daylight locus, x_D and y_D.</summary>
    /// <param name="cctK">4000 to 25 000 K.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the locus of daylight.</exception>
    public static Chromaticity ChromaticityAtK(double cctK)
    {
        if (cctK is not (>= LowestCctK and <= HighestCctK))
        {
            throw new ArgumentOutOfRangeException(
                nameof(cctK),
                cctK,
                "A phase of daylight must have 4000 to 25 000 K."
            );
        }
        double perK = 1 / cctK;
        double x =
            cctK <= 7000
                ? 0.244063 + (perK * (0.09911e3 + (perK * (2.9678e6 - (perK * 4.6070e9)))))
                : 0.237040 + (perK * (0.24748e3 + (perK * (1.9018e6 - (perK * 2.0064e9)))));
        return Chromaticity.FromXy(x, (-3.000 * x * x) + (2.870 * x) - 0.275);
    }

    /// <summary>Relative power per nm, 100 at 560 nm; zero beyond 300 to 830 nm.</summary>
    /// <param name="nm">Wavelength, nm.</param>
    public double At(double nm) => S0.ValueAtNm(nm) + (M1 * S1.ValueAtNm(nm)) + (M2 * S2.ValueAtNm(nm));

    /// <summary>Relative power per nm on the model's grid, 100 at 560 nm.</summary>
    public Spectrum OnModelGrid()
    {
        DaylightPhase phase = this;
        return Spectrum.FromNm(phase.At);
    }
}
