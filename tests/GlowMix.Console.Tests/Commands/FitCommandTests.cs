using System.Text.Json;

namespace GlowMix.Console.Tests.Commands;

public sealed class FitCommandTests : IDisposable
{
    private readonly CommandLine line = new();

    public FitCommandTests()
    {
        line.Write("stair-edge.yaml", Shipped("stair-edge.yaml"));
        foreach (string file in Directory.GetFiles(Path.Combine(TopFolder.Path, "recipes", "readings")))
        {
            line.Write($"readings/{Path.GetFileName(file)}", File.ReadAllText(file));
        }
    }

    public void Dispose() => line.Dispose();

    [Fact]
    public void Readings_become_a_calibration_that_the_recipe_can_take_and_narrows_its_bands()
    {
        Assert.Equal(
            ExitCode.Done,
            line.Run("fit", "stair-edge.yaml", "--readings", "readings/stair-edge.readings.yaml")
        );
        Assert.Empty(line.Error);
        Assert.Contains(line.OutLines, l => l.StartsWith("Told ", StringComparison.Ordinal));
        Assert.Contains("grain absorption of green-aluminate: × 1.", line.Out, StringComparison.Ordinal);
        Assert.Contains("'calibration: stair-edge.calibration.yaml'", Joined(), StringComparison.Ordinal);
        Assert.All(line.OutLines, l => Assert.InRange(l.Length, 0, 80));
        string calibration = line.Read("stair-edge.calibration.yaml");
        Assert.StartsWith("calibration_format: 1\n", calibration, StringComparison.Ordinal);
        Assert.Contains("  - file: readings/stair-edge.bare.txt\n", calibration, StringComparison.Ordinal);

        double before = WidthOfDuv();
        line.Write(
            "stair-edge.yaml",
            Shipped("stair-edge.yaml")
                .Replace(
                    "format: 1\n",
                    "format: 1\ncalibration: stair-edge.calibration.yaml\n",
                    StringComparison.Ordinal
                )
        );
        double after = WidthOfDuv();
        Assert.InRange(after / before, 0.01, 0.5);
        Assert.Equal(ExitCode.Done, line.Run("predict", "stair-edge.yaml"));
        Assert.Contains("by stair-edge.calibration.yaml of ", line.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("not used", line.Error, StringComparison.Ordinal);

        Assert.Equal(
            ExitCode.Done,
            line.Run(
                "check",
                "stair-edge.yaml",
                "stair-edge.calibration.yaml",
                "readings/stair-edge.readings.yaml"
            )
        );
    }

    [Fact]
    public void A_bare_and_a_potted_reading_are_enough_and_json_tells_all()
    {
        Assert.Equal(
            ExitCode.Done,
            line.Run(
                "fit",
                "stair-edge.yaml",
                "--bare",
                "readings/stair-edge.bare.txt",
                "--potted",
                "readings/stair-edge.pigmented.txt",
                "--only-say",
                "--json"
            )
        );
        using var json = JsonDocument.Parse(line.Out);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("written").ValueKind);
        Assert.Contains(
            json.RootElement.GetProperty("numbers").EnumerateArray(),
            n => n.GetProperty("key").GetString() == "green-aluminate.absorption_factor"
        );
        Assert.False(File.Exists(Path.Combine(line.Folder, "stair-edge.calibration.yaml")));
    }

