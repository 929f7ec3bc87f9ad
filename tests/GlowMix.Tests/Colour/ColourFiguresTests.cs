using GlowMix.Colour;
using GlowMix.Spectra;

namespace GlowMix.Tests.Colour;

public class ColourFiguresTests
{
    [Fact]
    public void A_spectrum_without_light_has_no_colour_and_no_lumens()
    {
        ColourFigures dark = ColourFigures.Of(Spectrum.Zero);

        Assert.Null(dark.Chromaticity);
        Assert.Null(dark.ChromaticityX);
        Assert.Null(dark.UPrime);
        Assert.Null(dark.CctK);
        Assert.Null(dark.Duv);
        Assert.Null(dark.Ra);
        Assert.Null(dark.R9);
        Assert.False(dark.RaMeaningful);
        Assert.Null(dark.LuminousEfficacyLmPerW);
        Assert.Null(dark.ScotopicPhotopicRatio);
        Assert.Equal(0, dark.LuminousFluxLm);
        Assert.Equal(0, dark.ScotopicLuminousFluxLm);
    }

    [Fact]
    public void Noise_about_zero_has_no_colour_or_one_that_is_a_number()
    {
        Assert.Null(ColourFigures.Of(Spectrum.FromIndex(i => i % 2 == 0 ? -1 : 0.9)).Chromaticity);
        Assert.Null(new Tristimulus(5, 0.1, -4.5).Chromaticity);
        var random = new Random(3);
        for (int i = 0; i < 2000; i++)
        {
            ColourFigures figures = ColourFigures.Of(Spectrum.FromIndex(_ => random.NextDouble() - 0.5));
            Assert.True(figures.ChromaticityX is not { } x || double.IsFinite(x));
            Assert.True(figures.Ra is not { } ra || double.IsFinite(ra));
            Assert.True(figures.ScotopicPhotopicRatio is not { } ratio || double.IsFinite(ratio));
        }
    }

    [Theory]
    [InlineData("led_b1")]
    [InlineData("led_v2")]
    [InlineData("fl11")]
    public void A_table_of_5_nm_has_the_same_figures_on_the_models_grid_as_on_its_own(string name)
    {
        TabulatedSpectrum table = StandardIlluminants.Named(name).Between(340, 780);
        ColourFigures own = ColourFigures.Of(table);
        ColourFigures model = ColourFigures.Of(ResampledSpectrum.From(table).Spectrum);

        Assert.Equal(own.CctK!.Value, model.CctK!.Value, 1e-6);
        Assert.Equal(own.Duv!.Value, model.Duv!.Value, 1e-12);
        Assert.Equal(own.Ra!.Value, model.Ra!.Value, 1e-9);
        Assert.Equal(own.LuminousFluxLm, model.LuminousFluxLm, 1e-6);
        Assert.Equal(own.LuminousEfficacyLmPerW!.Value, model.LuminousEfficacyLmPerW!.Value, 1e-9);
    }

    [Fact]
    public void Brightness_changes_no_colour()
    {
        Spectrum led = ResampledSpectrum.From(StandardIlluminants.Named("led_b3")).Spectrum;
        ColourFigures one = ColourFigures.Of(led);
        ColourFigures dim = ColourFigures.Of(1e-12 * led);
        Assert.Equal(one.CctK!.Value, dim.CctK!.Value, 1e-6);
        Assert.Equal(one.Ra!.Value, dim.Ra!.Value, 1e-9);
        Assert.Equal(1e-12 * one.LuminousFluxLm, dim.LuminousFluxLm, 1e-20);
    }

    [Theory]
    // Effect of a reading that begins at 420 nm on the CCT, K; computed independently of this code.
    [InlineData("led_b1", 0.4, 0.051)]
    [InlineData("led_b4", 4, 0.51)]
    [InlineData("fl11", 14, 0.51)]
    [InlineData("led_v2", 77, 0.51)]
    [InlineData("d65", 174, 0.51)]
    public void What_a_reading_lacks_below_420_nm_moves_its_CCT(string name, double shiftK, double tolerance)
    {
        TabulatedSpectrum whole = At1Nm(StandardIlluminants.Named(name).Between(360, 780));
        double cut = ColourFigures.Of(whole.Between(420, 780)).CctK!.Value;
        Assert.Equal(shiftK, Math.Abs(cut - ColourFigures.Of(whole).CctK!.Value), tolerance);
    }

