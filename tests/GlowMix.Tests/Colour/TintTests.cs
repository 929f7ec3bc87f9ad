using GlowMix.Colour;

namespace GlowMix.Tests.Colour;

public class TintTests
{
    [Theory]
    [InlineData(0, "no tint to see")]
    [InlineData(-0.0039, "no tint to see")]
    [InlineData(0.004, "a trace greenish")]
    [InlineData(-0.006, "a trace pinkish")]
    [InlineData(0.0061, "slightly greenish")]
    [InlineData(-0.015, "slightly pinkish")]
    [InlineData(0.03, "clearly greenish")]
    [InlineData(0.031, "more green than white")]
    [InlineData(-0.031, "more pink than white")]
    public void Duv_in_words(double duv, string words) => Assert.Equal(words, Tint.InWords(duv));
}
