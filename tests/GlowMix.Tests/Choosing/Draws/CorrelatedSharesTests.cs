using GlowMix.Choosing.Draws;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;

namespace GlowMix.Tests.Choosing.Draws;

public sealed class CorrelatedSharesTests
{
    private static readonly DoubtfulNumber[] Numbers =
    [
        Number(null),
        Number("resin.absorption_factor"),
        Number("a.trap_level"),
        Number(null),
        Number("a.trap_tilt"),
    ];

    [Fact]
    public void Shares_go_together_as_told_and_each_stays_evenly_spread()
    {
        var together = new CorrelatedShares(
            [.. Numbers],
            [
                new("a.trap_tilt", "a.trap_level", -0.8),
                new("resin.absorption_factor", "a.trap_level", 0.4),
                new("a.trap_level", "b.of_no_piece", 0.9),
            ]
        );
        double[][] points = DrawTable.Points(Numbers.Length, 4096);
        double[][] shares = [.. points.Select(together.At)];
        Assert.Equal(-0.8, CorrelationOf(shares, 2, 4), 0.01);
        Assert.Equal(0.4, CorrelationOf(shares, 1, 2), 0.01);
        Assert.Equal(0, CorrelationOf(shares, 1, 4), 0.01);
        Assert.Equal(0, CorrelationOf(shares, 0, 2), 0.01);
        for (int i = 0; i < Numbers.Length; i++)
        {
            double[] sorted = [.. shares.Select(s => s[i]).Order()];
            Assert.All(
                [0.1, 0.5, 0.9],
                q => Assert.Equal(q, SortedArrayStatistics.Quantile(sorted, q), 0.01)
            );
        }
        // Numbers that go with none keep their points.
        Assert.All(
            points.Zip(shares),
            p => Assert.Equal((p.First[0], p.First[3]), (p.Second[0], p.Second[3]))
        );
    }

    [Fact]
    public void Without_correlations_a_point_stays_what_it_is()
    {
        double[] point = [0.1, 0.2, 0.3, 0.4, 0.5];
        Assert.Same(point, new CorrelatedShares([.. Numbers], []).At(point));
    }

    [Fact]
    public void Correlations_that_rounding_made_impossible_are_weakened_a_little()
    {
        // Exact would be 0.9 * 0.9 - 0.19 = 0.62; 0.615 lies just outside.
        var together = new CorrelatedShares(
            [.. Numbers],
            [
                new("a.trap_tilt", "a.trap_level", 0.9),
                new("resin.absorption_factor", "a.trap_level", 0.9),
                new("resin.absorption_factor", "a.trap_tilt", 0.615),
            ]
        );
        double[][] shares = [.. DrawTable.Points(Numbers.Length, 4096).Select(together.At)];
        Assert.Equal(0.9, CorrelationOf(shares, 2, 4), 0.01);
        Assert.Equal(0.615, CorrelationOf(shares, 1, 4), 0.01);
    }

    private static DoubtfulNumber Number(string? key) =>
        new(CauseTexts.Depths, Spread.Within(0, 1), (_, _) => { }, key);

    private static double CorrelationOf(double[][] shares, int i, int j) =>
        Correlation.Pearson(
            shares.Select(s => Normal.InvCDF(0, 1, s[i])),
            shares.Select(s => Normal.InvCDF(0, 1, s[j]))
        );
}
