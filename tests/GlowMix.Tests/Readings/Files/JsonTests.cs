using GlowMix.Documents;
using GlowMix.Readings;

namespace GlowMix.Tests.Readings.Files;

public class JsonTests
{
    [Theory]
    [InlineData("[[400,1],[500,3],[600,2]]")]
    [InlineData("""{"lamp":"desk","wavelength":[400,500,600],"value":[1,3,2]}""")]
    [InlineData("""{"spectrum":{"wavelengths_um":[0.4,0.5,0.6],"power":[1,3,2]},"date":"2026-01-01"}""")]
    [InlineData("""[{"nm":400,"power":1},{"nm":500,"power":3},{"nm":600,"power":2}]""")]
    [InlineData(
        """{"data":[{"nm":400,"raw":4,"dark":3},{"nm":500,"raw":6,"dark":3},{"nm":600,"raw":5,"dark":3}]}"""
    )]
    [InlineData("""{"400":1,"500":3,"600":2}""")]
    [InlineData("{\"nm\":400,\"E\":1}\n{\"nm\":500,\"E\":3}\n{\"nm\":600,\"E\":2}\n")]
    [InlineData("""[[400,500,600],[1,3,2]]""")]
    public void A_spectrum_is_read(string text)
    {
        SpectralReading reading = ReadText.Spectrum(text);
        Assert.Equal([400, 500, 600], reading.Spectrum.WavelengthsNm.ToArray());
        Assert.Equal([1, 3, 2], reading.Spectrum.Values.ToArray());
        Assert.Equal("JSON", reading.Findings.Delimiter);
    }

    [Fact]
    public void A_decay_and_units_beside_the_arrays_are_read()
    {
        DecayReading decay = ReadText.Decay(
            """{"time_min":[1,2,10],"luminance":[150,82,18],"unit":"mcd/m2"}"""
        );
        Assert.Equal([1, 2, 10], decay.Minutes.ToArray());
        Assert.Equal(DecayUnit.McdPerM2, decay.Unit);
    }

    [Theory]
    [InlineData("""{"a":1,"b":"two"}""")]
    [InlineData("""{"wavelength":[400,500,600],"value":[1,3]}""")]
    [InlineData("""{"bare":[[400,1],[500,3]],"potted":[[400,2],[500,2]]}""")]
    public void What_holds_no_single_table_is_refused(string text) =>
        Assert.Equal(ReadingTexts.JsonWithoutTable, ReadText.Problem(text));

    [Theory]
    [InlineData("{\"wavelength\":[400,500,600],\n\"value\":[1,", 2)]
    [InlineData("{\"wavelength\":[400,500,600,700],\n\"power\":[1,2,3,1}", 2)]
    [InlineData("[[400,1],\n[500,3],\n[600,?]]", 3)]
    public void What_breaks_off_is_told_as_such_with_its_line(string text, int line)
    {
        Problem problem = Assert.Single(ReadText.Outcome(text).Problems);
        Assert.Equal(ReadingTexts.JsonWithFault, problem.Text);
        Assert.Equal(line, problem.Place?.Line);
    }

    [Theory]
    [InlineData("""{"nm":[300,400,500,600,900],"E":[NaN,1,3,2,-Infinity]}""")]
    [InlineData("{\"nm\":300,\"E\":NaN}\n{\"nm\":400,\"E\":1}\n{\"nm\":500,\"E\":3}\n{\"nm\":600,\"E\":2}\n")]
    public void What_is_no_number_beyond_the_visible_is_left_out(string text) =>
        Assert.Equal([400, 500, 600], ReadText.Spectrum(text).Spectrum.WavelengthsNm.ToArray());

    [Fact]
    public void A_value_that_is_none_is_refused_with_its_row() =>
        Assert.StartsWith(
            "row 2: column 2 'E' has 'null'",
            ReadText.Problem("""{"nm":[400,500,600,700],"E":[1,null,3,4]}"""),
            StringComparison.Ordinal
        );
}
