using GlowMix.Optics.Pour;

namespace GlowMix.Tests.Optics.Pour;

public class PourGridTests
{
    private static readonly PourLayer Poured = SamplePours.Green(2);

    /// <summary>A bed, two steps and clear resin, of one pigment.</summary>
    private static readonly PourLayer[] Settled =
    [
        Poured with
        {
            DepthMm = 0.2,
            VolumeFraction = 0.4,
        },
        Poured with
        {
            DepthMm = 0.8,
            VolumeFraction = 0.04,
        },
        Poured with
        {
            DepthMm = 0.6,
            VolumeFraction = 0.01,
        },
        PourLayer.Clear(0.4),
    ];

    [Fact]
    public void Slices_of_one_pigment_share_the_cells_of_a_layer_by_their_pigment()
    {
        var whole = new PourGrid(SamplePours.Stack(0, Poured));
        var slices = new PourGrid(SamplePours.Stack(0, Settled));

        Assert.Equal((16, 4), (whole.Cells.Count, whole.GroupCount));
        Assert.InRange(slices.Cells.Count, 14, 18);
        Assert.InRange(slices.GroupCount, 4, 6);
        int[] counts = [.. slices.Parts.Select(p => p.CellCount)];
        Assert.Equal(counts.OrderDescending(), counts);
        Assert.Equal(0, counts[^1]);
        Assert.All(counts[..^1], count => Assert.True(count >= 1));
    }

    [Fact]
    public void Layers_of_other_pigments_or_pours_have_cells_of_their_own()
    {
        // Each call makes its own emission, as each poured layer does.
        var two = new PourGrid(SamplePours.Stack(0, SamplePours.Green(1), SamplePours.Green(1)));
        Assert.Equal((32, 8), (two.Cells.Count, two.GroupCount));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void Cells_and_groups_fill_the_pigmented_parts(int fineness)
    {
        var grid = new PourGrid(SamplePours.Stack(0.7, Settled), fineness);
        Assert.Equal(1.6, grid.Cells.Sum(c => c.WidthMm), tolerance: 1e-12);
        Assert.Equal(1.6, grid.GroupWidthMm.Sum(), tolerance: 1e-12);
        Assert.Equal(grid.Cells.Count, grid.GroupOfCell.Length);
        Assert.Equal(grid.GroupOfCell.Order(), grid.GroupOfCell);
        for (int g = 0; g < grid.GroupCount; g++)
        {
            var cells = grid.Cells.Where((_, c) => grid.GroupOfCell[c] == g).ToArray();
            Assert.Equal(grid.GroupWidthMm[g], cells.Sum(c => c.WidthMm), tolerance: 1e-12);
            Assert.All(cells, c => Assert.Equal(grid.LayerOfGroup[g], c.Layer));
        }
    }

    [Fact]
    public void Slices_that_end_level_with_the_packages_but_for_rounding_do_not_rise_over_them()
    {
        double[] slices = [0.1, 0.2, 0.4];
        Assert.NotEqual(0.7, slices.Sum());
        var grid = new PourGrid(
            SamplePours.Stack(0.7, [.. slices.Select(mm => Poured with { DepthMm = mm })])
        );
        Assert.Equal(-1, grid.FirstOverPackages);
        Assert.Equal(3, grid.Parts.Count);
    }

    [Fact]
    public void An_opaque_pour_has_more_cells() =>
        Assert.Equal(32, new PourGrid(SamplePours.Stack(0, SamplePours.Green(8, 0.1))).Cells.Count);
}
