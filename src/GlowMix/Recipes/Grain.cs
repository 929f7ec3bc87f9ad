namespace GlowMix.Recipes;

/// <summary>Grain sizes told by the diameters below which 10 and 90 % of the mass lie.</summary>
public static class Grain
{
    // The standard normal's 90 % point.
    private const double NinetyPercentPoint = 1.2815515655446004;

    /// <summary>Median of the log-normal with these ends, µm.</summary>
    public static double MedianOfEndsUm(double fromUm, double toUm) => Math.Sqrt(fromUm * toUm);

    /// <summary>Geometric standard deviation of the log-normal with these ends.</summary>
    public static double GsdOfEnds(double fromUm, double toUm) =>
        Math.Exp(Math.Log(toUm / fromUm) / (2 * NinetyPercentPoint));
}
