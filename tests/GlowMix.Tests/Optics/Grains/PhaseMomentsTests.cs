using System.Numerics;
using GlowMix.Optics.Grains;

namespace GlowMix.Tests.Optics.Grains;

public class PhaseMomentsTests
{
    [Theory]
    [InlineData(0.001, 1.5, 0)]
    [InlineData(0.7, 1.33, 0.1)]
    [InlineData(3, 2.4, 0)]
    [InlineData(25, 1.1, 1e-4)]
    [InlineData(120, 1.17, 0)]
    [InlineData(150, 0.9, 0.2)]
    public void Moments_agree_with_the_quadrature_of_the_scattered_light(
        double sizeParameter,
        double n,
        double k
    )
    {
        LorenzMie sphere = LorenzMie.SeriesOf(sizeParameter, new Complex(n, k));

        double[] moments = PhaseMoments.Of(sphere, 32);

        double[] expected = ScatteringAmplitudes.MomentsByQuadrature(sphere, 32);
        for (int l = 0; l <= 32; l++)
        {
            Assert.Equal(expected[l], moments[l], 2e-12);
        }
    }

    [Theory]
    [InlineData(0.01, 1.5, 0)]
    [InlineData(10, 1.5, 0.01)]
    [InlineData(900, 1.1, 1e-6)]
    public void The_first_moment_is_the_asymmetry(double sizeParameter, double n, double k)
    {
        LorenzMie sphere = LorenzMie.SeriesOf(sizeParameter, new Complex(n, k));

        Assert.Equal(sphere.Efficiencies().Asymmetry, PhaseMoments.Of(sphere, 1)[1], 1e-12);
    }

    // p = ¾(1 + μ²): χ_2 = 1/10 and nothing else, Chandrasekhar (1960), section 3.
    [Fact]
    public void A_tiny_sphere_has_the_moments_of_Rayleigh()
    {
        double[] moments = PhaseMoments.Of(LorenzMie.SeriesOf(1e-3, 1.5), 4);

        double[] rayleigh = [1, 0, 0.1, 0, 0];
        for (int l = 0; l <= 4; l++)
        {
            Assert.Equal(rayleigh[l], moments[l], 1e-6);
        }
    }
}
