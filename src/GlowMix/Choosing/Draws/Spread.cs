using GlowMix.Materials;
using MathNet.Numerics.Distributions;

namespace GlowMix.Choosing.Draws;

/// <summary>
/// How a number may turn out: normal around the number as it stands, in itself or in its logarithm, cut off at what is possible.
/// A tolerance and the ends of a doubt are two standard deviations away; ends of unlike distance make two unlike halves that
/// meet at the number itself, which stays the median unless the range cuts one side. Immutable.
/// </summary>
internal readonly record struct Spread
{
    /// <summary>A tolerance is so many standard deviations.</summary>
    public const double DeviationsOfATolerance = 2;

    private readonly double below; // one standard deviation, of the number or of its logarithm
    private readonly double above;
    private readonly bool isOfLogarithm;
    private readonly bool isEven;
    private readonly double leastShare;
    private readonly double mostShare;

    private Spread(double likely, double below, double above, bool isOfLogarithm, double least, double most)
    {
        (Likely, this.below, this.above, this.isOfLogarithm) = (likely, below, above, isOfLogarithm);
        leastShare = ShareBelow(least);
        mostShare = ShareBelow(most);
    }

    private Spread(double from, double to)
    {
        Likely = (from + to) / 2;
        below = above = (to - from) / 2;
        isEven = true;
    }

    /// <summary>The number as it stands.</summary>
    public double Likely { get; }

    /// <summary>Plus or minus a tolerance.</summary>
    /// <param name="likely">The number as it stands.</param>
    /// <param name="tolerance">Two standard deviations, above 0.</param>
    /// <param name="least">The number cannot be less.</param>
    /// <param name="most">The number cannot be more.</param>
    public static Spread Within(
        double likely,
        double tolerance,
        double least = double.NegativeInfinity,
        double most = double.PositiveInfinity
    ) => Between(likely, likely - tolerance, likely + tolerance, least, most);

    /// <summary>Two ends, each two standard deviations away.</summary>
    public static Spread Between(
        double likely,
        double low,
        double high,
        double least = double.NegativeInfinity,
        double most = double.PositiveInfinity
    ) =>
        new(
            likely,
            (likely - low) / DeviationsOfATolerance,
            (high - likely) / DeviationsOfATolerance,
            false,
            least,
            most
        );

    /// <summary>Two ends, each two standard deviations of the logarithm away; all above 0.</summary>
    public static Spread BetweenInLog(
        double likely,
        double low,
        double high,
        double least = 0,
        double most = double.PositiveInfinity
    ) =>
        new(
            likely,
            Math.Log(likely / low) / DeviationsOfATolerance,
            Math.Log(high / likely) / DeviationsOfATolerance,
            true,
            least,
            most
        );

    /// <summary>A factor either way.</summary>
    public static Spread ByFactor(
        double likely,
        double factor,
        double least = 0,
        double most = double.PositiveInfinity
    ) => BetweenInLog(likely, likely / factor, likely * factor, least, most);

    /// <summary>Anywhere between two ends, all places alike.</summary>
    public static Spread Evenly(double from, double to) => new(from, to);

    /// <summary>As a material states it; null if it states nothing.</summary>
    public static Spread? Of(
        Doubt doubt,
        double likely,
        double least = double.NegativeInfinity,
        double most = double.PositiveInfinity
    ) =>
        doubt.IsNone ? null
        : doubt.Factor is double factor ? ByFactor(likely, factor, Math.Max(0, least), most)
        : Between(likely, doubt.LowOf(likely), doubt.HighOf(likely), least, most);

    /// <summary>The number below which a share of all outcomes lie.</summary>
    /// <param name="share">Above 0 and below 1.</param>
    public double At(double share)
    {
        if (isEven)
        {
            return Likely + (((2 * share) - 1) * above);
        }
        double deviate = Normal.InvCDF(0, 1, leastShare + (share * (mostShare - leastShare)));
        double step = deviate * (deviate < 0 ? below : above);
        return isOfLogarithm ? Likely * Math.Exp(step) : Likely + step;
    }

    private double ShareBelow(double end)
    {
        if (double.IsInfinity(end) || (isOfLogarithm && end <= 0))
        {
            return end > 0 ? 1 : 0;
        }
        double step = isOfLogarithm ? Math.Log(end / Likely) : end - Likely;
        double deviation = step < 0 ? below : above;
        return deviation > 0 ? Normal.CDF(0, 1, step / deviation)
            : step < 0 ? 0
            : 1;
    }
}
