using System.Numerics;
using GlowMix.Choosing.Draws;

namespace GlowMix.Tests.Choosing.Draws;

public sealed class SobolPointsTests
{
    private const ulong Seed = 1967;

    [Fact]
    public void First_points_are_those_of_the_table_of_JoeKuo()
    {
        // The ten points printed with the published direction numbers (new-joe-kuo-6.21201, three dimensions).
        double[][] printed =
        [
            [0, 0, 0],
            [0.5, 0.5, 0.5],
            [0.75, 0.25, 0.25],
            [0.25, 0.75, 0.75],
            [0.375, 0.375, 0.625],
            [0.875, 0.875, 0.125],
            [0.625, 0.125, 0.875],
            [0.125, 0.625, 0.375],
            [0.1875, 0.3125, 0.9375],
            [0.6875, 0.8125, 0.4375],
        ];
        var points = SobolPoints.Plain(3);
        Assert.Equal(printed, Enumerable.Range(0, printed.Length).Select(points.Point));
    }

    [Fact]
    public void Direction_numbers_are_odd_and_fit_their_place()
    {
        for (int d = 1; d < JoeKuoDirections.DimensionCount; d++)
        {
            var first = JoeKuoDirections.FirstOf(d);
            Assert.All(
                first.Select((m, k) => (m, k)),
                x =>
                    Assert.True(x.m % 2 == 1 && x.m < 1u << (x.k + 1), $"dimension {d + 1}, number {x.k + 1}")
            );
        }
    }

    [Fact]
    public void Polynomials_are_primitive_and_each_is_used_once()
    {
        var polynomials = Enumerable
            .Range(1, JoeKuoDirections.DimensionCount - 1)
            .Select(JoeKuoDirections.PolynomialOf)
            .ToArray();
        Assert.Equal(polynomials.Length, polynomials.Distinct().Count());
        Assert.All(polynomials, p => Assert.True(IsPrimitive(p), $"{p:b}"));

        // φ(2^s − 1)/s polynomials are primitive of degree s: 1, 1, 2, 2, 6, 6, 18 up to degree 7, all of them used.
        Assert.Equal(
            [1, 1, 2, 2, 6, 6, 18],
            polynomials.GroupBy(BitOperations.Log2).OrderBy(g => g.Key).Select(g => g.Count())
        );
    }

    [Theory]
    [InlineData(3)]
    [InlineData(80)]
    public void Each_coordinate_of_512_points_has_one_in_every_512th(int dimensions)
    {
        var points = Scrambled(dimensions, 512);
        for (int d = 0; d < dimensions; d++)
        {
            var cells = points.Select(p => (int)(p[d] * 512)).ToHashSet();
            Assert.Equal(512, cells.Count);
            Assert.All(points, p => Assert.InRange(p[d], double.Epsilon, 1 - 1e-12));
        }
    }

    [Fact]
    public void Scrambling_keeps_the_two_dimensional_net_of_the_plain_points()
    {
        // The first two dimensions are a (0, m, 2)-net (Sobol 1967): one of 2^m points in every box of that volume.
        foreach (var (columns, rows) in new[] { (512, 1), (64, 8), (16, 32), (2, 256) })
        {
            var boxes = Scrambled(2, 512)
                .Select(p => ((int)(p[0] * columns), (int)(p[1] * rows)))
                .ToHashSet();
            Assert.Equal(512, boxes.Count);
        }
    }

    [Fact]
    public void Dimensions_beyond_the_table_do_not_follow_those_they_are_made_of()
    {
        const int Beyond = JoeKuoDirections.DimensionCount;
        var points = Scrambled(2 * Beyond, 512);
        for (int d = 0; d < Beyond; d++)
        {
            double correlation = 12 * points.Average(p => (p[d] - 0.5) * (p[d + Beyond] - 0.5));
            Assert.InRange(correlation, -0.15, 0.15);
        }
    }

    [Fact]
    public void Same_seed_same_points_other_seed_others()
    {
        Assert.Equal(Scrambled(5, 64), Scrambled(5, 64));
        Assert.NotEqual(SobolPoints.Scrambled(5, Seed).Point(3), SobolPoints.Scrambled(5, Seed + 1).Point(3));
    }

    [Fact]
    public void Mean_of_a_smooth_product_is_far_nearer_than_by_chance()
    {
        // Sobol's product Π (|4 x − 2| + a) / (1 + a) with a = (0, 1, 4.5, 9, 99, 99) has the mean 1 and the variance 0.5; the
        // mean of 512 random points would be off by 0.03.
        double[] a = [0, 1, 4.5, 9, 99, 99];
        double mean = Scrambled(a.Length, 512)
            .Average(p =>
                p.Zip(a, (x, ai) => (Math.Abs((4 * x) - 2) + ai) / (1 + ai)).Aggregate((x, y) => x * y)
            );
        Assert.Equal(1, mean, tolerance: 0.003);
    }

    private static double[][] Scrambled(int dimensions, int count)
    {
        var points = SobolPoints.Scrambled(dimensions, Seed);
        return [.. Enumerable.Range(0, count).Select(points.Point)];
    }

    // x has the order 2^s − 1 modulo the polynomial: it is 1 there for the first time at that power.
    private static bool IsPrimitive(uint polynomial)
    {
        int degree = BitOperations.Log2(polynomial);
        uint power = 1;
        for (int i = 1; i <= (1 << degree) - 1; i++)
        {
            power <<= 1;
            if ((power >> degree) == 1)
            {
                power ^= polynomial;
            }
            if (power == 1)
            {
                return i == (1 << degree) - 1;
            }
        }
        return false;
    }
}
