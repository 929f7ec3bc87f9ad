using GlowMix.Readings;
using GlowMix.Readings.Files;

namespace GlowMix.Tests.Readings.Files;

/// <summary>What cannot be read is told with its place and what to do; what is guessed is told too.</summary>
public class BadReadingTests
{
    [Theory]
    [InlineData("", ReadingTexts.Empty)]
    [InlineData(" \n\n \t\n", ReadingTexts.Empty)]
    [InlineData("wavelength;counts\n", ReadingTexts.NoNumbers)]
    [InlineData("a few words\nand more of them\n", ReadingTexts.NoNumbers)]
    [InlineData("nm;counts\n450;12\n", "2:1: 1 row of numbers; needed: 2 or more")]
    [InlineData(
        "400;1\n450;2\n45O;3\n550;4\n",
        "3:1: column 1 has '45O'; needed: a number. Correct the line, or leave such lines out with --lenient"
    )]
    [InlineData(
        "nm;power\n400;1\n450;x\n500;3\n550;4\n",
        "3:5: column 2 'power' has 'x'; needed: a number. Correct the line, or leave such lines out with --lenient"
    )]
    [InlineData(
        "nm;power\n400;1\n450;NaN\n500;3\n550;4\n",
        "3:5: column 2 'power' has 'NaN'; needed: a number. Correct the line, or leave such lines out with --lenient"
    )]
    [InlineData(
        "400;1\n450\n500;3\n550;4\n",
        "2:1: a row of 1 column among rows of 2; complete it, put # before a remark, or leave such lines out with --lenient"
    )]
    [InlineData("400;0\n450;0\n500;0\n", ReadingTexts.AllZero)]
    [InlineData(
        "400;0.1\n450;-5\n500;0.2\n550;0.3\n",
        "2:1: the strongest value is negative, -5 at 450 nm: more was taken off than was there; check the dark reading"
    )]
    [InlineData(
        "400;1\n450;2\n450;3\n500;3\n550;4\n",
        "3:1: 450 nm has 3, and 2 on line 2; keep one of them, take lines with --lines, or average with --lenient"
    )]
    [InlineData(
        "400;65535\n450;65535\n500;65535\n550;65535\n",
        "1:1: every value is at the top, 65535: saturated; read again with a shorter exposure"
    )]
    [InlineData(
        "4000;0.1\n5000;0.2\n6000;0.3\n7000;0.2\n",
        "1:1: column 1 runs from 4000 to 7000, which is no visible light in nm; if they are Å, say --wavelength-unit angstrom"
    )]
    [InlineData(
        "Wellenzahl (1/cm);E\n14000;0.1\n18000;0.2\n22000;0.3\n26000;0.2\n",
        "2:1: column 1 'Wellenzahl (1/cm)' seems to count wavenumbers per cm, and values over them are no values per nm; export the spectrum over wavelengths in nm, or say --wavelength-unit nm if it is one"
    )]
    [InlineData(
        "380;381;0.1\n381;382;0.2\n382;383;0.3\n410;411;0.1\n",
        "1:1: column 1 and column 2 could all be wavelengths; say which with --wavelength-column"
    )]
    [InlineData(
        "800;0.1\n850;0.2\n900;0.3\n950;0.2\n",
        "1:1: column 1 runs from 800 to 950, which is no visible light in nm; say --wavelength-unit nm, um, angstrom or m, or name another column with --wavelength-column"
    )]
    [InlineData(
        "format: 1\nresin: epoxy\n",
        "begins with the key 'format': a file for 'glowmix predict' or 'check', not a reading"
    )]
    [InlineData(
        "time (min);mcd/m2\n1;10\n2;20\n5;40\n10;80\n",
        "5:4: the glow grows: 80 after 10 min in the dark, 10 at first; check the order of the columns and when the light went off (--dark-from)"
    )]
    [InlineData(
        "nm;power\n400;1\n450;2\n500;3\n550;<1\n600;<1\n",
        "5:5: column 2 'power' has '<1'; needed: a number. Correct the line, or leave such lines out with --lenient"
    )]
    [InlineData(
        "400.00   99.12345\n450.00   99.22345\n500.00   99.32345\n550.00100.42345\n600.00100.42345\n650.00100.42345\n660.00100.42345\n670.00100.42345\n",
        "4:1: a row of 1 column among rows of 2; complete it, put # before a remark, or leave such lines out with --lenient"
    )]
    [InlineData(
        "nm;E\n400;1\n450;2\n500;3\n550;2\n600;2\n\nnm;E;dark\n400;2;0\n450;3;0\n500;4;0\n550;3;0\n600;1;0\n650;1;0\n",
        "2:1: from line 2 on there are rows with another number of columns than on lines 9 to 14; take one of the tables, such as --lines 9-14"
    )]
    [InlineData(
        "min;mcd/m2\n1;100\n2;50\n10;9\n1;80\n2;40\n10;7\n",
        "5:1: the times begin again here: a second run; take one of them, such as --lines 2-4"
    )]
    [InlineData(
        "nm;E\n400;1.125\n450;2.250\n500;3,375\n550;4.125\n600;1.500\n",
        "4:5: column 2 'E' has '3,375' among numbers with the other decimal mark: thousands or a slip? Write all of them alike"
    )]
    [InlineData(
        "400 1 2 3 4\n440 5 6 7 8\n480 9 10 11 12\n520 13 12 11 10\n560 9 8 7 6\n600 5 4 3 2\n",
        "1:1: " + ReadingTexts.WrappedRows
    )]
    [InlineData(
        "400;1\n410;2\n420;3\n430;2\n440;1450;2\n460;1\n470;2\n480;3\n490;2\n500;1\n510;2\n520;1\n",
        "5:1: a row of 3 columns among rows of 2; complete it, put # before a remark, or leave such lines out with --lenient"
    )]
    [InlineData(
        "nm;E\n400;1\n410;2\n620;3\n430;2\n440;1\n450;2\n",
        "4:1: 620 nm stands between 410 and 430 nm; correct it"
    )]
    public void Each_bad_file_has_its_message(string text, string message) =>
        Assert.Equal(message, ReadText.Problem(text));