    [Fact]
    public void Readings_of_test_tiles_are_found_by_the_names_of_their_sheet()
    {
        foreach (
            var (from, to) in new[]
            {
                ("bare", "bare"),
                ("pigmented", "tile-2.lit"),
                ("decay", "tile-2.decay"),
            }
        )
        {
            line.Write($"stair-edge.{to}.txt", line.Read($"readings/stair-edge.{from}.txt"));
        }
        Assert.Equal(ExitCode.Done, line.Run("fit", "stair-edge.yaml", "--only-say"));
        Assert.Empty(line.Error);
        Assert.Contains("stair-edge.tile-2.lit.txt (pigmented, tile 2)", line.Out, StringComparison.Ordinal);
        Assert.StartsWith("3 readings told", line.OutLines[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_check_tells_of_readings_that_have_changed_since_the_fit()
    {
        Assert.Equal(
            ExitCode.Done,
            line.Run(
                "fit",
                "stair-edge.yaml",
                "--bare",
                "readings/stair-edge.bare.txt",
                "--potted",
                "readings/stair-edge.pigmented.txt"
            )
        );
        line.Write("readings/stair-edge.bare.txt", line.Read("readings/stair-edge.bare.txt") + "\n");
        File.Delete(Path.Combine(line.Folder, "readings", "stair-edge.pigmented.txt"));
        Assert.Equal(ExitCode.Done, line.Run("check", "stair-edge.calibration.yaml"));
        Assert.Contains(
            "stair-edge.bare.txt has changed since the fit",
            line.Error,
            StringComparison.Ordinal
        );
        Assert.Contains("stair-edge.pigmented.txt cannot be read", line.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_piece_level_with_its_packages_tells_of_the_bare_led_alone()
    {
        line.Write("level-strip.yaml", Shipped("level-strip.yaml"));
        string bare = "readings/stair-edge.bare.txt";
        Assert.Equal(
            ExitCode.Done,
            line.Run("fit", "level-strip.yaml", "--bare", bare, "--potted", bare, "--only-say")
        );
        Assert.Contains(line.OutLines, l => l.StartsWith("LED ", StringComparison.Ordinal));
        Assert.DoesNotContain(line.OutLines, l => l.StartsWith("Told ", StringComparison.Ordinal));
    }

    [Fact]
    public void A_lux_meter_needs_a_geometry()
    {
        line.Write("lux.txt", "minutes;lx\n1;4.00\n2;2.72\n4;1.77\n8;1.09\n16;0.66\n");
        Assert.Equal(ExitCode.Content, line.Run("fit", "stair-edge.yaml", "--decay", "lux.txt"));
        Assert.Contains("geometry", line.Error, StringComparison.Ordinal);
        Assert.Equal(
            ExitCode.Done,
            line.Run("fit", "stair-edge.yaml", "--decay", "lux.txt", "--geometry", "contact", "--only-say")
        );
        Assert.Contains("of green-aluminate: × ", line.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Raw_counts_give_ratios_only()
    {
        foreach (string name in new[] { "bare", "pigmented" })
        {
            string text = line.Read($"readings/stair-edge.{name}.txt");
            line.Write(
                $"{name}.txt",
                text.Replace("Irradiance (uW/cm2/nm)", "Counts", StringComparison.Ordinal)
            );
        }
        Assert.Equal(
            ExitCode.Done,
            line.Run("fit", "stair-edge.yaml", "--bare", "bare.txt", "--potted", "pigmented.txt")
        );
        Assert.Contains("raw counts: only ratios", line.Error, StringComparison.Ordinal);
        Assert.DoesNotContain(line.OutLines, l => l.StartsWith("LED ", StringComparison.Ordinal));
        Assert.DoesNotContain(
            "bare_spectrum",
            line.Read("stair-edge.calibration.yaml"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_file_that_is_no_calibration_is_never_written_over()
    {
        line.Write("stair-edge.calibration.yaml", "format: 1\n");
        Assert.Equal(
            ExitCode.Content,
            line.Run("fit", "stair-edge.yaml", "--readings", "readings/stair-edge.readings.yaml")
        );
        Assert.Contains("is no calibration; it stays", line.Error, StringComparison.Ordinal);
        Assert.Equal("format: 1\n", line.Read("stair-edge.calibration.yaml"));
    }

    [Theory]
    [InlineData(ExitCode.Usage, "fit needs readings", "fit", "stair-edge.yaml")]
    [InlineData(
        ExitCode.Usage,
        "--potted says nothing without --bare",
        "fit",
        "stair-edge.yaml",
        "--potted",
        "a.txt"
    )]
    [InlineData(
        ExitCode.Usage,
        "leave out --bare",
        "fit",
        "stair-edge.yaml",
        "--readings",
        "a.yaml",
        "--bare",
        "b.txt"
    )]
    [InlineData(ExitCode.FileAccess, "missing.txt", "fit", "stair-edge.yaml", "--decay", "missing.txt")]
    [InlineData(
        ExitCode.Content,
        "column 1 'minutes'",
        "fit",
        "stair-edge.yaml",
        "--bare",
        "readings/stair-edge.decay.txt",
        "--potted",
        "readings/stair-edge.potted.txt"
    )]
    [InlineData(
        ExitCode.Content,
        "needed: 'readings_format: 1'",
        "fit",
        "stair-edge.yaml",
        "--readings",
        "stair-edge.yaml"
    )]
    [InlineData(
        ExitCode.Content,
        "are bare and potted not exchanged?",
        "fit",
        "stair-edge.yaml",
        "--bare",
        "readings/stair-edge.pigmented.txt",
        "--potted",
        "readings/stair-edge.bare.txt"
    )]
    public void What_cannot_be_fitted_is_told(int code, string problem, params string[] args)
    {
        Assert.Equal(code, line.Run(args));
        Assert.Contains(problem, line.Error, StringComparison.Ordinal);
    }

    private string Joined() => string.Join(' ', line.OutLines.Select(l => l.Trim()));

    private double WidthOfDuv()
    {
        Assert.Equal(ExitCode.Done, line.Run("predict", "stair-edge.yaml", "--quick", "--json"));
        using var json = JsonDocument.Parse(line.Out);
        var band = json.RootElement.GetProperty("bands").GetProperty("lit.duv");
        return band.GetProperty("high").GetDouble() - band.GetProperty("low").GetDouble();
    }

    private static string Shipped(string name) =>
        File.ReadAllText(Path.Combine(TopFolder.Path, "recipes", name));
}
