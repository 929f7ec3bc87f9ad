using GlowMix.Casting;

namespace GlowMix.Tests.Casting;

public class BatchSheetTests
{
    [Fact]
    public void A_strip_of_500_by_12_mm_by_hand_to_the_hundredth_of_a_gram()
    {
        // Glow: 500 · 12 · 2.5 − 60 · 3.5 · 2.8 · 0.7 = 14 588.4 mm³, a tenth more for waste: 16.04724 ml.
        // 1 / (0.2/3.56 + 0.8/1.1) = 1.276402 g/cm³ makes 20.48273 g: 4.09655 g of pigment, 10.92412 g of A, 5.46206 g of B.
        // Cover: 500 · 12 · 0.5 · 1.1 = 3.3 ml, 3.63 g: 2.42 g of A, 1.21 g of B.
        var sheet = BatchSheet.Of(SamplePieces.Of(SamplePieces.Strip));
        Assert.Equal(["glow", "cover"], sheet.Mixes.Select(m => m.Batch.Layer.Name));
        var glow = sheet.Mixes[0].Weighed!;
        Assert.Equal((10.92, 5.46, 4.10), (glow.PartAG, glow.PartBG, glow.PigmentG));
        Assert.Equal(25, sheet.Mixes[0].Batch.Layer.Loading.GPer100GResin, tolerance: 1e-9);
        Assert.Equal(7.17, sheet.Mixes[0].Batch.PigmentVolumePercent, tolerance: 0.005);
        var cover = sheet.Mixes[1].Weighed!;
        Assert.Equal((2.42, 1.21, 0), (cover.PartAG, cover.PartBG, cover.PigmentG));
        // 20.01618 g of resin at 28 and 4.09655 g of pigment at 190 a kg
        Assert.Equal(1.33880, sheet.Plan.Cost!.Value, tolerance: 1e-5);
        Assert.Empty(sheet.Warnings);
    }

    [Fact]
    public void Ten_pieces_come_from_one_mix_of_each_layer()
    {
        var sheet = BatchSheet.Of(SamplePieces.Of(SamplePieces.Strip), 10);
        Assert.Equal((109.24, 54.62), (sheet.Mixes[0].Weighed!.PartAG, sheet.Mixes[0].Weighed!.PartBG));
        Assert.Equal(13.3880, sheet.Plan.Cost!.Value, tolerance: 1e-4);
    }

    [Fact]
    public void The_vessel_has_5_to_10_times_the_mix_and_without_vacuum_none_is_asked_for()
    {
        var mix = BatchSheet.Of(SamplePieces.Of(SamplePieces.Strip)).Mixes[0];
        Assert.Equal(80.2362, mix.LeastVesselMl!.Value, tolerance: 1e-9); // 5 · 16.04724
        Assert.Equal(160.4724, mix.MostVesselMl!.Value, tolerance: 1e-9);
        var open = BatchSheet.Of(SamplePieces.With("vacuum_min: 15", "vacuum_min: 0")).Mixes[0];
        Assert.Null(open.LeastVesselMl);
    }

    [Theory] // φ in part A alone, by hand: grains 0.072 beside 2/3 of 0.928; 0.295 beside 2/3 of 0.705: 0.39; 0.419: 0.52
    [InlineData(20, true)]
    [InlineData(57.5, true)]
    [InlineData(70, false)]
    public void Pigment_goes_into_part_A_unless_that_alone_would_be_a_paste(double percent, bool intoA)
    {
        var sheet = BatchSheet.Of(
            SamplePieces.With(
                "loading_percent: 20",
                FormattableString.Invariant($"loading_percent: {percent}")
            )
        );
        Assert.Equal(intoA, sheet.Mixes[0].PigmentGoesIntoPartA);
        Assert.False(sheet.Mixes[1].PigmentGoesIntoPartA);
    }

    [Fact]
    public void What_lies_on_its_face_is_poured_face_first()
    {
        var sheet = BatchSheet.Of(SamplePieces.With("width_mm: 12", "width_mm: 12\n  face: down"));
        Assert.Equal(["cover", "glow"], sheet.Mixes.Select(m => m.Batch.Layer.Name));
    }

    [Fact]
    public void A_kitchen_scale_is_too_coarse_for_a_thin_cover_and_the_smallest_safe_batch_is_told()
    {
        var sheet = BatchSheet.Of(SamplePieces.With("  scale_step_g: 0.01\n", ""));
        Assert.True(sheet.ScaleStepIsAssumed);
        Assert.Equal(0.1, sheet.ScaleStepG);
        var warning = Assert.Single(sheet.Warnings);
        Assert.Equal(("scale-too-coarse", "cover"), (warning.Code, warning.Layer));
        // 51 steps of B and twice that of A are 15.3 g; 3.6 g a piece: 5 of them.
        Assert.Contains(
            "too small for this scale, whose step can put A : B 6.3 % off (2 % at most); smallest safe batch is 16 g (5 pieces at once)",
            warning.Text,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(
        "waste_percent: 10",
        "waste_percent: 10\n",
        200,
        "heavier-than-sheet",
        "share it out to 7 cups"
    )]
    [InlineData("depth_mm: 2.5", "depth_mm: 31", 1, "deeper-than-sheet", "pour it in 2")]
    [InlineData(
        "vacuum_min: 15",
        "vacuum_min: 100",
        1,
        "no-time-to-degas",
        "stirring and vacuum take 105 min"
    )]
    [InlineData("loading_percent: 20", "loading_percent: 80", 1, "does-not-pour", "glow does not pour")]
    [InlineData("temperature_c: 25", "temperature_c: 12", 1, "too-cold", "at 12 °C")]
    [InlineData("  count: 60\n", "", 1, "size-unknown", "for 100 g of A + B")]
    [InlineData(
        "loading_percent: 20",
        "loading_percent: 20\n    loading_tolerance_points: 0.01",
        1,
        "loading-too-coarse",
        "the recipe allows ± 0.01"
    )]
    public void What_can_spoil_a_batch_is_told(
        string old,
        string changed,
        int pieces,
        string code,
        string text
    )
    {
        var warnings = BatchSheet.Of(SamplePieces.With(old, changed), pieces).Warnings;
        Assert.Contains(text, warnings.First(w => w.Code == code).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_deep_end_of_a_sloping_channel_counts_against_the_sheets_depth()
    {
        // 29.9 mm at mid-length, 30.1 mm at the deep end
        var level = SamplePieces.With("depth_mm: 0.5", "depth_mm: 29.9");
        Assert.Empty(BatchSheet.Of(level).Warnings);
        var sloping = SamplePieces.Of(
            SamplePieces
                .Strip.Replace("depth_mm: 0.5", "depth_mm: 29.9", StringComparison.Ordinal)
                .Replace("width_mm: 12", "width_mm: 12\n  runs_out_mm: 0.4", StringComparison.Ordinal)
        );
        Assert.Equal("deeper-than-sheet", Assert.Single(BatchSheet.Of(sloping).Warnings).Code);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(1_000_000_000)]
    public void No_pieces_and_too_many_are_refused(int pieces) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            BatchSheet.Of(SamplePieces.Of(SamplePieces.Strip), pieces)
        );
}