    [Fact]
    public void A_pedestal_of_1_percent_of_the_peak_moves_LED_B1_by_22_K()
    {
        // Computed independently of this code.
        TabulatedSpectrum table = StandardIlluminants.Named("led_b1");
        double peak = table.Values.ToArray().Max();
        ColourFigures clean = ColourFigures.Of(table);
        ColourFigures raised = ColourFigures.Of(
            TabulatedSpectrum.From(
                table.WavelengthsNm,
                [.. table.Values.ToArray().Select(v => v + (0.01 * peak))]
            )
        );
        Assert.Equal(22, raised.CctK!.Value - clean.CctK!.Value, 0.51);
        Assert.Equal(-0.0003, raised.Duv!.Value - clean.Duv!.Value, 0.000051);
        Assert.Equal(0.4, raised.Ra!.Value - clean.Ra!.Value, 0.051);
        Assert.Equal(
            0.016,
            raised.ScotopicPhotopicRatio!.Value - clean.ScotopicPhotopicRatio!.Value,
            0.00051
        );
    }

    [Theory]
    // Ends at half weight; computed independently of this code.
    [InlineData("d65", 340, 195)]
    [InlineData("d65", 360, 199)]
    [InlineData("d65", 380, 205)]
    [InlineData("a", 380, 156)]
    public void Lumens_a_watt_depend_on_where_the_sum_begins(string name, double firstNm, double efficacy)
    {
        TabulatedSpectrum table = StandardIlluminants.Named(name).Between(firstNm, 780);
        // One more sample on the line between two makes the grid uneven: integrated by trapezoids, not summed.
        double[] nm = [.. table.WavelengthsNm, 502.5];
        Array.Sort(nm);
        TabulatedSpectrum uneven = TabulatedSpectrum.From(nm, [.. nm.Select(table.ValueAtNm)]);
        Assert.Equal(efficacy, ColourFigures.Of(uneven).LuminousEfficacyLmPerW!.Value, 0.51);
    }

    [Fact]
    public void An_uneven_grid_integrates_by_trapezoids()
    {
        // Samples of a smooth light every 0.5 to 1.5 nm against every 1 nm.
        double[] uneven = [.. Enumerable.Range(0, 401).Select(i => 380 + i + (0.25 * Math.Sin(i)))];
        double[] even = [.. Enumerable.Range(0, 401).Select(i => 380.0 + i)];
        ColourFigures a = ColourFigures.Of(TabulatedSpectrum.From(uneven, [.. uneven.Select(Light)]));
        ColourFigures b = ColourFigures.Of(TabulatedSpectrum.From(even, [.. even.Select(Light)]));

        Assert.Equal(b.CctK!.Value, a.CctK!.Value, 0.1);
        Assert.Equal(b.Ra!.Value, a.Ra!.Value, 0.01);
        Assert.Equal(1, a.LuminousFluxLm / b.LuminousFluxLm, 1e-4);

        static double Light(double nm) =>
            Math.Exp(-Math.Pow((nm - 580) / 70, 2)) + (0.6 * Math.Exp(-Math.Pow((nm - 455) / 12, 2)));
    }

    [Fact]
    public void Another_grids_weights_are_refused() =>
        Assert.Throws<ArgumentException>(() => ColourFigures.Of([1, 2, 3], ObserverWeights.ModelGrid));

    [Fact]
    public void The_cheap_path_gives_the_same_point()
    {
        Spectrum led = ResampledSpectrum.From(StandardIlluminants.Named("led_b3")).Spectrum;
        Assert.Equal(ColourFigures.Of(led).Point, ColourPoint.Of(led));
    }

    private static TabulatedSpectrum At1Nm(TabulatedSpectrum table)
    {
        int first = (int)table.FirstNm;
        double[] nm = [.. Enumerable.Range(first, (int)table.LastNm - first + 1).Select(n => (double)n)];
        return TabulatedSpectrum.From(nm, [.. nm.Select(table.ValueAtNm)]);
    }
}
