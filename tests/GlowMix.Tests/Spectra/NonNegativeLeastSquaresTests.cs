using GlowMix.Spectra;

namespace GlowMix.Tests.Spectra;

public class NonNegativeLeastSquaresTests
{
    [Fact]
    public void A_solution_without_negative_weights_is_the_least_squares_one()
    {
        // Straight line through (0, 1), (1, 2), (2, 4): normal equations by hand give 5/6 and 3/2.
        double[] x = NonNegativeLeastSquares.Solve(
            new double[,]
            {
                { 1, 0 },
                { 1, 1 },
                { 1, 2 },
            },
            [1, 2, 4]
        );
        Assert.Equal(5.0 / 6, x[0], tolerance: 1e-13);
        Assert.Equal(3.0 / 2, x[1], tolerance: 1e-13);
    }

    [Fact]
    public void A_weight_that_would_be_negative_is_exactly_zero_and_the_rest_is_fitted_again()
    {
        // Points (1, 1) and (2, 3). Without the bound: intercept −1, slope 2. With it the intercept is 0 and the slope Σxy / Σx² = 7/5.
        double[] x = NonNegativeLeastSquares.Solve(
            new double[,]
            {
                { 1, 1 },
                { 1, 2 },
            },
            [1, 3]
        );
        Assert.Equal(0, x[0]);
        Assert.Equal(7.0 / 5, x[1], tolerance: 1e-14);
    }

    [Fact]
    public void A_target_that_points_away_from_every_column_gets_no_weight() =>
        Assert.Equal(
            [0, 0],
            NonNegativeLeastSquares.Solve(
                new double[,]
                {
                    { 1, 0 },
                    { 0, 1 },
                },
                [-1, -2]
            )
        );

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void The_conditions_of_Kuhn_and_Tucker_hold_for_broad_overlapping_shapes(int seed)
    {
        // x ≥ 0, no column lowers the misfit further, and it does not matter for those in use (Lawson & Hanson 1974, 23.1).
        var random = new Random(seed);
        const int Rows = 40;
        const int Columns = 15;
        var a = new double[Rows, Columns];
        for (int j = 0; j < Columns; j++)
        {
            double scale = Math.Pow(10, (random.NextDouble() * 8) - 4);
            for (int i = 0; i < Rows; i++)
            {
                a[i, j] = scale * Math.Exp(-Math.Pow((i - (3.0 * j)) / 6, 2));
            }
        }
        double[] b = [.. Enumerable.Range(0, Rows).Select(_ => random.NextDouble() - 0.3)];
        double[] x = NonNegativeLeastSquares.Solve(a, b);

        Assert.Contains(x, weight => weight == 0);
        Assert.Contains(x, weight => weight > 0);
        for (int j = 0; j < Columns; j++)
        {
            double gradient = 0;
            double length = 0;
            for (int i = 0; i < Rows; i++)
            {
                double rest = b[i];
                for (int k = 0; k < Columns; k++)
                {
                    rest -= a[i, k] * x[k];
                }
                gradient += a[i, j] * rest;
                length += a[i, j] * a[i, j];
            }
            gradient /= Math.Sqrt(length);
            Assert.True(x[j] >= 0);
            Assert.InRange(gradient, x[j] > 0 ? -1e-10 : double.NegativeInfinity, 1e-10);
        }
    }

    [Fact]
    public void Weights_of_shapes_that_were_mixed_come_back()
    {
        static double Shape(double at, double centre) => Math.Exp(-Math.Pow((at - centre) / 4, 2));
        double[] weights = [0.7, 0, 2.5];
        double[] centres = [10, 15, 20];
        var a = new double[30, 3];
        var b = new double[30];
        for (int i = 0; i < 30; i++)
        {
            for (int j = 0; j < 3; j++)
            {
                a[i, j] = Shape(i, centres[j]);
                b[i] += weights[j] * a[i, j];
            }
        }
        double[] x = NonNegativeLeastSquares.Solve(a, b);
        Assert.All(x.Zip(weights), pair => Assert.Equal(pair.Second, pair.First, 1e-12));
    }

    [Fact]
    public void Columns_that_repeat_each_other_or_outnumber_the_rows_do_no_harm()
    {
        double[] x = NonNegativeLeastSquares.Solve(
            new double[,]
            {
                { 1, 1, 0, 2 },
                { 2, 2, 0, 4 },
            },
            [3, 6]
        );
        Assert.Equal(3, x[0] + x[1] + (2 * x[3]), tolerance: 1e-13);
        Assert.Equal(0, x[2]);
    }

    [Fact]
    public void A_right_side_of_another_length_or_a_number_that_is_none_is_refused()
    {
        Assert.Throws<ArgumentException>(() =>
            NonNegativeLeastSquares.Solve(
                new double[,]
                {
                    { 1 },
                    { 2 },
                },
                [1]
            )
        );
        Assert.Throws<ArgumentException>(() =>
            NonNegativeLeastSquares.Solve(
                new double[,]
                {
                    { double.NaN },
                },
                [1]
            )
        );
        Assert.Throws<ArgumentException>(() => NonNegativeLeastSquares.Solve(new double[0, 0], []));
    }
}
