using GlowMix.Materials;

namespace GlowMix.Tests.Materials;

public class SourceNoteTests
{
    [Theory]
    [InlineData("assumed", SourceMark.Assumed)]
    [InlineData("assumed; 0.75 to 0.95", SourceMark.Assumed)]
    [InlineData("Assumed: 0.75 to 0.95", SourceMark.Assumed)]
    [InlineData("from memory", SourceMark.FromMemory)]
    [InlineData("common practice, no source; ten minutes", SourceMark.CommonPractice)]
    [InlineData("computed; from the unit cell", SourceMark.Computed)]
    [InlineData("secondary source; a trade page", SourceMark.Secondary)]
    [InlineData("own reading", SourceMark.Users)]
    [InlineData("label; of the reel", SourceMark.Users)]
    [InlineData("Chernov et al., Radiat. Meas. 42 (2007) 668 (abstract)", SourceMark.Published)]
    [InlineData("Labelle 1998", SourceMark.Published)]
    public void A_source_carries_its_mark_in_its_first_words(string text, SourceMark mark) =>
        Assert.Equal(new SourceNote(mark, text), SourceNote.Read(text));

    [Theory]
    [InlineData("")]
    [InlineData("?")]
    [InlineData("12")]
    [InlineData("unknown")]
    [InlineData("TODO")]
    [InlineData("assumed by me")]
    [InlineData("assumed;")]
    [InlineData("computed")]
    [InlineData("secondary source")]
    public void A_source_that_names_nothing_is_none(string text) => Assert.Null(SourceNote.Read(text));
}
