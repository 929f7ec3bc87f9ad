using System.Numerics;
using GlowMix.Optics.Grains;

namespace GlowMix.Tests.Optics.Grains;

public class LorenzMieTests
{
    // Bohren & Huffman (1983), appendix A: radius 0.525 µm, relative index 1.55, wavelength 0.6328 µm; the absorbing row is the
    // same program's, widely reprinted.
    [Theory]
    [InlineData(0, 3.10543, 3.10543, 0.63314)]
    [InlineData(0.1, 2.86165, 1.66425, 0.80129)]
    public void The_sphere_of_BohrenHuffman1983_appendix_A(
        double k,
        double extinction,
        double scattering,
        double asymmetry
    )
    {
        SphereScattering sphere = Sphere(Math.Tau * 0.525 / 0.6328, new Complex(1.55, k));

        Assert.Equal(extinction, sphere.ExtinctionEfficiency, 5e-6);
        Assert.Equal(scattering, sphere.ScatteringEfficiency, 5e-6);
        Assert.Equal(asymmetry, sphere.Asymmetry, 5e-6);
    }

    // Wiscombe (1979), NCAR/TN-140+STR, test cases of MIEV0, to the digits printed.
    [Theory]
    [InlineData(0.75, 0, 0.099, 0.000007, 0.001448)]
    [InlineData(0.75, 0, 0.101, 0.000008, 0.001507)]
    [InlineData(0.75, 0, 10, 2.232265, 0.896473)]
    [InlineData(0.75, 0, 1000, 1.997908, 0.844944)]
    [InlineData(1.33, 1e-5, 1, 0.093923, 0.184517)]
    [InlineData(1.33, 1e-5, 100, 2.096594, 0.868959)]
    [InlineData(1.33, 1e-5, 10000, 1.723857, 0.907840)]
    [InlineData(1.5, 1, 0.055, 0.000011, 0.000491)]
    [InlineData(1.5, 1, 0.056, 0.000012, 0.000509)]
    [InlineData(1.5, 1, 1, 0.663454, 0.192136)]
    [InlineData(1.5, 1, 100, 1.283697, 0.850252)]
    [InlineData(10, 10, 1, 2.049405, -0.110664)]
    [InlineData(10, 10, 100, 1.836785, 0.556215)]
    [InlineData(10, 10, 10000, 1.795393, 0.548194)]
    public void The_spheres_of_Wiscombe1979(
        double n,
        double k,
        double sizeParameter,
        double scattering,
        double asymmetry
    )
    {
        SphereScattering sphere = Sphere(sizeParameter, new Complex(n, k));

        Assert.Equal(scattering, sphere.ScatteringEfficiency, 6e-7);
        Assert.Equal(asymmetry, sphere.Asymmetry, 6e-7);
    }

    // Same source. Converged are 1.2365743 and 0.8463100 against the printed 1.236575 and 0.846309: one in the last digit.
    [Fact]
    public void The_largest_dark_sphere_of_Wiscombe1979()
    {
        SphereScattering sphere = Sphere(10000, new Complex(1.5, 1));

        Assert.Equal(1.236575, sphere.ScatteringEfficiency, 1e-6);
        Assert.Equal(0.846309, sphere.Asymmetry, 1e-6);
        Assert.Equal(2.004368, sphere.ExtinctionEfficiency, 6e-7);
    }

    // Same source, printed to four decimals; extinction of the dark spheres.
    [Theory]
    [InlineData(1.5, 0, 10, 2.8820, 5e-5)]
    [InlineData(1.5, 0, 100, 2.0944, 5e-5)]
    [InlineData(1.5, 0, 1000, 2.0139, 5e-5)]
    [InlineData(1.5, 0, 5000, 2.0086, 5e-5)]
    [InlineData(1.5, 1, 0.055, 0.101491, 6e-7)]
    [InlineData(1.5, 1, 0.056, 0.1033467, 6e-8)]
    [InlineData(1.5, 1, 1, 2.336321, 6e-7)]
    [InlineData(1.5, 1, 100, 2.097502, 6e-7)]
    public void Extinction_of_the_spheres_of_Wiscombe1979(
        double n,
        double k,
        double sizeParameter,
        double extinction,
        double lastDigit
    ) => Assert.Equal(extinction, Sphere(sizeParameter, new Complex(n, k)).ExtinctionEfficiency, lastDigit);

