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
            cup => Assert.Equal(cup.Second, cup.First.LoadingPercent, tolerance: 0.06)
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
        // 0.0331925, 0.0717080 and 0.1169383 (10, 20 and 30 % by mass): resin 1.1 · 1.927178 · (3 − 0.2218388) = 5.889412 g.
        var glow = TestTiles.Of(SamplePieces.With("scale_step_g: 0.01", "scale_step_g: 0.001")).Mixes[0];
        Assert.Equal(5.889412, glow.NeededG, tolerance: 1e-6);
        double inCups = glow.Cups.Sum(c => c.ResinG);
        Assert.InRange(inCups, 5.889 - 0.009, 5.889 + 0.009); // half a step of pigment is up to 4.5 of resin
        Assert.InRange(glow.Parts.MixG, inCups, inCups + 0.006);
        Assert.Equal(2, glow.Parts.PartAG / glow.Parts.PartBG, tolerance: 1e-9);
        Assert.Equal(5.781534, glow.MixVolumeMl, tolerance: 1e-6);
    }

    [Fact]
    public void More_pigment_than_resin_is_weighed_after_the_resin()
    {
        var cups = TestTiles
            .Of(SamplePieces.With("loading_percent: 20", "loading_percent: 52"))
            .Mixes[0]
            .Cups;
        Assert.All(
            cups,
            cup => Assert.Equal(cup.Batch.Layer.Loading.PercentByMass, cup.LoadingPercent, tolerance: 0.1)
        );
    }

    [Fact]
    public void No_tile_is_loaded_beyond_80_percent()
    {
        var tiles = TestTiles.Of(SamplePieces.With("loading_percent: 20", "loading_percent: 60"));
        Assert.Equal(80, tiles.Mixes[0].Cups[2].Batch.Layer.Loading.PercentByMass, tolerance: 1e-9);
        Assert.Contains(tiles.Warnings, w => w.Code == "does-not-pour");
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(1)]
    public void A_coarse_scale_mixes_more_than_the_tiles_take(double stepG)
    {
        var tiles = TestTiles.Of(
            SamplePieces.With("scale_step_g: 0.01", FormattableString.Invariant($"scale_step_g: {stepG}"))
        );
        Assert.All(tiles.Mixes, mix => Assert.False(mix.Parts.IsTooSmall));
        Assert.All(tiles.Mixes, mix => Assert.True(mix.Parts.MixG > mix.NeededG));
        Assert.All(tiles.Mixes[0].Cups, cup => Assert.True(cup.PigmentG >= 9 * stepG));
        Assert.All(
            tiles.Mixes[0].Cups,
            cup => Assert.Equal(cup.Batch.Layer.Loading.PercentByMass, cup.LoadingPercent, tolerance: 0.25)
        );
        Assert.All(tiles.Mixes, mix => Assert.True(mix.Parts.MixG >= mix.Cups.Sum(c => c.ResinG)));
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
