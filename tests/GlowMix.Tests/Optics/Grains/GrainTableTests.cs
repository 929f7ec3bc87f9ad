using System.Numerics;
using GlowMix.Optics.Grains;
using GlowMix.Spectra;

namespace GlowMix.Tests.Optics.Grains;

public class GrainTableTests
{
    private const int At450Nm = 22;
    private const int At520Nm = 36;

    // Moments of size averages made by another program with quadrature over the scattering angle (pigment index 1.65; an
    // absorption of 1 /mm gives its albedo). Its averages, over fewer sizes, scatter by some 1e-4; those of the clear grains,
    // which have the sharpest resonances, by 1e-3.
    [Theory]
    [InlineData(5, 1.5, At450Nm, 1.5, 1, 0.99834, 0.95179, 0.9057, 0.5389, 3e-4)]
    [InlineData(25, 1.5, At450Nm, 1.5, 1, 0.99126, 0.96191, 0.9318, 0.6358, 6e-4)]
    [InlineData(40, 1.4, At520Nm, 1.41, 0, 1, 0.93711, 0.8905, 0.5473, 1.1e-3)]
    public void Grain_averages_agree_with_another_program(
        double medianUm,
        double deviation,
        int wavelength,
        double resinIndex,
        double absorptionPerMm,
        double albedo,
        double asymmetry,
        double second,
        double tenth,
        double tolerance
    )
    {
        GrainTable table = Table(resinIndex, absorptionPerMm, medianUm, deviation, 160);

        double scattering = table.ScatteringPerMm[wavelength];
        double extinction = scattering + table.AbsorptionPerMm[wavelength];
        Assert.Equal(albedo, scattering / extinction, 1e-4);
        Assert.Equal(asymmetry, table.Asymmetry[wavelength], tolerance);
        Assert.Equal(second, table.Moments(wavelength).Span[2], tolerance);
        Assert.Equal(tenth, table.Moments(wavelength).Span[10], tolerance);
    }

