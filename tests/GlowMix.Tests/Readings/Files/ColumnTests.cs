using GlowMix.Readings;

namespace GlowMix.Tests.Readings.Files;

/// <summary>Which column is taken as what, and that a guess is told.</summary>
public class ColumnTests
{
    [Theory]
    [InlineData("Pixel;Wellenlänge;Roh;Dunkel;Netto\n", 5, null)]
    [InlineData("Index;lambda (nm);raw;dark\n", 3, 4)]
    [InlineData("no;nm;sample;background;\n", 3, 4)]
    [InlineData("", 5, null)]
    [InlineData("wavelength [nm];uncertainty;W/m²/nm\n", 3, null)]
    [InlineData("nm;scope (cts);scope-dark\n", 3, null)]
    [InlineData("Longueur d'onde;Écart (std);Éclairement énergétique\n", 3, null)]
    public void The_light_is_found_among_other_columns(string header, int light, int? dark)
    {
        int columns = header.Length == 0 ? 5 : header.TrimEnd('\n').TrimEnd(';').Split(';').Length;
        bool hasIndex = columns > 3 || header.Length == 0;
        string rows = string.Concat(
            Enumerable
                .Range(0, 40)
                .Select(i =>
                {
                    double raw = 120 + (50 * Math.Sin(i * 0.7));
                    double darkness = 10 + (i % 3);
                    string[] cells =
                    [
                        .. hasIndex ? [$"{i}"] : Array.Empty<string>(),
                        $"{380 + (10 * i)}",
                        columns == 3 ? "0.5" : FormattableString.Invariant($"{raw:0.0}"),
                        columns == 3 ? FormattableString.Invariant($"{raw:0.0}") : $"{darkness}",
                        .. columns == 5
                            ? [FormattableString.Invariant($"{Math.Round(raw, 1) - darkness:0.0}")]
                            : Array.Empty<string>(),
                    ];
                    return string.Join(';', cells) + "\n";
                })
        );
        SpectralReading reading = ReadText.Spectrum(header + rows);
        Assert.Equal(light, reading.Findings.Light.Number);
        Assert.Equal(dark, reading.Findings.Dark?.Number);
        Assert.Equal(hasIndex ? 2 : 1, reading.Findings.Along.Number);
        Assert.Equal(dark is not null, reading.Warnings.Any(w => w.Code == "dark_column"));
    }

    [Fact]
    public void Two_columns_of_light_are_a_guess_that_is_told()
    {
        SpectralReading reading = ReadText.Spectrum(
            "nm,led a,led b\n400,0.1,0.2\n500,0.3,0.9\n600,0.5,0.7\n"
        );
        Assert.Equal(2, reading.Findings.Light.Number);
        Assert.Contains(
            reading.Warnings,
            w => w.Code == "column_guessed" && w.Text.Contains("'led b'", StringComparison.Ordinal)
        );
        SpectralReading other = ReadText.Spectrum(
            "nm,led a,led b\n400,0.1,0.2\n500,0.3,0.9\n600,0.5,0.7\n",
            new() { LightColumn = "led b" }
        );
        Assert.Equal([0.2, 0.9, 0.7], other.Spectrum.Values.ToArray());
        Assert.DoesNotContain(other.Warnings, w => w.Code == "column_guessed");
    }

    [Theory]
    [InlineData("nm;counts", SpectralUnit.Counts, 1)]
    [InlineData("nm;W/m²/nm", SpectralUnit.WPerM2Nm, 1)]
    [InlineData("Wavelength (nm);Spectral irradiance [W m^-2 nm^-1]", SpectralUnit.WPerM2Nm, 1)]
    [InlineData("nm;µW/cm²/nm", SpectralUnit.WPerM2Nm, 0.01)]
    [InlineData("nm;uW/cm^2/nm", SpectralUnit.WPerM2Nm, 0.01)]
    [InlineData("nm;Irradiance (μW·cm⁻²·nm⁻¹)", SpectralUnit.WPerM2Nm, 0.01)]
    [InlineData("nm;mW/m2/nm", SpectralUnit.WPerM2Nm, 0.001)]
    [InlineData("nm;relative", SpectralUnit.Relative, 1)]
    [InlineData("Units: µW/cm²/nm\nnm;value", SpectralUnit.WPerM2Nm, 0.01)]
    [InlineData("nm;value", SpectralUnit.Relative, 1)]
    public void Units_of_light_are_found(string header, SpectralUnit unit, double factor)
    {
        SpectralReading reading = ReadText.Spectrum(header + "\n400;1\n500;20\n600;3\n700;4\n");
        Assert.Equal(unit, reading.Unit);
        Assert.Equal(20 * factor, reading.Spectrum.Values[1], 1e-12);
        Assert.Equal([400, 500, 600, 700], reading.Spectrum.WavelengthsNm.ToArray());
    }

