using System.Runtime.Intrinsics;
using GlowMix.Optics.Slab;

namespace GlowMix.Tests.Optics.Slab;

public class ExponentialTests
{
    [Fact]
    public void Four_exponentials_are_those_of_the_library_to_two_last_places()
    {
        for (double x = Exponential.Least; x <= Exponential.Greatest; x += 0.0317)
        {
            var found = Exponential.Of(Vector256.Create(x, x / 10, x / 1e3, x / 1e9));
            for (int i = 0; i < 4; i++)
            {
                double expected = Math.Exp(x / new[] { 1, 10, 1e3, 1e9 }[i]);
                Assert.InRange(found[i] / expected, 1 - 4.5e-16, 1 + 4.5e-16);
            }
        }
    }

    [Theory]
    [InlineData(0.0, 1.0)]
    [InlineData(-708.1, 0.0)]
    [InlineData(-1e300, 0.0)]
    [InlineData(double.NegativeInfinity, 0.0)]
    [InlineData(double.NaN, double.NaN)]
    public void At_its_ends_it_is_exact(double x, double expected) =>
        Assert.Equal(Vector256.Create(expected), Exponential.Of(Vector256.Create(x)));
}
