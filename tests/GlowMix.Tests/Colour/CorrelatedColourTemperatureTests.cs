using GlowMix.Colour;

namespace GlowMix.Tests.Colour;

public class CorrelatedColourTemperatureTests
{
    [Fact]
    public void A_colour_on_the_perpendicular_of_a_black_body_has_its_temperature_and_its_distance()
    {
        for (double temperatureK = 1001; temperatureK < 25_000; temperatureK *= 1.061)
        {
            Chromaticity foot = PlanckianLocus.AtK(temperatureK);
            (double du, double dv) = PlanckianLocusTests.Tangent(temperatureK);
            double length = Math.Sqrt((du * du) + (dv * dv));
            for (double duv = -0.0499; duv <= 0.05; duv += 0.00998)
            {
                // The locus runs to smaller u: its left-hand side, seen so, is below it.
                Chromaticity colour = Chromaticity.FromUv1960(
                    foot.U + (duv * dv / length),
                    foot.V - (duv * du / length)
                );
                CorrelatedColourTemperature found = CorrelatedColourTemperature.Of(colour)!.Value;
                Assert.Equal(1, found.CctK / temperatureK, 2e-7);
                Assert.Equal(duv, found.Duv, 1e-9);
            }
        }
    }

    [Fact]
    public void No_black_body_is_nearer_than_the_one_found()
    {
        // Every 0.1 % from 990 to 25 300 K, then the neighbourhood of the nearest every 2e-6, all summed exactly.
        double[] bodiesK = [.. Enumerable.Range(0, 3240).Select(i => 990 * Math.Pow(1.001, i))];
        Chromaticity[] bodies = [.. bodiesK.Select(PlanckianLocus.AtK)];
        var random = new Random(7);
        for (int n = 0; n < 8; n++)
        {
            Chromaticity near = PlanckianLocus.AtK(1100 * Math.Pow(22, random.NextDouble()));
            double angle = random.NextDouble() * Math.Tau;
            double distance = 0.05 * random.NextDouble();
            Chromaticity colour = Chromaticity.FromUv1960(
                near.U + (distance * Math.Cos(angle)),
                near.V + (distance * Math.Sin(angle))
            );
            int coarse = Enumerable
                .Range(0, bodies.Length)
                .MinBy(i => ColourDifference.Uv1960(bodies[i], colour));
            double nearestK = Enumerable
                .Range(-600, 1201)
                .Select(i => bodiesK[coarse] * (1 + (i * 2e-6)))
                .MinBy(t => ColourDifference.Uv1960(PlanckianLocus.AtK(t), colour));
            if (nearestK is < 999 or > 25_025)
            {
                Assert.Null(CorrelatedColourTemperature.Of(colour));
                continue;
            }
            CorrelatedColourTemperature found = CorrelatedColourTemperature.Of(colour)!.Value;
            Assert.Equal(nearestK, found.CctK, 3e-6 * nearestK);
            Assert.Equal(
                ColourDifference.Uv1960(PlanckianLocus.AtK(nearestK), colour),
                Math.Abs(found.Duv),
                1e-9
            );
        }
    }

    [Fact]
    public void The_nearest_point_of_u_0_1978_v_0_3122_is_where_two_other_codes_find_it()
    {
        // Exact nearest point, c₂ of 2019, computed independently of this code; Ohno's method agrees within 0.2 K.
        CorrelatedColourTemperature found = CorrelatedColourTemperature
            .Of(Chromaticity.FromUv1960(0.1978, 0.3122))!
            .Value;
        Assert.Equal(6507.40, found.CctK, 0.006);
        Assert.Equal(0.003224, found.Duv, 0.6e-6);
    }

    [Theory]
    [InlineData(.4328, .2883, 1041.8, -.0674)]
    [InlineData(.2927, .2722, 2445.0, -.0844)]
    public void Beyond_a_Duv_of_0_05_there_is_no_CCT(double u, double v, double nearestK, double distance)
    {
        (double temperatureK, double signed) = PlanckianLocus.NearestTo(u, v)!.Value;
        Assert.Equal(nearestK, temperatureK, 0.051);
        Assert.Equal(distance, signed, 0.000051);
        Assert.Null(CorrelatedColourTemperature.Of(Chromaticity.FromUv1960(u, v)));
    }

