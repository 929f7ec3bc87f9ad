using GlowMix.Documents;

namespace GlowMix.Tests.Documents;

public class SourceTextTests
{
    [Fact]
    public void Edits_are_made_in_any_order_and_the_rest_stays() =>
        Assert.Equal(
            "a: 12 # one\nb: 3\n",
            SourceText.Apply(
                "a: 1 # one\nb: 2\n",
                new TextEdit(new(14, 15), "3"),
                new TextEdit(new(4, 4), "2")
            )
        );

    [Fact]
    public void Edits_that_overlap_are_refused() =>
        Assert.Throws<ArgumentException>(() =>
            SourceText.Apply("abcd", new TextEdit(new(0, 2), "x"), new TextEdit(new(1, 3), "y"))
        );

    [Theory]
    [InlineData("a: 1", "\n")]
    [InlineData("a: 1\nb: 2\r\n", "\n")]
    [InlineData("a: 1\r\nb: 2\n", "\r\n")]
    public void The_line_end_is_that_of_the_first_line(string text, string lineEnd) =>
        Assert.Equal(lineEnd, SourceText.LineEndOf(text));
}
