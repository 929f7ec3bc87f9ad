using GlowMix.Documents;
using GlowMix.Recipes;

namespace GlowMix.Tests.Recipes;

public class SpectrumFileTests
{
    [Theory]
    [InlineData(",")]
    [InlineData(", ")]
    [InlineData(";")]
    [InlineData(" ; ")]
    [InlineData("\t")]
    [InlineData("   ")]
    public void Columns_are_found_by_any_of_the_usual_separators(string separator)
    {
        string text =
            $"wavelength{separator}power\n# comment\n400{separator}0.5   # first\n\n705.5{separator}1e-1\r\n";
        var spectrum = SpectrumFile.Read(text, "s.csv");
        Assert.Equal([400, 705.5], spectrum.Table!.WavelengthsNm);
        Assert.Equal([0.5, 0.1], spectrum.Table.Values);
        Assert.Equal([SpectrumTexts.Coarse(305.5)], spectrum.Problems.Select(p => p.Text));
    }

    [Theory]
    [InlineData("450\n455\n", "1: 1 column; needed: 2, a wavelength in nm and a value, such as '450, 0.82'")]
    [InlineData(
        "450, 1, 2\n",
        "1: 3 columns; needed: 2, a wavelength in nm and a value, such as '450, 0.82'"
    )]
    [InlineData(
        "450, 1\n440, 1\n445, 1\n",
        "2: wavelength 440 nm comes after 450 nm; sort the lines by rising wavelength"
    )]
    [InlineData("450, 1\n450, 2\n455, 1\n", "2: wavelength 450 nm stands twice; keep one of the lines")]
    [InlineData("450, 1\n455, x\n", "2: value is 'x'; needed: a number, 0 or more")]
    [InlineData("450, 1\nend, 1\n", "2: wavelength is 'end'; needed: a number, 200 to 2500")]
    [InlineData("450, 1\n455, nan\n", "2: value is 'nan'; needed: a finite number")]
    [InlineData("450, 1\n455, 1e999\n", "2: value is '1e999'; needed: a finite number")]
    [InlineData("450, 1\n455, -0.1\n", "2: value is -0.1; allowed: 0 or more")]
    [InlineData("450;1\n455;0,5\n", "2: value is '0,5'; write it with a point, such as 0.5")]
    [InlineData("450,5 0,02\n", "1: wavelength is '450,5'; write it with a point, such as 450.5")]
    [InlineData("0.45, 1\n", "1: wavelength is 0.45; allowed: 200 to 2500 nm")]
    public void A_wrong_line_is_told_with_its_number(string text, string problem)
    {
        var spectrum = SpectrumFile.Read(text, "s.csv");
        Assert.Null(spectrum.Table);
        Assert.Equal($"s.csv:{problem[..1]}:1{problem[1..]}", spectrum.Problems[0].ToString());
    }

    [Theory]
    [InlineData("", "0 lines with numbers; needed: 2 or more")]
    [InlineData("nothing\nhere\n", "0 lines with numbers; needed: 2 or more")]
    [InlineData("450 1\n", "1 line with numbers; needed: 2 or more")]
    [InlineData("400 0\n405 0\n", SpectrumTexts.AllZero)]
    public void Too_little_is_told_for_the_whole_file(string text, string problem) =>
        Assert.Equal([new Problem("s.csv", null, problem)], SpectrumFile.Read(text, "s.csv").Problems);

    [Fact]
    public void A_spectrum_that_misses_part_of_the_light_is_warned_about()
    {
        string text = string.Concat(Enumerable.Range(90, 41).Select(i => $"{5 * i} 1\n"));
        var spectrum = SpectrumFile.Read(text, "s.csv");
        Assert.Equal(
            [new Problem("s.csv", null, SpectrumTexts.CutOff(450, 650), Severity.Warning)],
            spectrum.Problems
        );
        Assert.Equal(41, spectrum.Table!.Count);
    }

    [Fact]
    public void The_same_mistake_on_every_line_is_not_told_a_thousand_times() =>
        Assert.Equal(
            20,
            SpectrumFile.Read(string.Concat(Enumerable.Repeat("450\n", 1000)), "s.csv").Problems.Length
        );

    [Fact]
    public void A_missing_file_is_a_problem_of_access() =>
        Assert.Equal(
            ProblemKind.FileAccess,
            Assert.Single(SpectrumFile.Read(DocumentFile.Read("no/such.csv")).Problems).Kind
        );
}
