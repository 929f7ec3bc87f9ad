using GlowMix.Colour;
using GlowMix.Spectra;

namespace GlowMix.Tests.Colour;

public class ColourRenderingTests
{
    [Theory]
    // On either side of the switch of CIE 13.3-1995 at 5000 K; computed independently of this code.
    [InlineData("fl8", 95.5, 95.2)]
    [InlineData("d50", 98.6, 100.0)]
    public void At_5000_K_the_reference_turns_from_a_black_body_to_daylight(
        string name,
        double raAgainstPlanck,
        double raAgainstDaylight
    )
    {
        TabulatedSpectrum lamp = StandardIlluminants.Named(name).Between(380, 780);
        ObserverWeights weights = ObserverWeights.For(lamp);
        double cctK = ColourFigures.Of(lamp).CctK!.Value;
        ColourRendering planck = ColourRendering.Between(
            weights.Rendering.Of(lamp.Values),
            weights.Rendering.OfPlanckRadiator(cctK)
        );
        ColourRendering daylight = ColourRendering.Between(
            weights.Rendering.Of(lamp.Values),
            weights.Rendering.OfDaylight(DaylightPhase.AtK(cctK))
        );
        Assert.Equal(raAgainstPlanck, planck.Ra, 0.051);
        Assert.Equal(raAgainstDaylight, daylight.Ra, 0.051);

        ColourRendering below = ColourRendering.Of(lamp.Values, weights, 4999.99);
        ColourRendering from = ColourRendering.Of(lamp.Values, weights, 5000);
        Assert.Equal(raAgainstPlanck - raAgainstDaylight, below.Ra - from.Ra, 0.101);
    }

    [Theory]
    [InlineData("fl1", 0.0039, true)]
    [InlineData("fl5", 0.0075, false)]
    [InlineData("fl6", 0.0060, false)]
    public void A_lamp_farther_than_0_0054_from_its_reference_has_an_Ra_of_little_meaning(
        string name,
        double distance,
        bool meaningful
    )
    {
        ColourFigures figures = ColourFigures.Of(StandardIlluminants.Named(name));
        Assert.Equal(distance, figures.Rendering!.ReferenceDistance, 0.000051);
        Assert.Equal(meaningful, figures.RaMeaningful);
    }

    [Theory]
    [InlineData(1500)]
    [InlineData(2700)]
    [InlineData(4990)]
    public void A_black_body_below_5000_K_renders_as_itself(double temperatureK)
    {
        ColourFigures figures = ColourFigures.Of(PlanckRadiator.OnModelGrid(temperatureK));
        for (int sample = 1; sample <= 14; sample++)
        {
            // The lamp's CCT, of the locus at 1 nm, is 0.3 K from the temperature of its own 5 nm sums.
            Assert.Equal(100, figures.Rendering!.R(sample), 0.05);
        }
        Assert.Equal(temperatureK, figures.CctK!.Value, 0.5);
        Assert.Equal(0, figures.Duv!.Value, 1e-5);
    }

    [Theory]
    [InlineData(5010)]
    [InlineData(6504)]
    [InlineData(20_000)]
    public void A_phase_of_daylight_renders_as_itself(double cctK) =>
        Assert.Equal(100, ColourFigures.Of(DaylightPhase.AtK(cctK).OnModelGrid()).Ra!.Value, 0.05);

    [Fact]
    public void Ra_is_the_mean_of_the_first_eight()
    {
        ColourRendering rendering = ColourFigures.Of(StandardIlluminants.Named("fl2")).Rendering!;
        Assert.Equal(Enumerable.Range(1, 8).Average(rendering.R), rendering.Ra, 1e-12);
        Assert.Equal(rendering.Ra, Direct().Ra, 1e-12);

        static ColourRendering Direct()
        {
            TabulatedSpectrum lamp = StandardIlluminants.Named("fl2");
            return ColourRendering.Of(lamp.Values, ObserverWeights.For(lamp))!;
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(15)]
    public void There_are_samples_1_to_14(int sample) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            ColourFigures.Of(StandardIlluminants.Named("a")).Rendering!.R(sample)
        );

    [Fact]
    public void A_green_glow_has_no_Ra() =>
        Assert.Null(ColourFigures.Of(Spectrum.FromNm(nm => Math.Exp(-Math.Pow((nm - 520) / 36, 2)))).Ra);
}