    [Fact]
    public void Large_whole_numbers_without_a_unit_are_taken_as_counts_and_told()
    {
        SpectralReading reading = ReadText.Spectrum("400;1000\n500;20311\n600;3000\n");
        Assert.Equal(SpectralUnit.Counts, reading.Unit);
        Assert.False(reading.IsColourTrustworthy);
        Assert.Contains(reading.Warnings, w => w.Code == "unit_guessed");
        Assert.True(
            ReadText
                .Spectrum("400;1000\n500;20311\n600;3000\n", new() { IsCorrected = true })
                .IsColourTrustworthy
        );
    }

    [Fact]
    public void Thousands_set_apart_are_told()
    {
        SpectralReading reading = ReadText.Spectrum("400;987\n450;1,002\n500;12,345\n550;980\n600;15\n");
        Assert.Equal([987, 1002, 12345, 980, 15], reading.Spectrum.Values.ToArray());
        Assert.Contains(reading.Warnings, w => w.Code == "thousands_guessed");
    }

    [Fact]
    public void Commas_in_two_roles_are_found_and_told()
    {
        SpectralReading reading = ReadText.Spectrum("450,0,0,05\n450,5,0,12\n451,0,1,3\n451,5,0,9\n");
        Assert.Equal([450, 450.5, 451, 451.5], reading.Spectrum.WavelengthsNm.ToArray());
        Assert.Equal([0.05, 0.12, 1.3, 0.9], reading.Spectrum.Values.ToArray());
        Assert.Contains(reading.Warnings, w => w.Code == "commas_guessed");
        reading = ReadText.Spectrum("450,0,05\n451,0,12\n452,1,3\n453,0,9\n");
        Assert.Equal([450, 451, 452, 453], reading.Spectrum.WavelengthsNm.ToArray());
        Assert.Equal([0.05, 0.12, 1.3, 0.9], reading.Spectrum.Values.ToArray());
    }

    [Fact]
    public void A_header_that_says_nm_over_micrometres_is_overruled_and_told()
    {
        SpectralReading reading = ReadText.Spectrum("nm;power\n0.4;1\n0.5;2\n0.6;1\n");
        Assert.Equal([400, 500, 600], reading.Spectrum.WavelengthsNm.ToArray());
        Assert.Contains(reading.Warnings, w => w.Code == "wavelength_unit_guessed");
    }

    [Fact]
    public void Photons_become_power()
    {
        SpectralReading reading = ReadText.Spectrum("nm;µmol/m²/s/nm\n400;1\n500;1\n600;1\n");
        Assert.Equal(600.0 / 400, reading.Spectrum.Values[0] / reading.Spectrum.Values[2], 1e-12);
    }

    [Theory]
    [InlineData("450: 1\n500: 3\n550: 2\n", "tabs")]
    [InlineData("450 = 1\n500 = 3\n550 = 2\n", "blanks")]
    [InlineData("450 nm\t1\n500 nm\t3\n550 nm\t2\n", "tabs")]
    [InlineData("| nm | power |\n| --- | --- |\n| 450 | 1 |\n| 500 | 3 |\n| 550 | 2 |\n", "bars")]
    [InlineData("sep=;\n450;1\n500;3\n550;2\n", "semicolons")]
    [InlineData("450 1 # lamp on\n500 3\n550 2 // end\n", "blanks")]
    [InlineData("nm\tcounts\n450\t1\n500\t3\n550\t2\n\0\0\0\0", "tabs")]
    [InlineData("no;450;500;550\nA;1;3;2\n", null)]
    public void What_people_write_is_understood(string text, string? delimiter)
    {
        if (delimiter is null)
        {
            // Three columns across are no table across; the first column is no wavelength.
            Assert.NotEmpty(ReadText.Problem(text));
            return;
        }
        SpectralReading reading = ReadText.Spectrum(text);
        Assert.Equal([450, 500, 550], reading.Spectrum.WavelengthsNm.ToArray());
        Assert.Equal([1, 3, 2], reading.Spectrum.Values.ToArray());
        Assert.Equal(delimiter, reading.Findings.Delimiter);
    }

