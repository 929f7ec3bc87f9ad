using GlowMix.LitState;
using GlowMix.Optics.Pour;
using GlowMix.Spectra;
using GlowMix.Tests.Optics.Pour;

namespace GlowMix.Tests.LitState;

/// <summary>What comes down beside the packages, into what lies between them.</summary>
public class BetweenPackagesTests
{
    private static readonly Spectrum Board = Spectrum.FromNm(nm => nm < 410 ? 0.4 : 0.87);

    private static readonly PourOptics Bed = PourOptics.Of(
        SamplePours.Stack(
            0.7,
            SamplePours.Green(0.3, 0.4),
            PourLayer.Clear(0.2),
            SamplePours.Green(0.8, 0.01)
        ),
        withGlow: false
    );

    [Fact]
    public void Nothing_is_lost()
    {
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            foreach (var source in new[] { Bed.DownBetween!, Bed.UpBetween! })
            {
                double all = source.Escaped[i] + source.Floor[i] + source.Resin[i] + source.Pigment[i];
                Assert.Equal(1, all, tolerance: 1e-9);
            }
        }
    }

    [Fact]
    public void As_much_gets_through_either_way()
    {
        // Reciprocity: the same resin at both ends.
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            Assert.Equal(Bed.UpBetween!.Escaped[i], Bed.DownBetween!.Floor[i], tolerance: 1e-12);
        }
    }

    [Fact]
    public void Shares_add_up_over_any_board()
    {
        foreach (var board in new[] { Board, Spectrum.Zero, Spectrum.Constant(1) })
        {
            var beside = BetweenPackages.Of(Bed, board);
            for (int i = 0; i < WavelengthGrid.Count; i++)
            {
                double all = beside.SentBack[i] + beside.Pigment[i] + beside.Resin[i] + beside.Board[i];
                Assert.Equal(1, all, tolerance: 1e-9);
            }
        }
    }

    [Fact]
    public void Between_packages_of_no_height_there_is_only_the_board()
    {
        var flat = PourOptics.Of(SamplePours.Stack(0, SamplePours.Green(1)), withGlow: false);
        Assert.Null(flat.DownBetween);
        Assert.Same(Board, BetweenPackages.Of(flat, Board).SentBack);
    }

    [Fact]
    public void Clear_lossless_resin_between_them_leaves_the_board_as_it_is()
    {
        var stack = new PourStack(SamplePours.Resin.Lossless, [PourLayer.Clear(2)], PackageHeightMm: 0.7);
        var beside = BetweenPackages.Of(PourOptics.Of(stack, withGlow: false), Board);
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            Assert.Equal(Board[i], beside.SentBack[i], tolerance: 1e-12);
        }
    }

    [Fact]
    public void Photons_in_the_cells_are_those_the_closed_form_absorbs()
    {
        var light = SamplePours.Band(450, 20);
        double[] rates = PigmentExcitation.BetweenPackages(Bed, light, Board);
        double inCells = 0;
        for (int c = 0; c < rates.Length; c++)
        {
            var cell = Bed.Cells[c];
            Assert.Equal(!cell.OverPackages, rates[c] > 0);
            inCells += rates[c] * cell.WidthMm * Bed.Stack.Layers[cell.Layer].VolumeFraction;
        }
        var beside = BetweenPackages.Of(Bed, Board);
        double closed = Enumerable
            .Range(0, WavelengthGrid.Count)
            .Sum(i =>
                light[i] * beside.Pigment[i] * WavelengthGrid.StepNm * Photon.PerJoule(WavelengthGrid.NmAt(i))
            );
        Assert.Equal(closed, inCells, tolerance: 1e-9 * closed);
    }
}
