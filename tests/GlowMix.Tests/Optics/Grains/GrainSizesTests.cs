using GlowMix.Optics.Grains;

namespace GlowMix.Tests.Optics.Grains;

public class GrainSizesTests
{
    // A log-normal's moments: ⟨d^p⟩ = median^p exp(p² ln²gsd / 2). ⟨1/d⟩ is the surface of the grains.
    [Theory]
    [InlineData(1.2, -1, 1e-4)]
    [InlineData(1.5, -1, 5e-4)]
    [InlineData(1.5, 1, 5e-4)]
    [InlineData(2.0, -1, 2e-3)]
    public void Forty_sizes_have_the_mean_surface_of_the_distribution(
        double deviation,
        int power,
        double tolerance
    )
    {
        SizeNodes nodes = GrainSizes.ByMass(40, deviation).Nodes(40);

        double mean = nodes
            .DiametersUm.Zip(nodes.MassShares, (d, share) => share * Math.Pow(d / 40, power))
            .Sum();
        double expected = Math.Exp(Math.Pow(Math.Log(deviation) * power, 2) / 2);
        Assert.Equal(1, mean / expected, tolerance);
    }

    [Fact]
    public void Sizes_rise_and_their_shares_make_one_with_half_below_the_median()
    {
        SizeNodes nodes = GrainSizes.ByMass(25, 1.4).Nodes(40);

        Assert.Equal(nodes.DiametersUm.Order(), nodes.DiametersUm);
        Assert.Equal(1, nodes.MassShares.Sum(), 1e-14);
        Assert.Equal(
            0.5,
            nodes.DiametersUm.Zip(nodes.MassShares).Where(s => s.First < 25).Sum(s => s.Second),
            1e-14
        );
    }

    [Fact]
    public void Classes_follow_each_other_and_split_at_equal_mass()
    {
        GrainSizes sizes = GrainSizes.ByMass(40, 1.5);
        double quintile = 40 * Math.Exp(Math.Log(1.5) * -0.8416212335729143);

        SizeNodes[] classes = [.. Enumerable.Range(0, 5).Select(i => sizes.MassClass(i, 5).Nodes(40))];

        // The size across the edge is in both.
        Assert.InRange(classes[0].DiametersUm[^2], 0.92 * quintile, quintile);
        Assert.Equal(quintile, classes[0].DiametersUm[^1], 0.02 * quintile);
        Assert.Equal(classes[0].DiametersUm[^1], classes[1].DiametersUm[0]);
        Assert.InRange(classes[1].DiametersUm[1], quintile, 1.08 * quintile);
        Assert.All(classes, c => Assert.Equal(1, c.MassShares.Sum(), 1e-13));
        Assert.All(classes, c => Assert.InRange(c.Count, 6, 12));
        Assert.Throws<ArgumentOutOfRangeException>(() => sizes.MassClass(5, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => sizes.MassClass(0, 0));
    }

    [Fact]
    public void Classes_hold_each_size_of_the_whole_with_all_its_mass()
    {
        GrainSizes sizes = GrainSizes.ByMass(40, 1.5);
        SizeNodes whole = sizes.Nodes(40);

        var together = Enumerable
            .Range(0, 5)
            .Select(i => sizes.MassClass(i, 5).Nodes(40))
            .SelectMany(c => c.DiametersUm.Zip(c.MassShares))
            .GroupBy(s => s.First, s => s.Second / 5)
            .ToDictionary(g => g.Key, g => g.Sum());

        Assert.Equal(whole.DiametersUm, together.Keys.Order());
        Assert.All(
            whole.DiametersUm.Zip(whole.MassShares),
            s => Assert.Equal(s.Second, together[s.First], 1e-14)
        );
    }

    [Fact]
    public void Grains_all_alike_are_one_size() =>
        Assert.Equal([30.0], GrainSizes.ByMass(30, 1).Nodes(40).DiametersUm);

    [Theory]
    [InlineData(0.09, 1.5)]
    [InlineData(301, 1.5)]
    [InlineData(double.NaN, 1.5)]
    [InlineData(40, 0.99)]
    [InlineData(40, 4.1)]
    public void Sizes_that_no_pigment_has_are_refused(double medianUm, double deviation) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => GrainSizes.ByMass(medianUm, deviation));
}
