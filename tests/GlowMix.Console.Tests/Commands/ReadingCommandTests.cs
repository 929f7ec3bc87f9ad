using System.Globalization;
using System.Text;
using System.Text.Json;
using GlowMix.Colour;
using GlowMix.Spectra;

namespace GlowMix.Console.Tests.Commands;

public sealed class ReadingCommandTests : IDisposable
{
    private readonly CommandLine line = new();

    public ReadingCommandTests()
    {
        line.Write("led.csv", Table("led_b3", "nm;W/m²/nm"));
        line.Write("warm.csv", Table("led_b1", "nm;W/m²/nm"));
        line.Write("counts.csv", Table("led_b3", "nm;counts"));
        line.Write("glow.csv", "time (min);lux\n1;8.0\n2;4.3\n5;1.9\n10;1.0\n20;0.5\n60;0.2\n");
    }

    public void Dispose() => line.Dispose();

    [Fact]
    public void A_reading_is_told_in_a_sentence_and_rows()
    {
        Assert.Equal(ExitCode.Done, line.Run("reading", "led.csv"));
        Assert.Equal("", line.Error);
        Assert.Equal("led.csv", line.OutLines[0]);
        Assert.StartsWith(
            "4100 K, no tint to see, inside the quadrangle of the nominal 4000 K",
            line.OutLines[1],
            StringComparison.Ordinal
        );
        // CIE 015:2018, LED-B3: x 0.3756, y 0.3723.
        Assert.Contains("x 0.3756, y 0.3723", line.Out, StringComparison.Ordinal);
        Assert.Contains("C78.377-2015", line.Out, StringComparison.Ordinal);
        Assert.Contains("semicolons, decimal point", line.Out, StringComparison.Ordinal);
        Assert.All(line.OutLines, l => Assert.True(l.Length <= 80, l));
    }

    [Fact]
    public void Json_holds_every_figure_and_null_where_there_is_none()
    {
        Assert.Equal(ExitCode.Done, line.Run("reading", "led.csv", "--json"));
        using var json = JsonDocument.Parse(line.Out);
        var root = json.RootElement;
        // Figures of the table on its own step, computed independently of this code.
        Assert.Equal(4102.5, root.GetProperty("cct_k").GetDouble(), 0.06);
        Assert.Equal(-0.0007, root.GetProperty("duv").GetDouble(), 6e-5);
        Assert.Equal(84.8, root.GetProperty("ra").GetDouble(), 0.06);
        Assert.Equal(24, root.GetProperty("r9").GetDouble(), 0.6);
        Assert.Equal(1.721, root.GetProperty("scotopic_photopic_ratio").GetDouble(), 6e-4);
        Assert.Equal(316.9, root.GetProperty("luminous_efficacy_lm_w").GetDouble(), 0.06);
        Assert.Equal(0.3756, root.GetProperty("x").GetDouble(), 6e-5);
        Assert.Equal(0.3723, root.GetProperty("y").GetDouble(), 6e-5);
        Assert.True(root.GetProperty("u_prime").GetDouble() > 0);
        Assert.True(root.GetProperty("v_prime").GetDouble() > 0);
        Assert.Equal(0, root.GetProperty("warnings").GetArrayLength());
        line.Write("green.csv", "nm;W/m2/nm\n500;0\n510;0.4\n520;1\n530;0.4\n540;0\n550;0\n");
        Assert.Equal(ExitCode.Done, line.Run("reading", "green.csv", "led.csv", "--json"));
        using var array = JsonDocument.Parse(line.Out);
        Assert.Equal(2, array.RootElement.GetArrayLength());
        Assert.Equal(JsonValueKind.Null, array.RootElement[0].GetProperty("cct_k").ValueKind);
        Assert.Equal(JsonValueKind.Null, array.RootElement[0].GetProperty("ra").ValueKind);
    }

