using GlowMix.Console.Texts;

namespace GlowMix.Console.Tests.Texts;

public sealed class TargetRowsTests
{
    [Fact]
    public void Each_target_is_one_sentence() =>
        Assert.Equal(
            [
                "lit.duv, -0.006 to 0.025: met in over 9 of 10 draws, 0.0039 inside",
                "lit.flux_kept_percent, at least 90: missed in all draws, 8.4 % outside",
                "afterglow.luminance_mcd_m2 at 60 min, at least 4: too close to call, met in 7 of 10 draws, 0.4 mcd/m² inside; to decide: a decay reading of a known layer after a known charge",
                "lit.ra, at least 80: not judged, this tint is beyond what CIE 13.3 colour rendering is made for",
            ],
            TargetRows.Of(
                SamplePredictions.StairEdge with
                {
                    Targets =
                    [
                        SampleTargets.Met,
                        SampleTargets.Missed,
                        SampleTargets.TooClose,
                        SampleTargets.NotJudged,
                    ],
                }
            )
        );

    [Theory]
    [InlineData(0, "no draw")]
    [InlineData(0.01, "under 1 of 10 draws")]
    [InlineData(0.71, "7 of 10 draws")]
    [InlineData(0.99, "over 9 of 10 draws")]
    [InlineData(1, "all draws")]
    public void Share_is_told_in_tenths_and_never_surer_than_it_is(double share, string words) =>
        Assert.Equal(words, TargetRows.OfTen(share));

    [Fact]
    public void Without_draws_there_is_no_share()
    {
        var prediction = SamplePredictions.StairEdge with
        {
            Targets = [SampleTargets.Met with { ShareOfDraws = null }],
        };
        Assert.Equal(
            "lit.duv, -0.006 to 0.025: met, 0.0039 inside",
            Assert.Single(TargetRows.Of(prediction))
        );
    }

    [Theory]
    [InlineData(0.0041, "step Δu′v′ 0.0041, can be seen (limit 0.0033)")]
    [InlineData(0.0012, "step Δu′v′ 0.0012, hardly seen (limit 0.0033)")]
    public void Pour_out_of_level_tells_its_ends_and_whether_the_step_is_seen(double step, string words)
    {
        var prediction = (
            SamplePredictions.StairEdge with
            {
                Along =
                [
                    new("shallow", 2.8, 3790, 0.0202, 1104, 29.2),
                    new("deep", 3.2, null, null, null, null),
                ],
            }
        ).WithFigure("along_largest_step_u_prime_v_prime", step);
        Assert.Equal(
            [
                "shallow, 2.8 mm: 3790 K, Duv +0.020, 1100 lm, 29 mcd/m² at 10 min",
                "deep, 3.2 mm: no CCT",
                words,
            ],
            AlongRows.Of(prediction)
        );
    }
}
