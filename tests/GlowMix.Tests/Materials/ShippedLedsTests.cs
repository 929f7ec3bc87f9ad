using GlowMix.Colour;
using GlowMix.Materials;
using GlowMix.Optics;

namespace GlowMix.Tests.Materials;

public class ShippedLedsTests
{
    private static readonly Shelf Shelf = new();

    public static TheoryData<string, double> LedsWithCct =>
        new()
        {
            { "warm-white-2700", 2700 },
            { "warm-white-3000", 3000 },
            { "neutral-white-4000", 4000 },
            { "cool-white-6500", 6500 },
        };

    [Theory, MemberData(nameof(LedsWithCct))]
    public void The_bare_colour_is_the_nominal_one_on_the_Planckian_locus(string name, double cctK)
    {
        var figures = ColourFigures.Of(Led(name).BareShapePerNm);
        Assert.Equal(cctK, figures.CctK!.Value, tolerance: 1);
        Assert.InRange(figures.Duv!.Value, -0.001, 0.001);
        Assert.InRange(figures.Ra!.Value, 80, 83);
    }

    [Theory, MemberData(nameof(LedsWithCct))]
    public void The_shares_of_the_file_are_those_that_give_the_white(string name, double cctK)
    {
        var led = Led(name);
        double[]? shares = WhiteShares.Of(
            [led.Die.ShapePerNm, led.Green.ShapePerNm, led.Red.ShapePerNm],
            cctK
        );
        Assert.NotNull(shares);
        Assert.All(
            led.Bands.Zip(shares),
            pair => Assert.Equal(pair.Second, pair.First.Share.Value, tolerance: 2e-5)
        );
    }

    [Theory, MemberData(nameof(LedsWithCct))]
    public void Bands_integrate_to_one_and_their_watts_give_the_flux(string name, double cctK)
    {
        var led = Led(name);
        Assert.True(cctK > 0);
        Assert.All(led.Bands, band => Assert.Equal(1, band.ShapePerNm.IntegralOverNm(), tolerance: 1e-12));
        double lumens = led
            .Bands.Zip(led.BandWattsAtRated)
            .Sum(pair => pair.Second * Photometry.PhotopicLm(pair.First.ShapePerNm));
        Assert.Equal(led.FluxLm.Value, lumens, tolerance: 1e-9);
        Assert.Equal(0.5, led.FluxRatioAtMa(led.AtMa.Value / 2), tolerance: 1e-15);
    }

    [Theory, MemberData(nameof(LedsWithCct))]
    public void The_first_pass_keeps_light_in_every_band_at_any_resin_index(string name, double cctK)
    {
        // s = (I − M R)(I − R)⁻¹ b with one R for all bands, from a filling of silicone to a dense epoxy.
        Assert.True(cctK > 0);
        var led = Led(name);
        foreach (double index in (double[])[1.41, 1.5, 1.57])
        {
            double returned = Fresnel.DiffuseFromInside(index);
            for (int i = 0; i < 3; i++)
            {
                double source = led.Bands[i].Share.Value;
                for (int j = 0; j < 3; j++)
                {
                    source -= led.ReturnMatrix.Value[i, j] * returned * led.Bands[j].Share.Value;
                }
                Assert.True(source > 0, $"band {i} at index {index}");
            }
        }
    }

    [Fact]
    public void The_warmer_the_LED_the_more_of_the_returned_blue_is_converted()
    {
        double[] converted =
        [
            .. ((string[])["cool-white-6500", "neutral-white-4000", "warm-white-3000"]).Select(name =>
                Led(name).ReturnMatrix.Value[1, 0] + Led(name).ReturnMatrix.Value[2, 0]
            ),
        ];
        Assert.Equal(converted.Order(), converted);
    }

    private static Led Led(string name) => Shelf.Led(name).Material!;
}
