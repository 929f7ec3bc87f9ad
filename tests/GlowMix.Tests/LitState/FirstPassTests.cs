using GlowMix.LitState;
using GlowMix.Materials;
using GlowMix.Optics;
using GlowMix.Spectra;

namespace GlowMix.Tests.LitState;

public class FirstPassTests
{
    [Theory]
    [InlineData(1.41)]
    [InlineData(1.5)]
    [InlineData(1.57)]
    public void Passed_to_and_fro_under_the_bare_face_it_becomes_the_bare_output(double index)
    {
        var led = TestLed.At(3000);
        double sentBack = Fresnel.DiffuseFromInside(index);
        double[] leaving = OfBands(led, Spectrum.Constant(index));
        var outside = new double[LedBands.Count];
        for (int pass = 0; pass < 400; pass++)
        {
            var again = new double[LedBands.Count];
            for (int j = 0; j < LedBands.Count; j++)
            {
                outside[j] += (1 - sentBack) * leaving[j];
                for (int i = 0; i < LedBands.Count; i++)
                {
                    again[i] += led.Returned[i, j] * sentBack * leaving[j];
                }
            }
            leaving = again;
        }
        Assert.All(led.BareW.Zip(outside), b => Assert.Equal(b.First, b.Second, tolerance: 1e-12));
    }

    [Fact]
    public void Without_a_face_it_is_the_bare_output()
    {
        var led = TestLed.At(4000);
        Assert.All(
            led.BareW.Zip(OfBands(led, Spectrum.Constant(1))),
            b => Assert.Equal(b.First, b.Second, tolerance: 1e-15)
        );
    }

    [Fact]
    public void It_has_more_blue_and_less_red_than_the_bare_package()
    {
        var led = TestLed.At(3000);
        double[] first = OfBands(led, Spectrum.Constant(1.5));
        Assert.True(first[0] / led.BareW[0] > first[1] / led.BareW[1]);
        Assert.True(first[1] / led.BareW[1] > first[2] / led.BareW[2]);
    }

    [Fact]
    public void A_cool_LED_with_the_conversion_of_a_warm_one_contradicts_itself() =>
        Assert.Contains(OfBands(TestLed.At(6500), Spectrum.Constant(1.5)), s => s < 0);

    [Fact]
    public void Shipped_LEDs_keep_light_in_every_band_under_every_shipped_resin()
    {
        var shelf = new Shelf();
        foreach (var led in shelf.ShippedLeds())
        {
            var bands = new LedBands(
                [.. led.Bands.Select(b => b.ShapePerNm)],
                [.. led.BandWattsAtRated],
                led.ReturnMatrix.Value.ToArray(),
                led.WindowRadiusMm.Value
            );
            Assert.All(
                Shelf.ShippedNames(MaterialKind.Resin),
                name =>
                    Assert.All(
                        FirstPass.Of(bands, shelf.Resin(name).Material!.RefractiveIndex.Value),
                        s =>
                            Assert.False(
                                s.Samples.ContainsAnyExceptInRange(0, 1e9),
                                $"{led.Name} under {name}"
                            )
                    )
            );
        }
    }

    private static double[] OfBands(LedBands led, Spectrum index) =>
        [.. FirstPass.Of(led, index).Select(s => s.IntegralOverNm())];
}
