using GlowMix.Console.Texts;

namespace GlowMix.Console.Tests.Texts;

public sealed class WordsTests
{
    // Chromaticities of the CIE 1931 spectral locus at 470, 490, 520, 580 and 620 nm, to three decimals (CIE 018:2019);
    // and illuminant D65 and a magenta.
    [Theory]
    [InlineData(0.124, 0.058, "blue")]
    [InlineData(0.045, 0.295, "blue-green")]
    [InlineData(0.074, 0.834, "green")]
    [InlineData(0.512, 0.487, "yellow")]
    [InlineData(0.691, 0.308, "red")]
    [InlineData(0.3127, 0.329, "white")]
    [InlineData(0.35, 0.15, "purple")]
    public void A_hue_has_a_word(double x, double y, string word) => Assert.Equal(word, HueWord.Of(x, y));

    [Theory]
    [InlineData(1284.0, "1300")]
    [InlineData(99.6, "100")]
    [InlineData(9.96, "10")]
    [InlineData(5.04, "5")]
    [InlineData(0.0456, "0.046")]
    [InlineData(0.0004, "<0.001")]
    [InlineData(0.0, "0")]
    [InlineData(null, "none")]
    public void Two_digits_at_most(double? value, string text) => Assert.Equal(text, Digits.Two(value));

    [Theory]
    [InlineData(-7.123e-5, "-0.000071")]
    [InlineData(-5.6e-8, "0")]
    [InlineData(123456.0, "123500")]
    [InlineData(3.14159, "3.142")]
    public void Four_digits_are_never_written_with_an_exponent(double value, string text) =>
        Assert.Equal(text, Digits.Significant(value, 4));

    [Theory]
    [InlineData(0.0, "0 %")]
    [InlineData(0.3, "<1 %")]
    [InlineData(81.6, "82 %")]
    public void Percent_are_whole(double value, string text) => Assert.Equal(text, Digits.Percent(value));

    [Theory]
    [InlineData(-0.0004, "0.000")]
    [InlineData(0.0211, "+0.021")]
    [InlineData(-0.0012, "-0.001")]
    public void Duv_carries_its_sign(double value, string text) => Assert.Equal(text, Digits.Duv(value));

    [Theory]
    [InlineData(0.0, "0 min")]
    [InlineData(0.2, "under 1 min")]
    [InlineData(179.0, "180 min")]
    [InlineData(180.0, "3 h")]
    [InlineData(1440.0, "24 h")]
    [InlineData(2880.0, "2 days")]
    [InlineData(100_000.0, "69 days")]
    [InlineData(5_000_000.0, "9.5 years")]
    [InlineData(10_000_000.0, "over 19 years")]
    [InlineData(null, "none")]
    public void Times_have_the_unit_of_their_size(double? minutes, string text) =>
        Assert.Equal(text, Duration.Of(minutes));

    [Fact]
    public void A_long_word_is_left_whole()
    {
        using var writer = new StringWriter { NewLine = "\n" };
        string path = new('x', 60);
        new Sheet(writer, new TextStyle(40)).Row("File", $"{path} and more");
        Assert.Equal($"File       {path}\n           and more\n", writer.ToString());
    }

    [Fact]
    public void Emphasis_is_for_terminals_that_want_it()
    {
        var bare = Surroundings(null);
        Assert.False(bare.Emphasis);
        Assert.True(Surroundings(80).Emphasis);
        Assert.False(Surroundings(80, ("NO_COLOR", "1")).Emphasis);
        Assert.False(Surroundings(80, ("TERM", "dumb")).Emphasis);
    }

    [Theory]
    [InlineData("en_GB.UTF-8", false)]
    [InlineData("de_DE.utf8", false)]
    [InlineData("C", true)]
    [InlineData("", false)]
    public void The_locale_decides_on_the_letters(string lang, bool isAsciiOnly) =>
        Assert.Equal(isAsciiOnly, Surroundings(80, ("LANG", lang)).AsciiOnly);

    private static Surroundings Surroundings(int? columns, params (string Name, string Value)[] variables) =>
        new()
        {
            Out = TextWriter.Null,
            Error = TextWriter.Null,
            Folder = ".",
            TerminalColumns = columns,
            Variable = name => variables.FirstOrDefault(v => v.Name == name).Value,
        };
}
