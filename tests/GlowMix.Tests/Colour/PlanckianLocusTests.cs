using GlowMix.Colour;
using GlowMix.Spectra;

namespace GlowMix.Tests.Colour;

public class PlanckianLocusTests
{
    [Theory]
    // CIE 1931 observer at 1 nm, c₂ of the SI of 2019; computed independently of this code.
    [InlineData(1500, .357908, .360330, .58572, .39312)]
    [InlineData(2000, .305046, .359066, .52668, .41330)]
    [InlineData(2500, .272175, .354067, .47699, .41368)]
    [InlineData(2700, .262496, .351567, .45986, .41060)]
    [InlineData(3000, .250569, .347589, .43693, .40407)]
    [InlineData(3500, .235711, .340840, .40530, .39072)]
    [InlineData(4000, .225109, .334387, .38044, .37675)]
    [InlineData(5000, .211424, .323115, .34510, .35161)]
    [InlineData(6500, .200448, .310361, .31353, .32363)]
    [InlineData(10000, .190319, .293264, .28063, .28829)]
    [InlineData(20000, .183885, .277089, .25646, .25763)]
    public void A_black_body_has_its_colour(double temperatureK, double u, double v, double x, double y)
    {
        Chromaticity colour = PlanckianLocus.AtK(temperatureK);
        Assert.Equal(u, colour.U, 0.6e-6);
        Assert.Equal(v, colour.V, 0.6e-6);
        Assert.Equal(x, colour.X, 0.6e-5);
        Assert.Equal(y, colour.Y, 0.6e-5);
    }

    [Fact]
    public void The_lines_of_Robertson_1968_come_back_to_one_unit_of_the_last_digit()
    {
        // J. Opt. Soc. Am. 58, 1528: five decimals of u, v and five digits of the slope, for c₂ = 1.4388e-2.
        ShippedTable lines = ShippedTable.Read("cie/robertson1968_isotemperature_lines");
        Assert.Equal(31, lines.Count);
        for (int i = 1; i < lines.Count; i++) // The first is for an infinitely hot body.
        {
            double temperatureK = 1e6 / lines["reciprocal_megakelvin"][i] * (1.438776877e-2 / 1.4388e-2);
            Chromaticity colour = PlanckianLocus.AtK(temperatureK);
            Assert.Equal(lines["u"][i], colour.U, 1e-5);
            Assert.Equal(lines["v"][i], colour.V, 1e-5);

            (double du, double dv) = Tangent(temperatureK);
            double slope = lines["slope"][i];
            Assert.Equal(slope, -du / dv, Math.Pow(10, Math.Floor(Math.Log10(-slope)) - 4));
        }
    }

    [Fact]
    public void The_locus_between_its_nodes_is_found_to_1e_10_and_a_ten_thousandth_of_a_kelvin()
    {
        for (double temperatureK = 1000; temperatureK <= 25_000; temperatureK *= 1.00731)
        {
            Chromaticity colour = PlanckianLocus.AtK(temperatureK);
            (double foundK, double distance) = PlanckianLocus.NearestTo(colour.U, colour.V)!.Value;
            Assert.Equal(0, distance, 1e-10);
            Assert.Equal(1, foundK / temperatureK, 1e-8);
        }
    }

    [Theory]
    [InlineData(99)]
    [InlineData(1.1e6)]
    [InlineData(double.NaN)]
    public void A_temperature_outside_100_to_1000000_K_is_refused(double temperatureK)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PlanckianLocus.AtK(temperatureK));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlanckRadiator.OnModelGrid(temperatureK));
    }

    [Theory]
    [InlineData(100)]
    [InlineData(1e6)]
    public void At_the_ends_of_that_range_all_numbers_are_finite(double temperatureK)
    {
        Assert.True(PlanckRadiator.OnModelGrid(temperatureK).IntegralOverNm() > 0);
        Assert.True(PlanckianLocus.AtK(temperatureK).X > 0);
    }

    /// <summary>Direction of the locus towards hotter bodies, from exact points beside it.</summary>
    internal static (double DU, double DV) Tangent(double temperatureK)
    {
        const double share = 3e-5;
        Chromaticity colder = PlanckianLocus.AtK(temperatureK * (1 - share));
        Chromaticity hotter = PlanckianLocus.AtK(temperatureK * (1 + share));
        return (hotter.U - colder.U, hotter.V - colder.V);
    }
}
