using System.Collections.Immutable;
using GlowMix.Materials.Calibrations;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace GlowMix.Choosing.Draws;

/// <summary>
/// Shares of numbers that the same readings told go together as their errors do: a Gaussian copula of the correlations that a
/// calibration keeps. Immutable.
/// </summary>
/// <remarks>
/// The first of some numbers that go together keeps its share, those behind it follow. Where a study of causes draws one after
/// the other, what they have in common counts for the first.
/// </remarks>
internal sealed class CorrelatedShares
{
    private readonly int[] places;
    private readonly Matrix<double>? root;

    /// <param name="numbers">All numbers that are drawn.</param>
    /// <param name="correlations">How some of them go together.</param>
    public CorrelatedShares(
        ImmutableArray<DoubtfulNumber> numbers,
        ImmutableArray<CalibratedCorrelation> correlations
    )
    {
        var together = correlations.SelectMany(c => new[] { c.Of, c.With }).ToHashSet();
        places =
        [
            .. Enumerable
                .Range(0, numbers.Length)
                .Where(i => numbers[i].Key is { } key && together.Contains(key)),
        ];
        root =
            places.Length > 1
                ? CorrelationMatrix.RootOf([.. places.Select(i => numbers[i].Key!)], correlations)
                : null;
    }

    /// <summary>The shares of a point that goes together.</summary>
    /// <param name="point">Independent shares, one a number, above 0 and below 1.</param>
    public double[] At(double[] point)
    {
        if (root is null)
        {
            return point;
        }
        double[] shares = [.. point];
        var deviates =
            root * Vector<double>.Build.Dense(places.Length, i => Normal.InvCDF(0, 1, point[places[i]]));
        for (int i = 0; i < places.Length; i++)
        {
            shares[places[i]] = Normal.CDF(0, 1, deviates[i]);
        }
        return shares;
    }
}