    [Fact]
    public void Raw_counts_are_headed_as_no_colour_until_they_are_corrected()
    {
        line.Run("reading", "counts.csv");
        Assert.StartsWith("RAW COUNTS: COLOUR NOT TRUSTWORTHY", line.OutLines[1], StringComparison.Ordinal);
        Assert.Equal(["raw_counts"], Codes("counts.csv"));
        Assert.Empty(Codes("counts.csv", "--corrected", "yes"));
        Assert.Equal(["raw_counts"], Codes("led.csv", "--corrected", "no"));
    }

    [Fact]
    public void A_known_lamp_takes_the_instruments_response_out()
    {
        // An instrument that sees red half as well as blue, and illuminant A as its lamp.
        string lamp = Filtered("a");
        line.Write("lamp.csv", lamp);
        line.Write("raw.csv", Filtered("led_b3"));
        Assert.True(Math.Abs(Cct("raw.csv") - 4102.5) > 300);
        Assert.Equal(4102.5, Cct("raw.csv", "--known-lamp", "incandescent-a", "lamp.csv"), 0.5);
        Assert.Equal(4102.5, Cct("raw.csv", "--known-lamp", "2855.5K", "lamp.csv"), 5.0);
        Assert.DoesNotContain("raw_counts", Codes("raw.csv", "--known-lamp", "incandescent-a", "lamp.csv"));
        Assert.Equal(
            ExitCode.Content,
            line.Run("reading", "raw.csv", "--known-lamp", "incandescent", "lamp.csv")
        );
        Assert.StartsWith(
            "--known-lamp: no lamp is called 'incandescent'; did you mean 'incandescent-a'?",
            line.Error,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Two_readings_are_compared_at_equal_exposure_or_scaled()
    {
        Assert.Equal(ExitCode.Done, line.Run("reading", "led.csv", "--against", "warm.csv", "--json"));
        using var json = JsonDocument.Parse(line.Out);
        var against = json.RootElement.GetProperty("against");
        Assert.Equal(4102.5 - 2733.4, against.GetProperty("shift_k").GetDouble(), 0.2);
        Assert.Equal(JsonValueKind.Null, against.GetProperty("scaled_at_nm").ValueKind);
        Assert.True(against.GetProperty("band_ratio").GetProperty("blue").GetDouble() > 1.1);
        line.Run("reading", "led.csv", "--against", "warm.csv", "--scaled-at", "600");
        Assert.Contains("both made equal at 600 nm", line.Out, StringComparison.Ordinal);
        Assert.Contains("1370 K cooler (bluer)", line.Out, StringComparison.Ordinal);
        line.Run("reading", "counts.csv", "--against", "counts.csv", "--equal-exposure");
        Assert.Contains("the spectrum keeps its shape", line.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Dark_readings_windows_and_paper_are_taken_into_account()
    {
        TabulatedSpectrum led = StandardIlluminants.Named("led_b1");
        double peak = led.Values.ToArray().Max();
        line.Write("raised.csv", Written(led, "nm;W/m2/nm", (_, v) => v + (0.01 * peak)));
        line.Write("dark.csv", Written(led, "nm;W/m2/nm", (_, _) => 0.01 * peak));
        line.Write("paper.csv", Written(led, "nm;reflectance", (nm, _) => nm / 1000));
        line.Write("offpaper.csv", Written(led, "nm;W/m2/nm", (nm, v) => v * nm / 1000));
        double cct = Cct("warm.csv");
        // A pedestal of 1 % of the peak moves LED-B1 by +22 K; computed independently of this code.
        Assert.Equal(cct + 22, Cct("raised.csv"), 0.6);
        Assert.Equal(cct, Cct("raised.csv", "--dark", "dark.csv"), 0.01);
        Assert.Equal(cct, Cct("raised.csv", "--dark-window", "380-390"), 1.0);

        // A dark reading may be the same everywhere, nothing, or all below nothing.
        line.Write("bright.csv", Written(led, "nm;counts", (_, v) => 100 + Math.Round(60000 * v / peak)));
        foreach (string level in new[] { "100", "0", "-3" })
        {
            line.Write("flat.csv", $"nm;counts\n380;{level}\n500;{level}\n780;{level}\n");
            Assert.Equal(ExitCode.Done, line.Run("reading", "bright.csv", "--dark", "flat.csv"));
        }
        Assert.Equal(cct, Cct("offpaper.csv", "--reflectance", "paper.csv"), 0.01);
        Assert.Equal(cct, Cct("warm.csv", "--reflectance", "0.85"), 0.01);
        line.Write("violet.csv", Table("led_v2", "nm;W/m2/nm"));
        Assert.Contains("paper_glows", Codes("violet.csv", "--reflectance", "0.9"));
        Assert.DoesNotContain("paper_glows", Codes("violet.csv"));
    }

    [Fact]
    public void A_decay_is_told_by_itself_and_by_geometry()
    {
        Assert.Equal(ExitCode.Done, line.Run("reading", "glow.csv", "--geometry", "contact", "--json"));
        using var json = JsonDocument.Parse(line.Out);
        var root = json.RootElement;
        Assert.Equal("decay", root.GetProperty("kind").GetString());
        // E = π L.
        Assert.Equal(8000 / Math.PI, root.GetProperty("readings")[0].GetProperty("value").GetDouble(), 1e-9);
        Assert.False(root.GetProperty("readings")[5].GetProperty("usable").GetBoolean());
        Assert.True(root.GetProperty("minutes_extrapolated").GetBoolean());
        Assert.Equal(0.92, root.GetProperty("exponent").GetDouble(), 0.03);
        line.Run("reading", "glow.csv");
        Assert.Contains("lux are no luminance", line.Out, StringComparison.Ordinal);
        Assert.Contains("too few to use", line.Out, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Usage, line.Run("reading", "glow.csv", "--geometry", "contact-mask"));
        Assert.StartsWith(
            "--geometry contact-mask needs --hole-mm and --sensor-mm",
            line.Error,
            StringComparison.Ordinal
        );
        Assert.Equal(
            ExitCode.Content,
            line.Run(
                "reading",
                "glow.csv",
                "--geometry",
                "contact-mask",
                "--hole-mm",
                "9",
                "--sensor-mm",
                "3"
            )
        );
    }

    [Fact]
    public void Plots_are_drawn_in_ascii_too()
    {
        line.Run("reading", "led.csv", "--against", "warm.csv", "--plot", "--ascii");
        Assert.All(line.Out, c => Assert.True(char.IsAscii(c)));
        Assert.Contains("Ratio to warm.csv", line.Out, StringComparison.Ordinal);
        line.Run("reading", "glow.csv", "--geometry", "contact", "--plot");
        Assert.Contains("min in the dark", line.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_hundred_megabytes_are_refused_without_reading_them()
    {
        using (var stream = File.Create(Path.Combine(line.Folder, "huge.txt")))
        {
            stream.SetLength(200_000_000);
        }
        long before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(ExitCode.Content, line.Run("reading", "huge.txt"));
        Assert.StartsWith("huge.txt: longer than 16 MB", line.Error, StringComparison.Ordinal);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 20_000_000);
    }

    [Theory]
    [InlineData(ExitCode.FileAccess, "none.csv: no such file", "none.csv")]
    [InlineData(ExitCode.FileAccess, ".: is a directory, not a file", ".")]
    [InlineData(ExitCode.Usage, "reading needs a file")]
    [InlineData(ExitCode.Usage, "--decimal is 'dot'; allowed: point, comma", "led.csv", "--decimal", "dot")]
    [InlineData(ExitCode.Usage, "--lines: 'x' is no range of lines", "led.csv", "--lines", "x")]
    [InlineData(ExitCode.Usage, "--scaled-at: '5,5' is not a number", "led.csv", "--scaled-at", "5,5")]
    [InlineData(ExitCode.Usage, "--dark-window: '380' is no range", "led.csv", "--dark-window", "380")]
    [InlineData(
        ExitCode.Content,
        "--reflectance: a reflectance of 1.5; allowed: above 0, up to 1",
        "led.csv",
        "--reflectance",
        "1.5"
    )]
    [InlineData(
        ExitCode.Content,
        "led.csv: the dark window 300 to 310 nm holds 0 values",
        "led.csv",
        "--dark-window",
        "300-310"
    )]
    [InlineData(ExitCode.Content, "led.csv:2:1: there is no column '7'", "led.csv", "--column", "7")]
    [InlineData(
        ExitCode.Content,
        "led.csv: --lines 500-600: the file has 82 lines",
        "led.csv",
        "--lines",
        "500-600"
    )]
    public void Bad_words_get_a_clear_error(int code, string error, params string[] args)
    {
        Assert.Equal(code, line.Run(["reading", .. args]));
        Assert.StartsWith(error, line.Error, StringComparison.Ordinal);
        Assert.Equal("", line.Out);
    }

    [Theory]
    [InlineData("empty.txt", "", "the file is empty")]
    [InlineData("header.txt", "nm;counts\n", "no line of two numbers in it")]
    [InlineData("one.txt", "450;1\n", "1 row of numbers; needed: 2 or more")]
    [InlineData("zero.txt", "450;0\n500;0\n", "all values are 0")]
    [InlineData("recipe.yaml", "format: 1\n", "begins with the key 'format'")]
    public void Each_bad_file_is_told_and_the_good_ones_are_read(string name, string text, string message)
    {
        line.Write(name, text);
        Assert.Equal(ExitCode.Content, line.Run("reading", name, "led.csv"));
        Assert.Contains(message, line.Error, StringComparison.Ordinal);
        Assert.StartsWith(name + ":", line.Error, StringComparison.Ordinal);
        Assert.StartsWith("led.csv", line.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_found_can_be_overruled()
    {
        line.Write("odd.csv", "no;lambda;one;two\n1;400;0.1;0.5\n2;500;0.3;0.2\n3;600;0.2;0.9\n");
        Assert.Equal(ExitCode.Done, line.Run("reading", "odd.csv", "--column", "two", "--json"));
        using var json = JsonDocument.Parse(line.Out);
        var found = json.RootElement.GetProperty("found");
        Assert.Equal(4, found.GetProperty("light_column").GetProperty("number").GetInt32());
        Assert.Equal(2, found.GetProperty("wavelength_column").GetProperty("number").GetInt32());
        line.Write("latin.csv", "");
        File.WriteAllBytes(
            Path.Combine(line.Folder, "latin.csv"),
            Encoding.Latin1.GetBytes("Wellenlänge;µW/cm²/nm\r\n400;0,5\r\n500;0,7\r\n600;0,6\r\n")
        );
        Assert.Equal(ExitCode.Done, line.Run("reading", "latin.csv"));
        Assert.Contains("Latin-1", line.Out, StringComparison.Ordinal);
    }

    private double Cct(params string[] args)
    {
        Assert.Equal(ExitCode.Done, line.Run(["reading", .. args, "--json"]));
        using var json = JsonDocument.Parse(line.Out);
        return json.RootElement.GetProperty("cct_k").GetDouble();
    }

    private List<string> Codes(params string[] args)
    {
        Assert.Equal(ExitCode.Done, line.Run(["reading", .. args, "--json"]));
        using var json = JsonDocument.Parse(line.Out);
        return
        [
            .. json
                .RootElement.GetProperty("warnings")
                .EnumerateArray()
                .Select(w => w.GetProperty("code").GetString()!),
        ];
    }

    private static string Table(string illuminant, string header) =>
        Written(StandardIlluminants.Named(illuminant).Between(380, 780), header, (_, v) => v);

    private static string Filtered(string illuminant) =>
        Written(
            StandardIlluminants.Named(illuminant).Between(380, 780),
            "nm;counts",
            (nm, v) => 100 * v * (1 - (0.5 * (nm - 380) / 400))
        );

    private static string Written(TabulatedSpectrum table, string header, Func<double, double, double> change)
    {
        var text = new StringBuilder(header).Append('\n');
        for (int i = 0; i < table.Count; i++)
        {
            double nm = table.WavelengthsNm[i];
            text.Append(CultureInfo.InvariantCulture, $"{nm};{change(nm, table.Values[i]):R}\n");
        }
        return text.ToString();
    }
}