    // Figures that Wiscombe's table leaves out: two independent programs agree on them within 5e-10.
    [Theory]
    [InlineData(1.5, 0, 10, null, 0.742913)]
    [InlineData(1.5, 0, 100, null, 0.818246)]
    [InlineData(1.5, 0, 1000, null, 0.827882)]
    [InlineData(1.5, 0, 5000, null, 0.829592)]
    [InlineData(1.33, 1e-5, 1, 0.093952, null)]
    [InlineData(1.33, 1e-5, 100, 2.101321, null)]
    [InlineData(1.33, 1e-5, 10000, 2.004089, null)]
    [InlineData(10, 10, 1, 2.532993, null)]
    [InlineData(10, 10, 100, 2.071124, null)]
    [InlineData(10, 10, 10000, 2.005914, null)]
    public void Converged_figures_beside_Wiscombe1979(
        double n,
        double k,
        double sizeParameter,
        double? extinction,
        double? asymmetry
    )
    {
        SphereScattering sphere = Sphere(sizeParameter, new Complex(n, k));

        Assert.Equal(extinction ?? sphere.ExtinctionEfficiency, sphere.ExtinctionEfficiency, 6e-7);
        Assert.Equal(asymmetry ?? sphere.Asymmetry, sphere.Asymmetry, 6e-7);
    }

    // Peña & Pal (2009), Comput. Phys. Commun. 180, 2348: figures of their program of layered spheres (size parameter 2π), as a public
    // test suite quotes them.
    [Theory]
    [InlineData(0, 2.351382357157882, 2.351382357157882, 0.583423159613144)]
    [InlineData(0.1, 2.5837269073859774, 1.3566707303067342, 0.8266873213103347)]
    public void A_sphere_as_a_program_of_layered_spheres_has_it(
        double k,
        double extinction,
        double scattering,
        double asymmetry
    )
    {
        SphereScattering sphere = Sphere(Math.Tau, new Complex(1.5, k));

        Assert.Equal(extinction, sphere.ExtinctionEfficiency, 1e-10);
        Assert.Equal(scattering, sphere.ScatteringEfficiency, 1e-12);
        Assert.Equal(asymmetry, sphere.Asymmetry, 1e-12);
    }

    // The program of Wiscombe (1979), more digits than the table: a public test suite quotes seven of small and opaque spheres.
    [Theory]
    [InlineData(0.75, 0, 0.099, 7.417859e-6, 7.417859e-6)]
    [InlineData(1.33, 1e-5, 1, 9.395198e-2, 9.392330e-2)]
    [InlineData(1.5, 1, 0.055, 1.014910e-1, 1.131687e-5)]
    [InlineData(1.5, 1, 0.056, 1.033467e-1, 1.216311e-5)]
    [InlineData(10, 10, 1, 2.532993, 2.049405)]
    public void Seven_digits_of_the_spheres_of_Wiscombe1979(
        double n,
        double k,
        double sizeParameter,
        double extinction,
        double scattering
    )
    {
        SphereScattering sphere = Sphere(sizeParameter, new Complex(n, k));

        Assert.Equal(1, sphere.ExtinctionEfficiency / extinction, 6e-7);
        Assert.Equal(1, sphere.ScatteringEfficiency / scattering, 6e-7);
    }

    [Fact]
    public void Its_moments_begin_with_1_and_its_mean_cosine()
    {
        LorenzMie sphere = LorenzMie.SeriesOf(50, new Complex(1.1, 1e-4));

        double[] moments = sphere.Moments(16);

        Assert.Equal(17, moments.Length);
        Assert.Equal(1, moments[0]);
        Assert.Equal(sphere.Efficiencies().Asymmetry, moments[1], 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() => sphere.Moments(-1));
    }

    // Bohren & Huffman (1983), table 4.1 (the number from memory): five digits of each coefficient; b_4 is 6.88105e-5 and stands
    // there as 6.8810e-5.
    [Theory]
    [InlineData(1, 5.1631e-1, -4.9973e-1, 7.3767e-1, -4.3990e-1)]
    [InlineData(2, 3.4192e-1, -4.7435e-1, 4.0079e-1, -4.9006e-1)]
    [InlineData(3, 4.8467e-2, -2.1475e-1, 9.3553e-3, -9.6269e-2)]
    [InlineData(4, 1.0346e-3, -3.2148e-2, 6.8810e-5, -8.2949e-3)]
    [InlineData(5, 9.0375e-6, -3.0062e-3, 2.8309e-7, -5.3204e-4)]
    public void The_coefficients_of_BohrenHuffman1983(
        int n,
        double realA,
        double imaginaryA,
        double realB,
        double imaginaryB
    )
    {
        LorenzMie sphere = LorenzMie.SeriesOf(3, new Complex(1.33, 1e-8));

        AssertFiveDigits(realA, sphere.Electric[n].Real);
        AssertFiveDigits(imaginaryA, sphere.Electric[n].Imaginary);
        AssertFiveDigits(realB, sphere.Magnetic[n].Real);
        AssertFiveDigits(imaginaryB, sphere.Magnetic[n].Imaginary);
    }

