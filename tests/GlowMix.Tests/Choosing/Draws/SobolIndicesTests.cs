using GlowMix.Choosing.Draws;

namespace GlowMix.Tests.Choosing.Draws;

public sealed class SobolIndicesTests
{
    private const int Rows = 4096;

    // Ishigami & Homma (1990) with a = 7, b = 0.1; its indices in closed form are printed in Saltelli et al. (2008), Global
    // Sensitivity Analysis: The Primer, and in the documents of most programs: S 0.3139, 0.4424, 0; total 0.5576, 0.4424, 0.2437.
    [Theory]
    [InlineData(0, 0.3139, 0.5576)]
    [InlineData(1, 0.4424, 0.4424)]
    [InlineData(2, 0, 0.2437)]
    public void Function_of_Ishigami_and_Homma_1990_has_its_published_indices(
        int input,
        double first,
        double total
    )
    {
        var found = IndicesOf(Ishigami, inputs: 3, input, Rows);
        Assert.Equal(first, found.FirstOrder, tolerance: 0.01);
        Assert.Equal(total, found.TotalOrder, tolerance: 0.01);
        Assert.InRange(found.FirstOrderError, 1e-4, 0.03);
        Assert.InRange(found.TotalOrderError, 1e-4, 0.03);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void Standard_errors_of_few_rows_hold_what_many_rows_find(int input)
    {
        var few = IndicesOf(Ishigami, 3, input, 128);
        var many = IndicesOf(Ishigami, 3, input, 16384);
        Assert.InRange(Math.Abs(few.FirstOrder - many.FirstOrder), 0, 3 * few.FirstOrderError);
        Assert.InRange(Math.Abs(few.TotalOrder - many.TotalOrder), 0, 3 * few.TotalOrderError);
    }

    [Fact]
    public void Inputs_that_only_add_up_have_shares_that_add_up_to_1()
    {
        static double Sum(double[] x) => (2 * x[0]) + x[1] + 100;
        var one = IndicesOf(Sum, 2, 0, Rows);
        var other = IndicesOf(Sum, 2, 1, Rows);
        Assert.Equal(0.8, one.FirstOrder, tolerance: 0.005);
        Assert.Equal(0.2, other.FirstOrder, tolerance: 0.005);
        Assert.Equal(one.FirstOrder, one.TotalOrder, tolerance: 0.01);
        Assert.Equal(other.FirstOrder, other.TotalOrder, tolerance: 0.01);
    }

    [Fact]
    public void What_does_not_vary_has_no_shares() =>
        Assert.Equal(default, SobolIndices.Of([1, 1, 1], [1, 1, 1], [1, 1, 1]));

    private static double Ishigami(double[] x)
    {
        double A(int i) => Math.PI * ((2 * x[i]) - 1);
        return Math.Sin(A(0))
            + (7 * Math.Pow(Math.Sin(A(1)), 2))
            + (0.1 * Math.Pow(A(2), 4) * Math.Sin(A(0)));
    }

    private static SobolIndices IndicesOf(Func<double[], double> model, int inputs, int input, int rows)
    {
        var sequence = SobolPoints.Scrambled(2 * inputs, seed: 7);
        double[][] points = [.. Enumerable.Range(0, rows).Select(sequence.Point)];
        double Run(double[] point, int from, int mixed) =>
            model([.. Enumerable.Range(0, inputs).Select(i => point[i == mixed ? inputs + i : from + i])]);
        return SobolIndices.Of(
            [.. points.Select(p => Run(p, 0, -1))],
            [.. points.Select(p => Run(p, inputs, -1))],
            [.. points.Select(p => Run(p, 0, input))]
        );
    }
}
