using GlowMix.Markings;
using GlowMix.Predictions;

namespace GlowMix.Tests.Markings;

public class LimitComparisonTests
{
    [Theory]
    [InlineData(20, 20, 30, 40, MarkingState.Above)] // at the limit is enough: limits are least values
    [InlineData(20, 19.9, 30, 40, MarkingState.TooClose)]
    [InlineData(20, 10, 15, 20, MarkingState.TooClose)]
    [InlineData(20, 10, 15, 19.9, MarkingState.Below)]
    public void Above_only_when_the_whole_band_is(
        double least,
        double low,
        double likely,
        double high,
        MarkingState state
    ) => Assert.Equal(state, new LimitComparison(10, least, new Band(low, likely, high)).State);

    [Fact]
    public void Without_a_limit_or_a_luminance_nothing_is_judged()
    {
        Assert.Equal(MarkingState.NotJudged, new LimitComparison(10, null, new Band(1, 2, 3)).State);
        Assert.Equal(MarkingState.NotJudged, new LimitComparison(10, 5, null).State);
        Assert.Null(new LimitComparison(10, 5, null).LowShareOfLimit);
    }
}