    [Theory]
    [InlineData(1.5, 0)]
    [InlineData(1.1, 1e-6)]
    [InlineData(0.9, 0.01)]
    [InlineData(2.4, 3)]
    public void A_tiny_sphere_scatters_as_Rayleigh_says(double n, double k)
    {
        const double X = 1e-3;
        var index = new Complex(n, k);
        Complex polarisability = ((index * index) - 1) / ((index * index) + 2);

        SphereScattering sphere = Sphere(X, index);

        // The next term of the expansion is smaller by x²; Bohren & Huffman (1983), eqs 5.7 to 5.9.
        double scattering = 8.0 / 3 * Math.Pow(X, 4) * Math.Pow(polarisability.Magnitude, 2);
        Assert.Equal(1, sphere.ScatteringEfficiency / scattering, 1e-5);
        if (k > 0)
        {
            double absorption = 4 * X * polarisability.Imaginary;
            Assert.Equal(1, sphere.AbsorptionEfficiency / absorption, 1e-5);
        }
        Assert.InRange(sphere.Asymmetry, 0, 1e-6);
    }

    [Theory]
    [InlineData(0.001)]
    [InlineData(1)]
    [InlineData(333)]
    [InlineData(10000)]
    public void A_clear_sphere_absorbs_exactly_nothing(double sizeParameter) =>
        Assert.Equal(0, Sphere(sizeParameter, 1.1).AbsorptionEfficiency);

    [Fact]
    public void A_sphere_of_the_index_around_it_scatters_nothing_worth_naming() =>
        Assert.InRange(Sphere(100, 1).ScatteringEfficiency, 0, 1e-24);

    // What is absorbed is linear in k as long as it is little, down to the last digits; the difference of extinction and
    // scattering would have none left here.
    [Fact]
    public void Weak_absorption_keeps_its_digits()
    {
        double weak = Sphere(200, new Complex(1.1, 1e-10)).AbsorptionEfficiency;
        double weaker = Sphere(200, new Complex(1.1, 1e-14)).AbsorptionEfficiency;

        Assert.Equal(1e4, weak / weaker, 1e-2);
    }

    [Theory]
    [InlineData(300)]
    [InlineData(7000)]
    public void Absorption_is_the_extinction_that_is_not_scattered(double sizeParameter)
    {
        var index = new Complex(1.2, 1e-3);
        LorenzMie series = LorenzMie.SeriesOf(sizeParameter, index);
        double extinction = 0;
        for (int n = series.TermCount; n >= 1; n--)
        {
            extinction += ((2 * n) + 1) * (series.Electric[n] + series.Magnetic[n]).Real;
        }
        extinction *= 2 / (sizeParameter * sizeParameter);

        Assert.Equal(extinction, series.Efficiencies().ExtinctionEfficiency, 1e-12);
    }

    // The extinction paradox: van de Hulst (1957), section 8.1. Edge rays leave 1.992 x^(−2/3): Nussenzveig & Wiscombe (1980),
    // Phys. Rev. Lett. 45, 1490 (the constant from memory).
    [Fact]
    public void A_large_sphere_takes_out_twice_its_disc()
    {
        double excess = Sphere(20000, new Complex(1.3, 0.3)).ExtinctionEfficiency - 2;

        Assert.Equal(1.992, excess * Math.Pow(20000, 2.0 / 3), 0.06);
    }

    // Bohren & Huffman (1983), chapter 7: geometrical optics of a weakly absorbing sphere. Resonances and edge rays let the mean
    // over ±10 % of size lie 7 % above at x = 100 to 300 and 3 % at 1000.
    [Theory]
    [InlineData(100, 1.07)]
    [InlineData(300, 1.07)]
    [InlineData(1000, 1.03)]
    public void A_large_weak_absorber_takes_what_geometrical_optics_says(double sizeParameter, double ratio)
    {
        const double N = 1.1;
        const double K = 1e-7;
        const int Sizes = 200;
        double relative = 0;
        for (int i = 0; i < Sizes; i++)
        {
            double x = sizeParameter * (0.9 + (0.2 * (i + 0.5) / Sizes));
            double expected = 8.0 / 3 * K * x * (Math.Pow(N, 3) - Math.Pow((N * N) - 1, 1.5)) / N;
            relative += Sphere(x, new Complex(N, K)).AbsorptionEfficiency / expected / Sizes;
        }

        Assert.Equal(ratio, relative, 0.02);
    }