    [Fact]
    public void Below_1000_and_above_25000_K_there_is_no_CCT()
    {
        Assert.Null(CorrelatedColourTemperature.Of(PlanckianLocus.AtK(998.9)));
        Assert.NotNull(CorrelatedColourTemperature.Of(PlanckianLocus.AtK(1000)));
        Assert.NotNull(CorrelatedColourTemperature.Of(PlanckianLocus.AtK(25_000)));
        Assert.Null(CorrelatedColourTemperature.Of(PlanckianLocus.AtK(25_026)));
        Assert.Null(CorrelatedColourTemperature.Of(PlanckianLocus.AtK(500)));
        Assert.Null(CorrelatedColourTemperature.Of(PlanckianLocus.AtK(1e6)));
    }

    [Fact]
    public void Black_bodies_and_daylight_at_the_ends_have_a_CCT_on_the_models_grid_too()
    {
        foreach (double temperatureK in (double[])[1000, 25_000])
        {
            ColourFigures body = ColourFigures.Of(PlanckRadiator.OnModelGrid(temperatureK));
            Assert.Equal(temperatureK, body.CctK!.Value, tolerance: 1 + (2e-4 * temperatureK));
        }
        ColourFigures daylight = ColourFigures.Of(DaylightPhase.AtK(25_000).OnModelGrid());
        Assert.Equal(25_000, daylight.CctK!.Value, tolerance: 25);
        Assert.Equal(100, daylight.Ra!.Value, 0.05);
    }

    [Fact]
    public void Colours_far_from_any_white_have_no_CCT_and_make_no_trouble()
    {
        for (double x = 0.001; x < 1; x += 0.0137)
        {
            for (double y = 0.001; x + y < 1; y += 0.0137)
            {
                Chromaticity colour = Chromaticity.FromXy(x, y);
                if (CorrelatedColourTemperature.Of(colour) is { } found)
                {
                    Assert.InRange(found.CctK, 999, 25_025);
                    Assert.Equal(
                        ColourDifference.Uv1960(colour, PlanckianLocus.AtK(found.CctK)),
                        Math.Abs(found.Duv),
                        1e-9
                    );
                }
            }
        }
        Assert.Null(CorrelatedColourTemperature.Of(default));
    }

    [Fact]
    public void Duv_agrees_with_the_polynomial_of_Ohno_in_size_and_sign()
    {
        // Ohno, LEUKOS 10 (2014) 47; also an annex of ANSI C78.377. Coefficients from memory; within 2e-5 from 2600 K on.
        double[] k = [-.471106, 1.925865, -2.4243787, 1.5317403, -.5179722, .0893944, -.00616793];
        for (double temperatureK = 2600; temperatureK <= 20_000; temperatureK *= 1.07)
        {
            foreach (double shift in (double[])[-0.019, -0.006, 0.006, 0.019])
            {
                Chromaticity foot = PlanckianLocus.AtK(temperatureK);
                (double du, double dv) = PlanckianLocusTests.Tangent(temperatureK);
                double length = Math.Sqrt((du * du) + (dv * dv));
                Chromaticity colour = Chromaticity.FromUv1960(
                    foot.U + (shift * dv / length),
                    foot.V - (shift * du / length)
                );
                double radius = Math.Sqrt(Math.Pow(colour.U - .292, 2) + Math.Pow(colour.V - .240, 2));
                double angle = Math.Acos((colour.U - .292) / radius);
                double polynomial = 0;
                for (int i = k.Length - 1; i >= 0; i--)
                {
                    polynomial = (polynomial * angle) + k[i];
                }
                Assert.Equal(radius - polynomial, CorrelatedColourTemperature.Of(colour)!.Value.Duv, 2.5e-5);
            }
        }
    }

    [Theory]
    // McCamy 1992 (coefficients from memory), from the printed x, y of the illuminants; rough by up to 6 K there.
    [InlineData(.44758, .40745, 2856.5, 2855.5)]
    [InlineData(.3457, .3585, 4995, 5000.6)]
    [InlineData(.3127, .3290, 6508, 6504.2)]
    [InlineData(.3118, .3236, 6601.5, 6598.2)]
    public void The_cubic_of_McCamy_lies_near(double x, double y, double mcCamyK, double exactK)
    {
        double n = (x - .3320) / (.1858 - y);
        Assert.Equal(mcCamyK, (((((437 * n) + 3601) * n) + 6861) * n) + 5517, 0.51);

        CorrelatedColourTemperature found = CorrelatedColourTemperature.Of(Chromaticity.FromXy(x, y))!.Value;
        Assert.Equal(exactK, found.CctK, 0.051);
        Assert.Equal(mcCamyK, found.CctK, 6.0);
    }
}
