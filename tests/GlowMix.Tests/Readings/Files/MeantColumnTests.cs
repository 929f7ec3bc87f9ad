using System.Globalization;
using GlowMix.Readings;

namespace GlowMix.Tests.Readings.Files;

/// <summary>Which columns are meant where no header says so.</summary>
public class MeantColumnTests
{
    // One row in the order of its fields: 0 index, 1 nm, 2 light, 3 µm.
    [Theory]
    [InlineData("{0}\t{1}\t{2}", 2, 3)]
    [InlineData("{0}\t{1:0.000}\t{2}", 2, 3)]
    [InlineData("{1}\t{2}\t{0}", 1, 2)]
    [InlineData("{1}\t{3}\t{2}", 1, 3)]
    [InlineData("{3}\t{1}\t{2}", 2, 3)]
    [InlineData("14.03.2026 14:03:{0:00}\t{1}\t{2}", 2, 3)]
    [InlineData("2026-03-14T14:03:{0:00}Z;{1};{2}", 2, 3)]
    [InlineData("row {0};{1};{2}", 2, 3)]
    public void They_are_found_by_how_they_run(string row, int along, int light)
    {
        string text = string.Concat(
            Enumerable
                .Range(17, 41)
                .Select(i =>
                    string.Format(
                        CultureInfo.InvariantCulture,
                        row + "\n",
                        i,
                        210 + (10 * i) - (0.01 * i * i),
                        1.5 + (i * 7 % 11),
                        (210 + (10 * i) - (0.01 * i * i)) / 1000
                    )
                )
        );
        SpectralReading reading = ReadText.Spectrum(text);
        Assert.Equal(along, reading.Findings.Along.Number);
        Assert.Equal(light, reading.Findings.Light.Number);
        Assert.DoesNotContain(reading.Warnings, w => w.Code == "column_guessed");
    }

    [Fact]
    public void S_and_D_are_sample_and_dark()
    {
        SpectralReading reading = ReadText.Spectrum("nm\tS\tD\n400\t5\t1\n500\t9\t1\n600\t7\t2\n");
        Assert.Equal([4, 8, 5], reading.Spectrum.Values.ToArray());
        Assert.Contains(reading.Warnings, w => w.Code == "dark_column");
    }

    [Fact]
    public void A_column_of_what_the_eye_sees_is_refused() =>
        Assert.Contains(
            "is weighted for the eye",
            ReadText.Problem("nm;lm/nm\n400;1\n500;2\n600;1\n"),
            StringComparison.Ordinal
        );

    [Fact]
    public void Wavenumbers_are_no_light() =>
        Assert.Equal(
            ReadingTexts.NoLight,
            ReadText.Problem("Wavenumber (cm-1);Wavelength (nm)\n25000;400\n20000;500\n16667;600\n")[5..]
        );

    [Theory]
    [InlineData("% Pixel\tnm\tpower")]
    [InlineData("# Nr\tnm\tpower")]
    [InlineData("#\tnm\tpower")]
    public void The_mark_of_a_remark_is_no_part_of_a_name(string header)
    {
        SpectralReading reading = ReadText.Spectrum(header + "\n7\t400\t1\n9\t500\t3\n12\t600\t2\n");
        Assert.Equal("power", reading.Findings.Light.Name);
        Assert.Equal("nm", reading.Findings.Along.Name);
        Assert.DoesNotContain(reading.Warnings, w => w.Code == "column_guessed");
    }

    [Fact]
    public void Of_two_columns_without_names_the_even_one_is_not_taken_and_told()
    {
        SpectralReading reading = ReadText.Spectrum("400;10;15\n500;11;90\n600;10;70\n");
        Assert.Equal(3, reading.Findings.Light.Number);
        Assert.Contains(reading.Warnings, w => w.Code == "column_guessed");
    }

    [Theory]
    [InlineData("nm;counts;irradiance", 3)]
    [InlineData("nm;Signal (counts);E (mW/m²/nm)", 3)]
    [InlineData("nm;calibration;counts;irradiance", 4)]
    [InlineData("nm;sample;dark;E (mW/m²/nm)", 4)]
    [InlineData("nm;sample;dark;Bestrahlungsstärke", 4)]
    [InlineData("nm;1 (W/m²/nm);2 (W/m²/nm);mean", 4)]
    [InlineData("č.;Vlnová délka;Hodnota", 3)]
    [InlineData("# 1 wavelength (nm)\n# 2 dark\n# 3 reference\n# 4 irradiance", 4)]
    public void Power_is_taken_before_counts_and_a_mean_before_both(string header, int light)
    {
        int columns = header.Contains('\n', StringComparison.Ordinal) ? 4 : header.Split(';').Length;
        int index = header.StartsWith('č') ? 1 : 0;
        string rows = string.Concat(
            Enumerable
                .Range(0, 30)
                .Select(i =>
                    string.Join(
                        ';',
                        Enumerable
                            .Range(0, columns)
                            .Select(c =>
                                c == index ? 400 + (10 * i)
                                : c < index ? i
                                : 1 + (i * c % 7)
                            )
                    ) + "\n"
                )
        );
        SpectralReading reading = ReadText.Spectrum(header + "\n" + rows);
        Assert.Equal(light, reading.Findings.Light.Number);
        Assert.Null(reading.Findings.Dark);
    }

    [Fact]
    public void Each_row_thrice_is_one_spectrum() =>
        Assert.Equal(
            4,
            ReadText
                .Spectrum(
                    "400;1\n400;1\n400;1\n450;3\n450;3\n450;3\n500;2\n500;2\n500;2\n550;1\n550;1\n550;1\n"
                )
                .Spectrum.Count
        );

    [Fact]
    public void Two_lines_that_changed_places_are_sorted_and_told()
    {
        SpectralReading reading = ReadText.Spectrum(
            "400;1\n410;2\n430;4\n420;3\n440;5\n450;6\n460;5\n470;4\n480;3\n"
        );
        Assert.Equal([1, 2, 3, 4, 5, 6, 5, 4, 3], reading.Spectrum.Values.ToArray());
        Assert.Contains(reading.Warnings, w => w.Code == "rows_sorted");
    }

    [Fact]
    public void A_running_number_may_miss_a_row()
    {
        string text = string.Concat(
            Enumerable
                .Range(0, 60)
                .Where(i => i != 22)
                .Select(i => $"{i}\t{400 + (5 * i)}\t{1 + (i * 7 % 11)}\n")
        );
        Assert.Equal(3, ReadText.Spectrum(text).Findings.Light.Number);
    }

    [Fact]
    public void Columns_named_by_numbers_are_a_guess_that_is_told() =>
        Assert.Contains(
            "column 3 '10 s'",
            ReadText
                .Spectrum("nm;0 s;10 s\n400;5;4\n500;7;3\n600;6;2\n")
                .Warnings.Single(w => w.Code == "column_guessed")
                .Text,
            StringComparison.Ordinal
        );
}
