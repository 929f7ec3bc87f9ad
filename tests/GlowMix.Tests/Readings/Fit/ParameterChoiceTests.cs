using GlowMix.Readings.Fit;
using MathNet.Numerics.LinearAlgebra;

namespace GlowMix.Tests.Readings.Fit;

public sealed class ParameterChoiceTests
{
    [Fact]
    public void Of_two_numbers_that_only_their_sum_is_read_of_the_later_is_held_and_the_other_named()
    {
        // y = p0 + p1, three times: a minimiser alone gives both a finite error.
        var slopes = Matrix<double>.Build.Dense(3, 2, 10);
        var choice = ParameterChoice.Of(slopes);
        Assert.Equal([0], choice.Free);
        var held = Assert.Single(choice.Held);
        Assert.Equal(1, held.Index);
        Assert.Equal([0], held.Partners);
    }

    [Fact]
    public void A_number_that_nothing_read_tells_is_held_without_a_partner()
    {
        var slopes = Matrix<double>.Build.DenseOfColumnArrays([10, 0, 0], [0, 0.1, 0], [0, 0, 10]);
        var choice = ParameterChoice.Of(slopes);
        Assert.Equal([0, 2], choice.Free);
        var held = Assert.Single(choice.Held);
        Assert.Equal(1, held.Index);
        Assert.Empty(held.Partners);
    }

    [Fact]
    public void Standard_errors_and_correlations_are_those_of_the_normal_equations()
    {
        var slopes = Matrix<double>.Build.DenseOfColumnArrays([3, 1, 4, 1], [5, 9, 2, 6]);
        var (errors, correlations, covariance) = ParameterChoice.Told(slopes, [0, 1]);
        var expected = slopes.TransposeThisAndMultiply(slopes).Inverse();
        for (int i = 0; i < 2; i++)
        {
            Assert.Equal(Math.Sqrt(expected[i, i]), errors[i], 12);
            for (int j = 0; j < 2; j++)
            {
                Assert.Equal(expected[i, j], covariance[i, j], 12);
                Assert.Equal(
                    expected[i, j] / Math.Sqrt(expected[i, i] * expected[j, j]),
                    correlations[i, j],
                    12
                );
            }
        }
    }

    [Fact]
    public void Fewer_readings_than_numbers_leave_no_more_numbers_than_readings()
    {
        var slopes = Matrix<double>.Build.DenseOfRowArrays([10, 20, 30]);
        Assert.Single(ParameterChoice.Of(slopes).Free);
    }
}
