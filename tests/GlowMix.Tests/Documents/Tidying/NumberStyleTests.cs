using GlowMix.Documents.Tidying;

namespace GlowMix.Tests.Documents.Tidying;

public class NumberStyleTests
{
    [Theory]
    [InlineData("5", "5")]
    [InlineData("+5", "5")]
    [InlineData("-05", "-5")]
    [InlineData(".5", "0.5")]
    [InlineData("-.50", "-0.50")]
    [InlineData("5.", "5")]
    [InlineData("000.020", "0.020")]
    [InlineData("6e1", "60")]
    [InlineData("2.50E1", "25.0")]
    [InlineData("12E-2", "0.12")]
    [InlineData("4.7E+17", "4.7e17")]
    [InlineData("1E10", "1e10")]
    [InlineData("1.0e-07", "1.0e-7")]
    [InlineData("3e0", "3")]
    [InlineData("0e5", "0")]
    [InlineData("0.1234567890123456789", "0.1234567890123456789")]
    [InlineData("1e999", "1e999")]
    [InlineData("3,5", "3,5")]
    [InlineData("NaN", "NaN")]
    [InlineData("abc", "abc")]
    [InlineData("", "")]
    public void A_number_has_one_style_and_its_last_zeros(string written, string tidy)
    {
        Assert.Equal(tidy, NumberStyle.Of(written));
        Assert.Equal(tidy, NumberStyle.Of(tidy));
    }
}
