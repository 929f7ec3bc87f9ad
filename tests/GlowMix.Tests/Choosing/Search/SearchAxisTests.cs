using GlowMix.Choosing.Search;

namespace GlowMix.Tests.Choosing.Search;

public sealed class SearchAxisTests
{
    [Fact]
    public void Coarse_values_are_round_and_the_ends_are_as_given()
    {
        var axis = SearchAxis.Between("depth_mm", 0.8, 4, 20);
        Assert.Equal(0.8, axis.Values[0]);
        Assert.Equal(4, axis.Values[^1]);
        double[] expected = [0.8, 1, 1.2, 1.4, 1.6, 1.8, 2, 2.2, 2.4, 2.6, 2.8, 3, 3.2, 3.4, 3.6, 3.8, 4];
        Assert.Equal(expected, axis.CoarseIndices.Select(i => axis.Values[i]));
        Assert.Equal([0.8, 0.82, 0.84, 0.86], axis.Values.Take(4));
    }

    [Fact]
    public void Ends_that_are_not_round_stay_what_they_are()
    {
        var axis = SearchAxis.Between("loading_percent", 5.13, 39.7, 8);
        Assert.Equal([5.13, 10, 15, 20, 25, 30, 35, 39.7], axis.CoarseIndices.Select(i => axis.Values[i]));
        Assert.Equal([5.13, 5.5, 6], axis.Values.Take(3));
        Assert.Equal([39.5, 39.7], axis.Values[^2..]);
    }

    [Theory]
    [InlineData(1, 1.001, 7)]
    [InlineData(0, 80, 200)]
    [InlineData(0.01, 200, 2)]
    [InlineData(20, 20_000, 13)]
    public void Values_rise_and_are_about_as_many_as_asked_for(double from, double to, int steps)
    {
        var axis = SearchAxis.Between("depth_mm", from, to, steps);
        Assert.All(axis.Values.Zip(axis.Values.Skip(1)), pair => Assert.True(pair.First < pair.Second));
        Assert.InRange(axis.CoarseIndices.Length - 1, (steps / 1.5) - 1, (steps * 1.5) + 2);
        Assert.Equal(axis.Values.Length - 1, axis.CoarseIndices[^1]);
        Assert.Equal(0, axis.CoarseIndices[0]);
    }
}
