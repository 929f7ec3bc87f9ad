using GlowMix.Materials;

namespace GlowMix.Tests.Materials;

public class DispersionTests
{
    // The columns printed to four decimals; '589' is the sodium line D.
    private static readonly double[] Nm = [450, 520, 589.3, 650];

    [Theory]
    [InlineData("Schneider2009_dimethyl_silicone", 1.0093, 0.013185, 1.4421, 1.4356, 1.4315, 1.4289)]
    [InlineData("Sultanova2009_PMMA", 1.1819, 0.011313, 1.5006, 1.4945, 1.4905, 1.4881)]
    [InlineData("Sultanova2009_polycarbonate", 1.4182, 0.021304, 1.6078, 1.5936, 1.5846, 1.5791)]
    [InlineData("Sultanova2009_polystyrene", 1.4435, 0.020216, 1.6136, 1.6000, 1.5915, 1.5862)]
    public void One_term_of_Sellmeier_gives_the_printed_index(
        string source,
        double b,
        double cUm2,
        params double[] index
    )
    {
        Assert.NotEmpty(source);
        Assert.All(
            Nm.Zip(index),
            pair =>
                Assert.Equal(
                    pair.Second,
                    Dispersion.Sellmeier(pair.First / 1000, [(b, cUm2)]),
                    tolerance: 0.00005
                )
        );
    }

    [Theory]
    [InlineData(1.5375, 0.00829045, -0.000211046, 1.5733, 1.5653, 1.5596, 1.5559)]
    [InlineData(1.5525, 0.00629, 0.0004, 1.5933, 1.5812, 1.5739, 1.5696)]
    public void Cauchy_gives_the_index_of_an_optical_adhesive_and_an_epoxy_photoresist(
        double a,
        double bUm2,
        double cUm4,
        params double[] index
    ) =>
        Assert.All(
            Nm.Zip(index),
            pair =>
                Assert.Equal(
                    pair.Second,
                    Dispersion.Cauchy(pair.First / 1000, a, bUm2, cUm4),
                    tolerance: 0.00005
                )
        );

    [Theory]
    [InlineData(450, 2.471)]
    [InlineData(520, 2.405)]
    [InlineData(589, 2.367)]
    [InlineData(656, 2.343)]
    public void Zinc_sulfide_of_Debenham1984_has_the_printed_index(double nm, double index) =>
        Assert.Equal(
            index,
            Dispersion.SellmeierWithOffset(
                nm / 1000,
                8.393,
                [(0.14383, 0.2421 * 0.2421), (4430.99, 36.71 * 36.71)]
            ),
            tolerance: 0.0005
        );

    [Fact]
    public void The_Abbe_number_put_in_comes_out_at_the_lines_F_and_C()
    {
        static double IndexAt(double um) => Dispersion.Abbe(um, indexD: 1.53, abbeNumber: 40);
        Assert.Equal(1.53, IndexAt(0.5876), tolerance: 1e-15);
        Assert.Equal(40, (1.53 - 1) / (IndexAt(0.4861) - IndexAt(0.6563)), tolerance: 1e-9);
    }
}
