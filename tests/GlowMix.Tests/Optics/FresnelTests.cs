using GlowMix.Optics;

namespace GlowMix.Tests.Optics;

public class FresnelTests
{
    [Theory]
    [InlineData(1.33, 0.020059)]
    [InlineData(1.41, 0.028942)]
    [InlineData(1.50, 0.040000)]
    [InlineData(1.55, 0.046521)]
    [InlineData(1.57, 0.049191)]
    public void Normal_light_is_sent_back_by_the_square_of_n_minus_1_over_n_plus_1(double n, double expected)
    {
        Assert.Equal(expected, Fresnel.Reflectance(1, n), 5e-7);
        Assert.Equal(expected, Fresnel.Reflectance(1, 1 / n), 5e-7);
    }

    /// <summary>
    /// Closed forms of Walsh 1926 and Duntley 1942; the digits here come from a quadrature of its own. At n = 1.5 the literature
    /// prints 0.0918 and 0.5963 (Egan &amp; Hilgeman 1979), 0.596 (Saunderson 1942).
    /// </summary>
    [Theory]
    [InlineData(1.33, 0.065931, 0.471949)]
    [InlineData(1.41, 0.078335, 0.536409)]
    [InlineData(1.50, 0.091778, 0.596346)]
    [InlineData(1.55, 0.099066, 0.625001)]
    [InlineData(1.57, 0.101950, 0.635665)]
    public void Diffuse_reflectance_of_Walsh1926_and_Duntley1942(double n, double outside, double inside)
    {
        Assert.Equal(outside, Fresnel.DiffuseFromOutside(n), 6e-7);
        Assert.Equal(inside, Fresnel.DiffuseFromInside(n), 6e-7);
    }

    [Theory]
    [InlineData(1.33, 0.157671, 48.7535, 0.659300, 0.328239)]
    [InlineData(1.41, 0.134862, 45.1715, 0.704987, 0.396905)]
    [InlineData(1.50, 0.114833, 41.8103, 0.745356, 0.464431)]
    [InlineData(1.55, 0.105607, 40.1778, 0.764046, 0.497907)]
    [InlineData(1.57, 0.102226, 39.5642, 0.770911, 0.510556)]
    public void Escape_at_first_strike_critical_angle_and_second_moment(
        double n,
        double firstStrike,
        double criticalDegrees,
        double criticalCosine,
        double secondMoment
    )
    {
        double critical = Fresnel.CriticalCosine(n);
        Assert.Equal(criticalCosine, critical, 6e-7);
        Assert.Equal(criticalDegrees, Math.Acos(critical) * 180 / Math.PI, 6e-5);
        // Both integrals over the outside cosine, where the integrand is smooth: μ dμ = μ′ dμ′ / n².
        double escaping = 0;
        double sentBack = Math.Pow(critical, 3);
        const int Steps = 4000;
        for (int i = 0; i < Steps; i++)
        {
            double outside = (i + 0.5) / Steps;
            double inside = Math.Sqrt(1 - ((1 - (outside * outside)) / (n * n)));
            double width = outside / (n * n * inside) / Steps;
            escaping += (1 - Fresnel.Reflectance(inside, 1 / n)) * width / 2;
            sentBack += 3 * inside * inside * Fresnel.Reflectance(inside, 1 / n) * width;
        }
        Assert.Equal(firstStrike, escaping, 1e-6);
        Assert.Equal(secondMoment, sentBack, 1e-6);
    }

