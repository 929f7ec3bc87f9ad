using GlowMix.Spectra;
using MathNet.Numerics.LinearAlgebra;

namespace GlowMix.Tests.Spectra;

public class HouseholderLeastSquaresTests
{
    [Fact]
    public void A_line_through_three_points_by_hand()
    {
        // Through (0, 1), (1, 3), (2, 4): slope 3/2, height at 0 7/6.
        double[]? line = HouseholderLeastSquares.Solve(
            new double[,]
            {
                { 1, 0 },
                { 1, 1 },
                { 1, 2 },
            },
            [1, 3, 4]
        );
        Assert.Equal(7.0 / 6, line![0], tolerance: 1e-14);
        Assert.Equal(1.5, line[1], tolerance: 1e-14);
    }

    [Fact]
    public void Random_problems_come_out_as_the_library_solves_them()
    {
        var random = new Random(7);
        for (int trial = 0; trial < 20; trial++)
        {
            Matrix<double> a = Matrix<double>.Build.Dense(16, 13, (_, _) => random.NextDouble() - 0.5);
            Vector<double> b = Vector<double>.Build.Dense(16, _ => random.NextDouble());
            Vector<double> expected = a.QR().Solve(b);
            double[] found = HouseholderLeastSquares.Solve(a.ToArray(), b.ToArray())!;
            Assert.Equal(
                0,
                (Vector<double>.Build.Dense(found) - expected).L2Norm() / expected.L2Norm(),
                1e-10
            );
        }
    }

    [Fact]
    public void A_column_of_zeros_has_no_answer() =>
        Assert.Null(
            HouseholderLeastSquares.Solve(
                new double[,]
                {
                    { 1, 0 },
                    { 1, 0 },
                    { 1, 0 },
                },
                [1, 2, 3]
            )
        );
}