    // Resonances leave some 0.1 % at one wavelength; over the spectrum they average out.
    [Fact]
    public void Forty_sizes_are_enough()
    {
        GrainTable coarse = Table(1.5, 6, 40, 1.5, 40);
        GrainTable fine = Table(1.5, 6, 40, 1.5, 160);

        double ratio = coarse.ScatteringPerMm.IntegralOverNm() / fine.ScatteringPerMm.IntegralOverNm();
        Assert.Equal(1, ratio, 1e-3);
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            Assert.Equal(1, coarse.AbsorptionPerMm[i] / fine.AbsorptionPerMm[i], 5e-3);
            Assert.Equal(1, coarse.ScatteringPerMm[i] / fine.ScatteringPerMm[i], 5e-3);
            Assert.Equal(fine.Asymmetry[i], coarse.Asymmetry[i], 1e-3);
        }
    }

    [Fact]
    public void One_size_is_one_sphere()
    {
        GrainTable table = Table(1.5, 6, 12, 1, 40);

        double nm = WavelengthGrid.NmAt(At450Nm);
        double x = Math.PI * 12e-3 * 1.5 / (nm * 1e-6);
        double k = 6 * nm * 1e-6 / (4 * Math.PI);
        SphereScattering sphere = LorenzMie.SeriesOf(x, new Complex(1.65, k) / 1.5).Efficiencies();
        double area = Math.PI * 12e-3 * 12e-3 / 4;
        double volume = Math.PI * Math.Pow(12e-3, 3) / 6;
        Assert.Equal(sphere.ScatteringEfficiency * area / volume, table.ScatteringPerMm[At450Nm], 1e-9);
        Assert.Equal(sphere.AbsorptionEfficiency * area / volume, table.AbsorptionPerMm[At450Nm], 1e-9);
        Assert.Equal(sphere.Asymmetry, table.Asymmetry[At450Nm], 1e-10);
    }

    // Grains so small that they are nearly dipoles see the field inside weakened by 3/(m² + 2) and absorb in proportion to their
    // volume: Bohren & Huffman (1983), eq. 5.11. Bulk 1 /mm, m = 1.1.
    [Fact]
    public void Fine_weak_grains_absorb_in_proportion_to_their_volume()
    {
        GrainTable table = Table(1.5, 1, 0.1, 1, 1, highestMoment: 4);

        double m = 1.65 / 1.5;
        double dipole = 9 * m / Math.Pow((m * m) + 2, 2);
        Assert.Equal(dipole, table.AbsorptionPerMm[88], 0.05);
    }

    [Fact]
    public void Clear_grains_absorb_exactly_nothing()
    {
        GrainTable table = Table(1.5, 0, 10, 1.5, 8);

        Assert.All(table.AbsorptionPerMm.Samples.ToArray(), value => Assert.Equal(0, value));
    }

    [Fact]
    public void The_first_moment_is_the_asymmetry_and_the_zeroth_is_one()
    {
        GrainTable table = Table(1.5, 6, 10, 1.5, 8);

        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            Assert.Equal(1, table.Moments(i).Span[0]);
            Assert.Equal(table.Asymmetry[i], table.Moments(i).Span[1]);
            Assert.Equal(33, table.Moments(i).Span.Length);
        }
    }

    [Fact]
    public void Scaled_absorption_leaves_scattering_alone()
    {
        GrainTable table = Table(1.5, 6, 5, 1.5, 8);

        GrainTable doubled = table.WithAbsorptionScaled(2);

        Assert.Equal(2 * table.AbsorptionPerMm[At450Nm], doubled.AbsorptionPerMm[At450Nm]);
        Assert.Same(table.ScatteringPerMm, doubled.ScatteringPerMm);
        Assert.Equal(table.Moments(At450Nm).ToArray(), doubled.Moments(At450Nm).ToArray());
    }

    // What the shortcut costs against a new average, told in its documentation.
    [Fact]
    public void Scaled_absorption_is_near_a_new_average_while_grains_are_nearly_clear()
    {
        GrainTable shortcut = Table(1.5, 0.5, 10, 1.5, 40).WithAbsorptionScaled(2);
        GrainTable anew = Table(1.5, 1, 10, 1.5, 40);

        Assert.Equal(
            1,
            shortcut.AbsorptionPerMm.IntegralOverNm() / anew.AbsorptionPerMm.IntegralOverNm(),
            0.02
        );
        Assert.Equal(
            1,
            shortcut.ScatteringPerMm.IntegralOverNm() / anew.ScatteringPerMm.IntegralOverNm(),
            2e-3
        );
    }

    [Fact]
    public void The_classes_of_a_distribution_together_are_the_whole()
    {
        GrainSizes sizes = GrainSizes.ByMass(20, 1.5);
        GrainTable whole = Table(sizes, 40);
        GrainTable[] classes = [.. Enumerable.Range(0, 5).Select(i => Table(sizes.MassClass(i, 5), 40))];

        GrainTable mixture = GrainTable.Mixture(classes, [0.2, 0.2, 0.2, 0.2, 0.2]);

        Assert.True(classes[0].ScatteringPerMm[At450Nm] > 2 * classes[4].ScatteringPerMm[At450Nm]);
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            Assert.Equal(1, mixture.AbsorptionPerMm[i] / whole.AbsorptionPerMm[i], 1e-12);
            Assert.Equal(1, mixture.ScatteringPerMm[i] / whole.ScatteringPerMm[i], 1e-12);
            Assert.Equal(whole.Asymmetry[i], mixture.Asymmetry[i], 1e-12);
            Assert.Equal(whole.Moments(i).Span[32], mixture.Moments(i).Span[32], 1e-12);
        }
    }

    [Fact]
    public void Absorption_scaled_in_each_class_is_absorption_scaled_in_their_mixture()
    {
        GrainSizes sizes = GrainSizes.ByMass(10, 1.3);
        GrainTable[] classes = [.. Enumerable.Range(0, 3).Select(i => Table(sizes.MassClass(i, 3), 12))];
        double[] shares = [0.5, 0.3, 0.2];

        GrainTable each = GrainTable.Mixture([.. classes.Select(c => c.WithAbsorptionScaled(2))], shares);
        GrainTable mixture = GrainTable.Mixture(classes, shares).WithAbsorptionScaled(2);

        for (int i = 0; i < WavelengthGrid.Count; i += 11)
        {
            Assert.Equal(1, each.AbsorptionPerMm[i] / mixture.AbsorptionPerMm[i], 1e-12);
            Assert.Equal(mixture.Asymmetry[i], each.Asymmetry[i], 1e-12);
        }
    }

    [Fact]
    public void A_mixture_weighs_phase_functions_by_scattering()
    {
        GrainTable forward = GrainTable.HenyeyGreenstein(
            Spectrum.Zero,
            Spectrum.Constant(30),
            Spectrum.Constant(0.9)
        );
        GrainTable even = GrainTable.HenyeyGreenstein(
            Spectrum.Constant(2),
            Spectrum.Constant(10),
            Spectrum.Zero
        );

        GrainTable mixture = GrainTable.Mixture([forward, even], [0.5, 0.5]);

        Assert.Equal(20, mixture.ScatteringPerMm[0], 1e-12);
        Assert.Equal(1, mixture.AbsorptionPerMm[0], 1e-12);
        Assert.Equal(0.75 * 0.9, mixture.Asymmetry[0], 1e-12);
        Assert.Throws<ArgumentException>(() => GrainTable.Mixture([forward, even], [0.5, 0.4]));
        Assert.Throws<ArgumentException>(() => GrainTable.Mixture([forward, even], [1]));
    }

    [Fact]
    public void HenyeyGreenstein_has_the_powers_of_g()
    {
        GrainTable table = GrainTable.HenyeyGreenstein(
            Spectrum.Constant(1),
            Spectrum.Constant(50),
            Spectrum.Constant(0.9),
            8
        );

        Assert.Equal(8, table.HighestMoment);
        Assert.Equal(Math.Pow(0.9, 8), table.Moments(0).Span[8], 1e-15);
    }

    [Fact]
    public void The_same_question_has_the_same_answer_to_the_last_bit()
    {
        GrainTable first = Table(1.5, 6, 20, 1.5, 40);
        GrainTable second = Table(1.5, 6, 20, 1.5, 40);

        Assert.Equal(first.ScatteringPerMm.Samples.ToArray(), second.ScatteringPerMm.Samples.ToArray());
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            Assert.Equal(first.Moments(i).ToArray(), second.Moments(i).ToArray());
        }
    }

    [Fact]
    public void What_no_pigment_has_is_refused_with_what_is_allowed()
    {
        Assert.Contains("1 to 2", Refusal(() => Table(2.1, 6, 10, 1.5, 4)));
        Assert.Contains("0 to 1000000", Refusal(() => Table(1.5, -1, 10, 1.5, 4)));
        Assert.Contains("1 to 400", Refusal(() => Table(1.5, 6, 10, 1.5, 0)));
        Assert.Contains("1 to 64", Refusal(() => Table(1.5, 6, 10, 1.5, 4, highestMoment: 65)));
        Assert.Contains("at most 20000", Refusal(() => Table(1.5, 6, 200, 2.5, 40)));
        Assert.Contains("factor", Refusal(() => Table(1.5, 6, 1, 1, 1).WithAbsorptionScaled(-1)));
        Assert.Contains(
            "-1 to 1",
            Refusal(() => GrainTable.HenyeyGreenstein(Spectrum.Zero, Spectrum.Zero, Spectrum.Constant(1.01)))
        );
    }

    private static string Refusal(Func<GrainTable> make) =>
        Assert.Throws<ArgumentOutOfRangeException>(make).Message;

    private static GrainTable Table(
        double resinIndex,
        double absorptionPerMm,
        double medianUm,
        double deviation,
        int sizeCount,
        int highestMoment = GrainTable.DefaultHighestMoment
    ) =>
        GrainTable.Of(
            Spectrum.Constant(1.65),
            Spectrum.Constant(absorptionPerMm),
            Spectrum.Constant(resinIndex),
            GrainSizes.ByMass(medianUm, deviation),
            sizeCount,
            highestMoment
        );

    private static GrainTable Table(GrainSizes sizes, int sizeCount) =>
        GrainTable.Of(
            Spectrum.Constant(1.65),
            Spectrum.Constant(6),
            Spectrum.Constant(1.5),
            sizes,
            sizeCount
        );
}
