using GlowMix.Predictions;

namespace GlowMix.Tests.Predictions;

public class WarningTests
{
    [Theory]
    [InlineData("flux is assumed; no table", "flux is assumed")]
    [InlineData("settling not included: grains are spread; evenly", "settling not included")]
    [InlineData("a ratio of 2:1 is meant", "a ratio of 2:1 is meant")]
    [InlineData("ends with a colon:", "ends with a colon:")]
    public void The_beginning_of_a_warning_is_its_reminder(string text, string brief) =>
        Assert.Equal(brief, new Warning("code", null, text).Brief);
}