    [Theory]
    [InlineData(
        new byte[] { 0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0 },
        "is a picture (PNG), not text"
    )]
    [InlineData(new byte[] { 0xFF, 0xD8, 0xFF, 0xE0, 1, 2 }, "is a picture (JPEG), not text")]
    [InlineData(
        new byte[] { (byte)'P', (byte)'K', 3, 4, 0, 0, (byte)'x', (byte)'l', (byte)'/' },
        "is a spreadsheet's workbook"
    )]
    [InlineData(
        new byte[] { 1, 2, 3, 200, 0, 7, 9, 0, 0, 3 },
        "is a binary file (it begins with the bytes 01 02 03 C8)"
    )]
    public void What_is_no_text_is_named(byte[] bytes, string beginning) =>
        Assert.StartsWith(beginning, ReadText.Outcome(bytes).Problems[0].Text, StringComparison.Ordinal);

    [Fact]
    public void Random_bytes_and_cut_files_never_throw()
    {
        var random = new Random(5);
        string good = new UntidyTable(
            [.. Enumerable.Range(380, 60).Select(n => (double)n)],
            [.. Enumerable.Range(1, 60).Select(n => n * 0.5)]
        )
        {
            Delimiter = ';',
            Header = ["nm;counts"],
        }.Text();
        for (int i = 0; i < 400; i++)
        {
            var bytes = new byte[random.Next(200)];
            random.NextBytes(bytes);
            AssertAnswered(ReadText.Outcome(bytes));
            char[] text = good[..random.Next(good.Length)].ToCharArray();
            for (int k = 0; k < 5 && text.Length > 0; k++)
            {
                text[random.Next(text.Length)] = "0;,.\t\"-xeE \n:"[random.Next(13)];
            }
            AssertAnswered(ReadText.Outcome(new string(text)));
        }
    }

    [Fact]
    public void Wavelengths_that_begin_again_are_a_second_spectrum()
    {
        string first = "380;1\n480;2\n580;3\n680;1\n";
        Assert.Equal(
            "5:1: the wavelengths begin again here: a second spectrum; take one of them, such as --lines 1-4",
            ReadText.Problem(
                first
                    + first
                        .Replace("3", "4", StringComparison.Ordinal)
                        .Replace("480", "481", StringComparison.Ordinal)
            )
        );
        Assert.Equal(
            4,
            ReadText.Spectrum(first + "380;2\n480;3\n580;1\n680;1\n", new() { Lines = (5, 8) }).Spectrum.Count
        );
        Assert.Equal(4, ReadText.Spectrum(first + first).Spectrum.Count);
    }

    [Fact]
    public void Lenient_leaves_out_and_averages_and_says_so()
    {
        var reading = ReadText.Spectrum(
            "400;1\n45O;2\n450;2\n450;4\n500;NaN\n550;5\n",
            new() { IsLenient = true }
        );
        Assert.Equal([400, 450, 550], reading.Spectrum.WavelengthsNm.ToArray());
        Assert.Equal([1, 3, 5], reading.Spectrum.Values.ToArray());
        Assert.Equal(["rows_left_out", "rows_averaged"], reading.Warnings.Select(w => w.Code));
    }

    [Fact]
    public void NaN_beyond_the_visible_is_left_out_and_told()
    {
        var reading = ReadText.Spectrum("nm;W/m2/nm\n300;NaN\n350;0\n400;1\n500;2\n600;3\n");
        Assert.Equal(4, reading.Spectrum.Count);
        Assert.Contains(
            reading.Warnings,
            w => w.Code == "rows_left_out" && w.Text.Contains("line 2", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_column_that_is_not_there_is_told_with_those_that_are() =>
        Assert.Equal(
            "2:1: there is no column 'watts'; there are column 1 'nm', column 2 'counts'",
            ReadText.Problem("nm;counts\n400;1\n500;2\n", new() { LightColumn = "watts" })
        );

    private static void AssertAnswered(ReadingOutcome outcome)
    {
        Assert.True(outcome.Spectrum is not null || outcome.Decay is not null || outcome.Problems.Length > 0);
        if (outcome.Spectrum is { } reading)
        {
            foreach (double value in reading.Spectrum.Values)
            {
                Assert.True(double.IsFinite(value));
            }
        }
    }
}
