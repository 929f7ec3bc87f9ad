using GlowMix.Colour;

namespace GlowMix.Tests.Colour;

public class MesopicTests
{
    [Theory]
    // CIE 191:2010, difference of mesopic from photopic luminance in %, at 0.01, 0.03, 0.1, 0.3 and 1 cd/m². One decimal
    // computed independently of this code; the standard's table in whole numbers (from memory) is the same within 1.
    [InlineData(0.25, -75.0, -51.6, -29.5, -17.8, -8.7)]
    [InlineData(0.65, -31.3, -20.2, -12.7, -7.9, -3.9)]
    [InlineData(1.05, 3.9, 2.6, 1.7, 1.1, 0.5)]
    [InlineData(1.45, 32.0, 22.4, 14.7, 9.3, 4.7)]
    [InlineData(1.85, 56.9, 40.3, 26.7, 17.1, 8.7)]
    [InlineData(2.25, 79.9, 56.9, 37.9, 24.4, 12.5)]
    [InlineData(2.65, 101.4, 72.6, 48.5, 31.3, 16.1)]
    public void Mesopic_luminance_differs_from_photopic_as_in_CIE_191(
        double scotopicPhotopicRatio,
        double at0_01,
        double at0_03,
        double at0_1,
        double at0_3,
        double at1
    )
    {
        Assert.Equal(at0_01, DifferencePercent(0.01), 0.051);
        Assert.Equal(at0_03, DifferencePercent(0.03), 0.051);
        Assert.Equal(at0_1, DifferencePercent(0.1), 0.051);
        Assert.Equal(at0_3, DifferencePercent(0.3), 0.051);
        Assert.Equal(at1, DifferencePercent(1), 0.051);

        double DifferencePercent(double photopic) =>
            100 * ((Mesopic.LuminanceCdPerM2(photopic, scotopicPhotopicRatio * photopic) / photopic) - 1);
    }

    [Fact]
    public void The_result_solves_the_equation_at_any_S_P()
    {
        // CIE 191:2010 with V′(λ₀) = 683/1699, typed again; S/P 5.7 is a blue-green afterglow, 30 a deep blue line.
        const double v = 683.0 / 1699;
        foreach (double ratio in (double[])[0.01, 0.1, 0.2, 0.26, 0.5, 1, 2.6, 5.7, 30])
        {
            for (double photopic = 1e-4; photopic < 10; photopic *= 1.3)
            {
                double scotopic = ratio * photopic;
                double mesopic = Mesopic.LuminanceCdPerM2(photopic, scotopic);
                double m = Math.Clamp(0.7670 + (0.3334 * Math.Log10(mesopic)), 0, 1);
                double right = ((m * photopic) + ((1 - m) * scotopic * v)) / (m + ((1 - m) * v));
                Assert.Equal(1, right / mesopic, 1e-9);
                Assert.InRange(
                    mesopic,
                    Math.Min(photopic, scotopic) * (1 - 1e-12),
                    Math.Max(photopic, scotopic) * (1 + 1e-12)
                );
            }
        }
    }

    [Fact]
    public void Bright_light_is_photopic_and_dim_light_scotopic()
    {
        Assert.Equal(5, Mesopic.LuminanceCdPerM2(5, 12));
        Assert.Equal(80, Mesopic.LuminanceCdPerM2(80, 12));
        Assert.Equal(0.004, Mesopic.LuminanceCdPerM2(0.0015, 0.004));
        Assert.Equal(0, Mesopic.LuminanceCdPerM2(0, 0));
    }

    [Fact]
    public void Where_three_luminances_solve_it_the_greatest_is_taken()
    {
        // S/P 0.1 at 0.05 cd/m²: scotopic (0.005), 0.005008 and 0.02399, to which the published iteration runs.
        Assert.Equal(0.02399, Mesopic.LuminanceCdPerM2(0.05, 0.005), 5e-6);
    }

    [Fact]
    public void More_of_either_light_is_never_less_of_both()
    {
        foreach (double scotopic in (double[])[0, 0.002, 0.02, 0.3, 4])
        {
            double before = 0;
            for (double photopic = 1e-4; photopic < 8; photopic *= 1.05)
            {
                double mesopic = Mesopic.LuminanceCdPerM2(photopic, scotopic);
                Assert.True(mesopic >= before * (1 - 1e-12), $"{photopic} and {scotopic} cd/m²");
                before = mesopic;
            }
        }
    }

    [Theory]
    [InlineData(-0.1, 1)]
    [InlineData(1, double.NaN)]
    [InlineData(double.PositiveInfinity, 1)]
    public void A_luminance_that_is_none_is_refused(double photopic, double scotopic) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Mesopic.LuminanceCdPerM2(photopic, scotopic));
}
