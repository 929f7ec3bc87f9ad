using GlowMix.Casting;

namespace GlowMix.Tests.Casting;

public class TestTilesTests
{
    [Fact]
    public void Three_tiles_have_half_once_and_one_and_a_half_times_the_loading()
    {
        var tiles = TestTiles.Of(SamplePieces.Of(SamplePieces.Strip));
        var glow = tiles.Mixes[0];
        double[] loadings = [.. glow.Cups.Select(c => c.Batch.Layer.Loading.PercentByMass)];
        Assert.Equal([10, 20, 30], loadings.Select(l => Math.Round(l, 9)));
        Assert.All(
            glow.Cups.Zip(loadings),
            cup => Assert.Equal(cup.Second, cup.First.LoadingPercent, tolerance: 0.3)
        );
        Assert.Equal(0, tiles.Mixes[1].Cups.Sum(c => c.PigmentG));
    }

    [Fact]
    public void Tiles_are_60_mm_of_the_planned_channel_over_their_share_of_the_board()
    {
        var tiles = TestTiles.Of(SamplePieces.Of(SamplePieces.Strip));
        Assert.Equal((60, 12), (tiles.LengthMm, tiles.WidthMm));
        Assert.Equal(7, tiles.PackageCount); // 60 · 60 / 500
        var deep = TestTiles.Of(SamplePieces.With("width_mm: 12", "width_mm: 120"));
        Assert.Equal((60, 60), (deep.LengthMm, deep.WidthMm));
        var unknown = TestTiles.Of(SamplePieces.With("  count: 60\n", ""));
        Assert.Equal(0, unknown.PackageCount);
    }

    [Fact]
    public void All_tiles_share_one_mix_of_A_and_B_by_hand()
    {
        // Each glow tile: 60 · 12 · 2.5 − 7 · 3.5 · 2.8 · 0.7 = 1751.98 mm³, 1.927178 ml with waste. Of that is grain
        // 0.0331875, 0.0717079 and 0.1169191 (10, 20 and 30 % by mass): resin 1.1 · 1.927178 · (3 − 0.2218145) = 5.889393 g.
        var glow = TestTiles.Of(SamplePieces.Of(SamplePieces.Strip)).Mixes[0];
        Assert.Equal((3.92, 1.96), (glow.Parts.PartAG, glow.Parts.PartBG));
        double poured = glow.Cups.Sum(c => c.ResinG);
        Assert.InRange(poured, 5.88 - 0.03, 5.88);
        Assert.Equal(5.781534, glow.MixVolumeMl, tolerance: 1e-6);
    }

    [Fact]
    public void No_tile_is_loaded_beyond_80_percent()
    {
        var tiles = TestTiles.Of(SamplePieces.With("loading_percent: 20", "loading_percent: 60"));
        Assert.Equal(80, tiles.Mixes[0].Cups[2].Batch.Layer.Loading.PercentByMass, tolerance: 1e-9);
        Assert.Contains(tiles.Warnings, w => w.Code == "does-not-pour");
    }

    [Fact]
    public void A_coarse_scale_is_told_for_the_parts_and_for_the_pigment()
    {
        var tiles = TestTiles.Of(SamplePieces.With("scale_step_g: 0.01", "scale_step_g: 0.1"));
        Assert.Contains(tiles.Warnings, w => w is { Code: "scale-too-coarse", Layer: "glow" });
        Assert.Contains(tiles.Warnings, w => w is { Code: "loading-too-coarse", Layer: "glow" });
    }

    [Theory]
    [InlineData("vacuum_min: 15", "vacuum_min: 90", "no-time-to-degas")]
    [InlineData("depth_mm: 2.5", "depth_mm: 31", "deeper-than-sheet")]
    public void What_can_spoil_them_is_told(string old, string changed, string code) =>
        Assert.Contains(TestTiles.Of(SamplePieces.With(old, changed)).Warnings, w => w.Code == code);

    [Fact]
    public void Without_pigment_there_is_nothing_to_vary() =>
        Assert.Throws<ArgumentException>(() =>
            TestTiles.Of(SamplePieces.With("loading_percent: 20", "loading_percent: 0"))
        );
}
