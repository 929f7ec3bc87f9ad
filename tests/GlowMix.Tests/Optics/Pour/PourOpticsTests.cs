using GlowMix.Optics.Grains;
using GlowMix.Optics.Pour;
using GlowMix.Spectra;

namespace GlowMix.Tests.Optics.Pour;

public class PourOpticsTests
{
    private static readonly PourOptics Piece = PourOptics.Of(
        SamplePours.Stack(
            0.7,
            PourLayer.Clear(0.4),
            SamplePours.Green(1),
            PourLayer.Clear(0.5),
            SamplePours.Blue(0.6),
            PourLayer.Clear(0.3)
        )
    );

    [Fact]
    public void Light_of_every_source_is_all_accounted_for()
    {
        foreach (var source in (SourceResponse[])[Piece.OverPackages!, Piece.WholeFloor, Piece.Sky])
        {
            for (int i = 0; i < WavelengthGrid.Count; i++)
            {
                double sum = source.Escaped[i] + source.Floor[i] + source.Resin[i] + source.Pigment[i];
                Assert.Equal(1, sum, tolerance: 1e-9);
            }
        }
    }

    [Fact]
    public void Cells_absorb_what_pigment_absorbs_in_closed_form()
    {
        foreach (var source in (SourceResponse[])[Piece.OverPackages!, Piece.WholeFloor, Piece.Sky])
        {
            for (int i = 0; i < WavelengthGrid.Count; i++)
            {
                var fluence = source.FluenceAt(i).ToArray();
                double inCells = Piece
                    .Cells.Select((c, n) => fluence[n] * c.WidthMm * Piece.PigmentAbsorptionPerMm(c.Layer, i))
                    .Sum();
                Assert.Equal(source.Pigment[i], inCells, tolerance: 1e-10 + (1e-9 * source.Pigment[i]));
            }
        }
    }

    [Fact]
    public void Cells_fill_the_pigmented_layers_and_stop_where_the_packages_end()
    {
        double[] widths =
        [
            .. Piece.Cells.GroupBy(c => (c.Layer, c.OverPackages)).Select(g => g.Sum(c => c.WidthMm)),
        ];
        double[] expected = [0.3, 0.7, 0.6];
        Assert.All(expected.Zip(widths), w => Assert.Equal(w.First, w.Second, tolerance: 1e-12));
        Assert.Equal(expected.Length, widths.Length);
        Assert.All(Piece.Cells, c => Assert.Equal(c.FromMm > 0.7 - 1e-9, c.OverPackages));
    }

