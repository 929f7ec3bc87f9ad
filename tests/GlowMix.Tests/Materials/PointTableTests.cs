using GlowMix.Materials;

namespace GlowMix.Tests.Materials;

public class PointTableTests
{
    private static readonly PointTable Table = new([new(10, 1), new(20, 100), new(40, 50)]);

    [Fact]
    public void At_its_points_a_table_is_exact_and_beyond_them_it_is_held()
    {
        Assert.Equal([1, 1, 100, 50, 50], ((double[])[5, 10, 20, 40, 80]).Select(Table.Linear));
        Assert.Equal([1, 1, 100, 50, 50], ((double[])[5, 10, 20, 40, 80]).Select(Table.LogLinear));
    }

    [Fact]
    public void Between_them_it_is_straight_in_what_is_asked()
    {
        Assert.Equal(50.5, Table.Linear(15), tolerance: 1e-12);
        Assert.Equal(10, Table.LogLinear(15), tolerance: 1e-12);
        Assert.Equal(75, Table.LinearOverLog(20 * Math.Sqrt(2)), tolerance: 1e-12);
    }
}