    // Checks the recurrences, their start above all, against spherical Bessel functions found on another way: Miller's downward
    // recurrence for j_n itself from far above, normalised by the closed form of j_0 or j_1, complex for the inside.
    [Theory]
    [InlineData(3, 1.33, 1e-8)]
    [InlineData(40.5, 1.1, 0)]
    [InlineData(700, 1.1, 1e-7)]
    [InlineData(1500, 1.17, 0)]
    [InlineData(2000, 1.65, 1e-6)]
    public void Coefficients_agree_with_spherical_Bessel_functions(double x, double n, double k)
    {
        var index = new Complex(n, k);
        LorenzMie series = LorenzMie.SeriesOf(x, index);
        Complex[] inside = BesselByMiller(index * x, series.TermCount);
        Complex[] outside = BesselByMiller(x, series.TermCount);
        double[] second = SecondKind(x, series.TermCount);

        for (int order = 1; order <= series.TermCount; order++)
        {
            // Bohren & Huffman (1983), eqs 4.56 and 4.57 with µ = 1, derivatives by [z j_n]′ = z j_{n−1} − n j_n.
            Complex z = index * x;
            Complex j = outside[order];
            Complex h = j + (Complex.ImaginaryOne * second[order]);
            Complex jSlope = (x * outside[order - 1]) - (order * j);
            Complex hSlope =
                (x * (outside[order - 1] + (Complex.ImaginaryOne * second[order - 1]))) - (order * h);
            Complex inner = inside[order];
            Complex innerSlope = (z * inside[order - 1]) - (order * inner);
            Complex a =
                ((index * index * inner * jSlope) - (j * innerSlope))
                / ((index * index * inner * hSlope) - (h * innerSlope));
            Complex b = ((inner * jSlope) - (j * innerSlope)) / ((inner * hSlope) - (h * innerSlope));

            Assert.InRange((a - series.Electric[order]).Magnitude, 0, 1e-9);
            Assert.InRange((b - series.Magnetic[order]).Magnitude, 0, 1e-9);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(20001)]
    [InlineData(double.NaN)]
    public void A_size_parameter_outside_the_range_is_refused(double sizeParameter) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LorenzMie.SeriesOf(sizeParameter, 1.5));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1.5, -1e-9)]
    [InlineData(double.NaN, 0)]
    public void An_index_that_no_matter_has_is_refused(double n, double k) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LorenzMie.SeriesOf(1, new Complex(n, k)));

    private static SphereScattering Sphere(double sizeParameter, Complex index) =>
        LorenzMie.SeriesOf(sizeParameter, index).Efficiencies();

    private static void AssertFiveDigits(double printed, double computed)
    {
        double lastDigit = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(printed))) - 4);
        Assert.Equal(printed, computed, 0.54 * lastDigit);
    }

    private static Complex[] BesselByMiller(Complex z, int terms)
    {
        int start = (int)Math.Max(terms, z.Magnitude) + (int)(20 * Math.Cbrt(z.Magnitude)) + 60;
        var values = new Complex[start + 2];
        values[start] = 1e-300;
        for (int n = start; n >= 1; n--)
        {
            values[n - 1] = (((2 * n) + 1) / z * values[n]) - values[n + 1];
            if (values[n - 1].Magnitude > 1e250)
            {
                for (int m = n - 1; m <= start; m++)
                {
                    values[m] *= 1e-250;
                }
            }
        }
        // j_0 or j_1 from their closed forms, whichever is larger.
        Complex first = Complex.Sin(z) / z;
        Complex next = (first - Complex.Cos(z)) / z;
        Complex scale = first.Magnitude > next.Magnitude ? first / values[0] : next / values[1];
        return Array.ConvertAll(values, value => value * scale);
    }

    private static double[] SecondKind(double x, int terms)
    {
        var y = new double[terms + 1];
        y[0] = -Math.Cos(x) / x;
        y[1] = (y[0] - Math.Sin(x)) / x;
        for (int n = 1; n < terms; n++)
        {
            y[n + 1] = (((2 * n) + 1) / x * y[n]) - y[n - 1];
        }
        return y;
    }
}