    [Fact]
    public void What_lies_over_the_packages_is_solved_as_a_pour_of_its_own()
    {
        var upper = PourOptics.Of(
            SamplePours.Stack(
                0,
                SamplePours.Green(0.7),
                PourLayer.Clear(0.5),
                SamplePours.Blue(0.6),
                PourLayer.Clear(0.3)
            )
        );
        int below = Piece.Cells.Count - upper.Cells.Count;
        Assert.True(below > 0);
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            Assert.Equal(upper.WholeFloor.Escaped[i], Piece.OverPackages!.Escaped[i], tolerance: 1e-12);
            Assert.Equal(upper.WholeFloor.Floor[i], Piece.OverPackages.Floor[i], tolerance: 1e-12);
            var alone = upper.WholeFloor.FluenceAt(i);
            var inside = Piece.OverPackages.FluenceAt(i);
            for (int c = 0; c < inside.Length; c++)
            {
                Assert.Equal(c < below ? 0 : alone[c - below], inside[c], tolerance: 1e-11);
            }
        }
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.8)]
    public void Packages_level_with_the_pour_or_above_it_stay_in_air(double heightMm) =>
        Assert.Null(PourOptics.Of(SamplePours.Stack(heightMm, SamplePours.Green(0.5))).OverPackages);

    [Fact]
    public void A_layer_in_slices_is_the_same_to_light()
    {
        var stack = SamplePours.Stack(0, SamplePours.Green(1.3), PourLayer.Clear(0.4));
        var whole = PourOptics.Of(stack, withGlow: false);
        var sliced = PourOptics.Of(SamplePours.Sliced(stack, 3), withGlow: false);
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            Assert.Equal(whole.Sky.Escaped[i], sliced.Sky.Escaped[i], tolerance: 1e-11);
            Assert.Equal(whole.Sky.Pigment[i], sliced.Sky.Pigment[i], tolerance: 1e-11);
            Assert.Equal(whole.WholeFloor.Resin[i], sliced.WholeFloor.Resin[i], tolerance: 1e-11);
        }
    }

    [Fact]
    public void Pigment_of_no_volume_is_clear_resin()
    {
        var none = PourOptics.Of(SamplePours.Stack(0, SamplePours.Green(1, volumeFraction: 0)));
        var clear = PourOptics.Of(SamplePours.Stack(0, PourLayer.Clear(1)));
        Assert.Empty(none.Cells);
        Assert.Equal(clear.WholeFloor.Escaped, none.WholeFloor.Escaped);
    }

    [Fact]
    public void Absorbers_that_do_not_scatter_leave_2_E3_of_diffuse_light()
    {
        // Matched boundary, black floor: T = 2 E₃(τ) (Chandrasekhar 1960); E₃ by its integral.
        const double perMm = 3;
        var grains = GrainTable.HenyeyGreenstein(
            Spectrum.Constant(perMm),
            Spectrum.Zero,
            Spectrum.Constant(0)
        );
        var layer = new PourLayer(1, 0.2, grains, SamplePours.Band(520, 80), 0.75);
        var pour = PourOptics.Of(
            new PourStack(new ResinOptics(Spectrum.Constant(1), Spectrum.Zero), [layer], PackageHeightMm: 0)
        );
        double expected =
            2
            * MathNet.Numerics.Integration.GaussLegendreRule.Integrate(
                mu => mu * Math.Exp(-0.2 * perMm / mu),
                0,
                1,
                200
            );
        Assert.Equal(expected, pour.Sky.Floor[30], tolerance: 1e-5);
        Assert.Equal(1 - expected, pour.Sky.Pigment[30], tolerance: 1e-5);
        Assert.Equal(0, pour.Sky.Escaped[30], tolerance: 1e-12);
    }

    [Fact]
    public void Through_an_opaque_pour_comes_nothing_and_not_less()
    {
        // Rounding in what the sky sends to the floor came back from the floor as a negative absorption.
        foreach (double depthMm in (double[])[5, 20, 50, 100, 200])
        {
            var pour = PourOptics.Of(
                SamplePours.Stack(0, SamplePours.Green(depthMm, 0.55), PourLayer.Clear(5))
            );
            Assert.All(pour.Sky.Floor, share => Assert.True(share >= 0));
            Assert.All(pour.WholeFloor.Escaped, share => Assert.True(share >= 0));
            Assert.All(
                PigmentExcitation.FromSky(pour, Spectrum.Constant(1e-3), Spectrum.Constant(0.88)),
                rate => Assert.True(rate >= 0)
            );
        }
    }

    [Fact]
    public void Pours_solved_together_come_out_as_if_each_were_solved_alone()
    {
        PourStack[] stacks =
        [
            SamplePours.Stack(0.7, SamplePours.Green(0.5), PourLayer.Clear(0.1)),
            SamplePours.Stack(0.7, SamplePours.Green(2.5), PourLayer.Clear(0.4)),
            SamplePours.Stack(0.7, SamplePours.Green(2.6), PourLayer.Clear(0.4)),
            SamplePours.Stack(0.7, SamplePours.Green(0.7), PourLayer.Clear(0.4)),
            SamplePours.Stack(0.7, SamplePours.Green(0.3), PourLayer.Clear(0.4)),
            SamplePours.Stack(0.7, SamplePours.Green(0.3), PourLayer.Clear(0.5)),
            SamplePours.Stack(1, SamplePours.Green(0.3), PourLayer.Clear(0.9)),
            SamplePours.Stack(0, SamplePours.Green(9), PourLayer.Clear(3)),
        ];
        var together = PourOptics.OfDepths(stacks);
        for (int i = 0; i < stacks.Length; i++)
        {
            var alone = PourOptics.Of(stacks[i]);
            Assert.Same(stacks[i], together[i].Stack);
            Assert.Equal(alone.Sky.CellFluence, together[i].Sky.CellFluence);
            Assert.Equal(alone.WholeFloor.Escaped, together[i].WholeFloor.Escaped);
            Assert.Equal(alone.OverPackages?.Pigment, together[i].OverPackages?.Pigment);
            Assert.Equal(alone.DownBetween?.CellFluence, together[i].DownBetween?.CellFluence);
            Assert.Equal(alone.DownBetween?.Escaped, together[i].DownBetween?.Escaped);
            Assert.Equal(alone.UpBetween?.Pigment, together[i].UpBetween?.Pigment);
            Assert.Equal(alone.UpBetween?.Floor, together[i].UpBetween?.Floor);
            Assert.Equal(alone.GroupFluence, together[i].GroupFluence);
        }
    }

    [Fact]
    public void Pours_of_other_mixes_are_not_solved_together()
    {
        var stack = SamplePours.Stack(0, SamplePours.Green(2));
        Assert.Throws<ArgumentException>(() => PourOptics.OfDepths([]));
        Assert.Throws<ArgumentException>(() =>
            PourOptics.OfDepths([stack, SamplePours.Stack(0, SamplePours.Green(2, 0.08))])
        );
        Assert.Throws<ArgumentException>(() =>
            PourOptics.OfDepths([stack, SamplePours.Stack(0, SamplePours.Blue(2, 0.07))])
        );
        Assert.Throws<ArgumentException>(() =>
            PourOptics.OfDepths([stack, SamplePours.Stack(0, SamplePours.Green(2), PourLayer.Clear(1))])
        );
    }
}