    /// <summary>
    /// Prahl 1988, table B.7 (no glass): (1 + R₂) / (1 − R₁), with R₁ and R₂ the first and second moments of the reflectance
    /// from inside. The printed column lies 0.2 % above its own integrals, so it holds to 0.3 %.
    /// </summary>
    [Theory]
    [InlineData(1.4, 2.955, 2.949)]
    [InlineData(1.5, 3.636, 3.628)]
    [InlineData(1.6, 4.388, 4.379)]
    public void Boundary_factor_of_Prahl1988_within_0_3_percent(double n, double printed, double integrated)
    {
        double second = 0;
        const int Steps = 20000;
        for (int i = 0; i < Steps; i++)
        {
            double mu = (i + 0.5) / Steps;
            second += 3 * mu * mu * Fresnel.Reflectance(mu, 1 / n) / Steps;
        }
        double factor = (1 + second) / (1 - Fresnel.DiffuseFromInside(n));
        Assert.Equal(integrated, factor, 1e-3);
        Assert.InRange(factor / printed, 0.997, 1.003);
    }

    [Theory]
    [InlineData(1.000001)]
    [InlineData(1.0009999)]
    [InlineData(1.0010001)]
    [InlineData(1.01)]
    [InlineData(1.7)]
    [InlineData(4)]
    public void Closed_form_equals_the_integral_for_any_index(double n)
    {
        double sum = 0;
        const int Steps = 20000;
        for (int i = 0; i < Steps; i++)
        {
            // In the square root of the cosine: grazing light changes fastest there.
            double root = (i + 0.5) / Steps;
            sum += 4 * Math.Pow(root, 3) * Fresnel.Reflectance(root * root, n) / Steps;
        }
        Assert.Equal(sum, Fresnel.DiffuseFromOutside(n), 1e-7);
    }

    [Fact]
    public void Without_a_step_of_the_index_there_is_no_face()
    {
        Assert.Equal(0, Fresnel.DiffuseFromOutside(1), 1e-15);
        Assert.Equal(0, Fresnel.DiffuseFromInside(1), 1e-15);
        Assert.Equal(0, Fresnel.CriticalCosine(1));
        Assert.Equal(0, Fresnel.Reflectance(0.3, 1), 1e-15);
    }

    [Fact]
    public void A_path_is_the_same_both_ways()
    {
        for (double outside = 0.01; outside < 1; outside += 0.01)
        {
            double inside = Math.Sqrt(1 - ((1 - (outside * outside)) / 2.25));
            Assert.Equal(Fresnel.Reflectance(outside, 1.5), Fresnel.Reflectance(inside, 1 / 1.5), 1e-12);
        }
    }

    [Theory]
    [InlineData(0, 1.5, 1)]
    [InlineData(0, 1 / 1.5, 1)]
    [InlineData(0.7453, 1 / 1.5, 1)] // just beyond the critical angle of 41.81°
    public void Light_along_the_face_or_beyond_the_critical_angle_comes_back_whole(
        double cosine,
        double relative,
        double expected
    ) => Assert.Equal(expected, Fresnel.Reflectance(cosine, relative));

    /// <summary>Brewster 1815: at tan θ = n only the wave across is sent back, ((n² − 1) / (n² + 1))² of it.</summary>
    [Fact]
    public void At_the_angle_of_Brewster1815_half_of_the_light_is_not_sent_back_at_all()
    {
        double expected = Math.Pow((2.25 - 1) / (2.25 + 1), 2) / 2;
        Assert.Equal(expected, Fresnel.Reflectance(1 / Math.Sqrt(1 + 2.25), 1.5), 1e-14);
    }

    [Theory]
    [InlineData(0.99)]
    [InlineData(4.01)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void An_index_out_of_range_is_refused(double index)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Fresnel.DiffuseFromOutside(index));
        Assert.Throws<ArgumentOutOfRangeException>(() => Fresnel.DiffuseFromInside(index));
        Assert.Throws<ArgumentOutOfRangeException>(() => Fresnel.CriticalCosine(index));
    }

    [Theory]
    [InlineData(-0.1, 1.5)]
    [InlineData(1.1, 1.5)]
    [InlineData(double.NaN, 1.5)]
    [InlineData(0.5, 0)]
    [InlineData(0.5, -1.5)]
    [InlineData(0.5, double.NaN)]
    public void A_cosine_or_an_index_that_is_none_is_refused(double cosine, double index) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Fresnel.Reflectance(cosine, index));
}
