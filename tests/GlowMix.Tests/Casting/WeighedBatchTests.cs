using GlowMix.Casting;

namespace GlowMix.Tests.Casting;

public class WeighedBatchTests
{
    [Fact]
    public void On_a_scale_of_0_01_g_the_masses_of_a_strip_are_those_by_hand()
    {
        // 20.48273 g of 20 % by mass and 2:1 (see CastingPlanTests): B 5.46206, A twice that, pigment a quarter of both.
        var weighed = new WeighedBatch(10.92412, 5.46206, 4.09655, 0.01);
        Assert.Equal(5.46, weighed.PartBG);
        Assert.Equal(10.92, weighed.PartAG);
        Assert.Equal(4.10, weighed.PigmentG); // 0.25 · 16.38 = 4.095, half a step rounded up
        Assert.Equal(20.48, weighed.MixG);
    }

    [Fact]
    public void The_heavier_part_and_the_pigment_follow_the_lighter_part()
    {
        // Each rounded alone: 10.9 to 5.5, a ratio 0.9 % off.
        var weighed = new WeighedBatch(10.92412, 5.46206, 4.09655, 0.1);
        Assert.Equal(5.5, weighed.PartBG);
        Assert.Equal(11.0, weighed.PartAG);
        Assert.Equal(4.1, weighed.PigmentG); // 0.25 · 16.5 = 4.125
        Assert.Equal(0, weighed.RatioErrorPercent, tolerance: 1e-12);
    }

    [Fact]
    public void What_the_step_does_to_ratio_and_loading_by_hand()
    {
        var weighed = new WeighedBatch(11, 5.5, 4.125, 0.1);
        // half a step on each part: 0.05/11 + 0.05/5.5
        Assert.Equal(1.3636, weighed.RatioDoubtPercent, tolerance: 0.0001);
        Assert.False(weighed.IsTooSmall);
        Assert.Equal(100 * 4.1 / 20.6, weighed.LoadingPercent, tolerance: 1e-12);
        Assert.Equal(100 * 4.05 / (4.05 + 16.6), weighed.LowLoadingPercent, tolerance: 1e-12);
        Assert.Equal(100 * 4.15 / (4.15 + 16.4), weighed.HighLoadingPercent, tolerance: 1e-12);
    }

    [Fact]
    public void A_part_lighter_than_the_step_is_still_one_step_and_told_as_too_small()
    {
        var weighed = new WeighedBatch(10.9, 5.5, 4.1, 50);
        Assert.Equal(50, weighed.PartBG);
        Assert.Equal(100, weighed.PartAG);
        Assert.True(weighed.IsTooSmall);
    }

    [Fact]
    public void The_smallest_safe_batch_of_2_to_1_on_a_tenth_of_a_gram_by_hand()
    {
        // In steps of B: 0.5/n + 1/(2n − 0.5) ≤ 0.02 first holds for n = 51 (0.00980 + 0.00985): 5.1 g of B, 15.3 g with A,
        // and a quarter more with 20 % of pigment.
        var weighed = new WeighedBatch(2, 1, 0.75, 0.1);
        Assert.True(weighed.IsTooSmall);
        Assert.Equal(15.3 * (1 + (0.8 / 3)), weighed.SmallestSafeMixG, tolerance: 1e-9); // 0.75 g shows as 0.8
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3.7)]
    [InlineData(10)]
    [InlineData(0.43)]
    [InlineData(1)]
    public void From_the_smallest_safe_batch_on_no_batch_is_too_small(double ratio)
    {
        double safeG = new WeighedBatch(ratio, 1, 0, 0.1).SmallestSafeMixG;
        bool smallerFails = false;
        for (double massG = 0.6 * safeG; massG < 3 * safeG; massG *= 1.0013)
        {
            double partBG = massG / (1 + ratio);
            var weighed = new WeighedBatch(ratio * partBG, partBG, 0, 0.1);
            Assert.False(massG >= safeG && weighed.IsTooSmall, $"{massG} g of {ratio} to 1");
            smallerFails |= weighed.IsTooSmall;
        }
        Assert.True(smallerFails);
    }

    [Fact]
    public void Scales_of_odd_steps_show_whole_steps()
    {
        var weighed = new WeighedBatch(30.3, 15.2, 0, 0.05);
        Assert.Equal(15.2, weighed.PartBG);
        Assert.Equal(30.3, weighed.PartAG);
        Assert.Equal(0, weighed.HighLoadingPercent);
        Assert.Equal(15, new WeighedBatch(30.3, 15.2, 0, 5).PartBG);
    }

    [Theory]
    [InlineData(0, 1, 0, 0.1)]
    [InlineData(1, double.NaN, 0, 0.1)]
    [InlineData(1, 1, -1, 0.1)]
    [InlineData(1, 1, 0, 0)]
    public void No_mass_and_no_step_are_refused(double a, double b, double pigment, double step) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new WeighedBatch(a, b, pigment, step));
}
