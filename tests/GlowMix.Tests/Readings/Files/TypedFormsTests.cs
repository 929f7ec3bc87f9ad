using System.Globalization;
using GlowMix.Readings;
using GlowMix.Readings.Files;

namespace GlowMix.Tests.Readings.Files;

/// <summary>What people type round and into numbers.</summary>
public class TypedFormsTests
{
    [Theory]
    [InlineData("{0}\t{1}×10^-3")]
    [InlineData("{0};{1}x10^-3")]
    [InlineData("{0};{1} x 10^-3")]
    [InlineData("{0}\t{1}·10⁻³")]
    [InlineData("{0} {1}*10**-3")]
    [InlineData("{0},{1}*^-3")]
    [InlineData("│ {0} │ {1} │")]
    [InlineData("'{0}','{1}'")]
    [InlineData("“{0}”;“{1}”")]
    [InlineData("«{0}» «{1}»")]
    [InlineData("{{{0}; {1}}}")]
    [InlineData("  {0}, {1};")]
    [InlineData("wavelength: {0}, power: {1}")]
    [InlineData("wavelength={0} power={1}")]
    [InlineData("λ = {0} nm; E = {1} mW/m2/nm")]
    [InlineData("no: 7, dark: 0, nm: {0}, net: {1}")]
    [InlineData("{0} nm  {1}")]
    [InlineData("{0} nm = {1}")]
    [InlineData("- {0} nm: {1}")]
    [InlineData("{0}:{1}")]
    [InlineData("p7={0},{1}")]
    [InlineData("  - [{0}, {1}]")]
    public void Rows_are_read(string row)
    {
        string text = string.Concat(
            Enumerable
                .Range(0, 12)
                .Select(i =>
                    string.Format(CultureInfo.InvariantCulture, row, 400 + (20 * i), 1.25 + (i % 4)) + "\n"
                )
        );
        SpectralReading reading = ReadText.Spectrum(text);
        Assert.Equal(12, reading.Spectrum.Count);
        Assert.Equal(420, reading.Spectrum.WavelengthsNm[1]);
        Assert.Equal(2.25 / 1.25, reading.Spectrum.Values[1] / reading.Spectrum.Values[0], 1e-12);
        Assert.Equal(4.25 / 1.25, reading.Spectrum.Values[3] / reading.Spectrum.Values[0], 1e-12);
    }

    [Theory]
    [InlineData("1'234.5", 1234.5)]
    [InlineData("1’234.5", 1234.5)]
    [InlineData("12'345", 12345)]
    public void Thousands_may_stand_behind_an_apostrophe(string cell, double number) =>
        Assert.Equal(number, ReadText.Spectrum($"nm;counts\n400;1\n500;{cell}\n600;20\n").Spectrum.Values[1]);

    [Fact]
    public void A_factor_of_digits_alone_is_no_power() =>
        Assert.Equal("picture 3x1024 and 4×105", TypedForms.Plain("picture 3x1024 and 4×105"));

    [Fact]
    public void Places_stay_those_of_the_file() =>
        Assert.Equal(
            "3:23: column 2 'power' has 'dim'; needed: a number. Correct the line, or leave such lines out with --lenient",
            ReadText.Problem(
                "wavelength;power\n400;1.5×10^2\n500 ;                 dim\n600;1.5×10^2\n700;1.2×10^2\n"
            )
        );

    [Fact]
    public void Names_in_the_rows_name_the_columns()
    {
        SpectralReading reading = ReadText.Spectrum(
            "nm: 400, dark: 1, counts: 5\nnm: 500, dark: 1, counts: 9\nnm: 600, dark: 2, counts: 7\n"
        );
        Assert.Equal("counts", reading.Findings.Light.Name);
        Assert.Equal([4, 8, 5], reading.Spectrum.Values.ToArray());
        Assert.Equal(SpectralUnit.Counts, reading.Unit);
    }

    [Fact]
    public void Settings_above_the_names_are_no_rows()
    {
        SpectralReading reading = ReadText.Spectrum(
            "Start\t380\nStop\t780\n100\t10\n380\t0\nWavelength\tE\n380\t1\n480\t3\n580\t4\n680\t2\n780\t1\n"
        );
        Assert.Equal([1, 3, 4, 2, 1], reading.Spectrum.Values.ToArray());
        Assert.Contains(reading.Warnings, w => w.Code == "rows_left_out");
    }

    [Theory]
    [InlineData("id,cct,400,450,500,550,600,650,700\nlamp1,2856,1,3,4,5,4,3,2\n")]
    [InlineData("sample;date;400nm;450nm;500nm;550nm;600nm;650nm;700nm\nstair;2026-03-01;1;3;4;5;4;3;2\n")]
    [InlineData(",,400,450,500,550,600,650,700\nlamp1,2856,1,3,4,5,4,3,2\n")]
    public void Words_and_figures_may_stand_before_a_table_written_across(string text)
    {
        SpectralReading reading = ReadText.Spectrum(text);
        Assert.Equal([400, 450, 500, 550, 600, 650, 700], reading.Spectrum.WavelengthsNm.ToArray());
        Assert.Equal([1, 3, 4, 5, 4, 3, 2], reading.Spectrum.Values.ToArray());
    }

    [Fact]
    public void Units_that_differ_are_refused() =>
        Assert.Equal(
            "2:1: column 2 'power' has numbers with different units, or some with a unit and some without; write all of them in one",
            ReadText.Problem("nm;power\n400;1 mW\n500;20 cd/m2\n600;3 mW\n")
        );

    [Fact]
    public void Thousands_may_stand_behind_a_blank_where_blanks_separate() =>
        Assert.Equal(
            [987, 12345, 1234567, 20],
            ReadText
                .Spectrum("400   987\n450   12 345\n500   1 234 567\n520   2 000\n550   20\n")
                .Spectrum.Values.ToArray()
                .Where(v => v != 2000)
        );
}