    [Fact]
    public void Thousands_set_apart_by_blanks_between_tabs_lose_no_row()
    {
        SpectralReading reading = ReadText.Spectrum(
            "nm\tcounts\n450\t987\n500\t12 345\n550\t1 002\n600\t20\n"
        );
        Assert.Equal([987, 12345, 1002, 20], reading.Spectrum.Values.ToArray());
    }

    [Fact]
    public void Letters_of_another_alphabet_are_no_unit()
    {
        // A Cyrillic header of a code page, decoded as Latin-1: the bytes of 'Длина волны' hold that of å.
        byte[] header =
        [
            0xC4,
            0xEB,
            0xE8,
            0xED,
            0xE0,
            0x20,
            0xE5,
            0xE8,
            0xED,
            (byte)'\t',
            0xC8,
            0xE5,
            (byte)'\n',
        ];
        SpectralReading reading = ReadText.Spectrum([.. header, .. "450\t1\n500\t3\n550\t2\n"u8]);
        Assert.Equal([450, 500, 550], reading.Spectrum.WavelengthsNm.ToArray());
        Assert.Equal("Latin-1", reading.Findings.Encoding);
    }

    [Fact]
    public void Lines_of_numbers_that_are_no_rows_are_told()
    {
        SpectralReading reading = ReadText.Spectrum("12;25;37\n4;5;6\nnm;W/m2/nm\n450;1\n500;3\n550;2\n");
        Assert.Equal(3, reading.Spectrum.Count);
        Assert.Contains(
            reading.Warnings,
            w => w.Code == "rows_left_out" && w.Text.StartsWith("2 lines", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData("nm;y_bar;lamp", 3)]
    [InlineData("nm;V(λ);S(λ)", 3)]
    [InlineData("nm;log10(E);E", 3)]
    [InlineData("nm;foo;W/m2/nm", 3)]
    [InlineData("λ/nm;S;B", 2)]
    [InlineData("Wellenlänge;1;2;Mittelwert;Stabw", 4)]
    [InlineData("nm;run 1;run 2;average;sd", 4)]
    [InlineData("longueur d'onde;mesure 1;mesure 2;moyenne;écart-type", 4)]
    public void What_is_no_light_is_set_aside_and_a_mean_taken(string header, int light)
    {
        int columns = header.Split(';').Length;
        SpectralReading reading = ReadText.Spectrum(
            header
                + "\n"
                + string.Concat(
                    Enumerable
                        .Range(0, 40)
                        .Select(i =>
                            $"{380 + (10 * i)};{string.Join(';', Enumerable.Range(1, columns - 1).Select(k => 1 + (i * k % 7)))}\n"
                        )
                )
        );
        Assert.Equal(light, reading.Findings.Light.Number);
        Assert.DoesNotContain(reading.Warnings, w => w.Code == "column_guessed");
    }

    [Fact]
    public void A_logarithm_alone_is_refused() =>
        Assert.Contains(
            "is a logarithm",
            ReadText.Problem("nm;log10(E)\n400;1\n500;2\n600;1\n"),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("nm;counts\n400;987\n450;1.002\n500;12.345\n550;980\n600;15\n")]
    [InlineData("nm;counts\n400;987\n450;1,002\n500;12,345\n550;980\n600;15\n")]
    [InlineData("setting\t7\nnm\tcounts\n400\t987\n450\t1.002\n500\t12.345\n550\t980\n600\t15\n")]
    public void Either_mark_may_set_thousands_apart(string text)
    {
        SpectralReading reading = ReadText.Spectrum(text);
        Assert.Equal([987, 1002, 12345, 980, 15], reading.Spectrum.Values.ToArray());
        Assert.Contains(reading.Warnings, w => w.Code == "thousands_guessed");
    }

    [Fact]
    public void A_setting_does_not_make_thousands_of_decimals() =>
        Assert.Equal(
            [400, 450, 500],
            ReadText
                .Spectrum("Stop  10\npixel  nm  sample\n1  400,000  5\n2  450,000  7\n3  500,000  6\n")
                .Spectrum.WavelengthsNm.ToArray()
        );
}
