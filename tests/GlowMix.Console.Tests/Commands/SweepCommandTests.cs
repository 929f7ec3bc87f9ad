using System.Text.Json;

namespace GlowMix.Console.Tests.Commands;

public sealed class SweepCommandTests : IDisposable
{
    private const string Recipe = """
        format: 1
        resin: epoxy-clear-slow
        led:
          material: warm-white-3000
        layers:
          - depth_mm: 2.5
            pigment: green-aluminate
            loading_percent: 20
        """;

    private readonly CommandLine line = new();

    public SweepCommandTests() => line.Write("a.yaml", Recipe);

    public void Dispose() => line.Dispose();

    [Fact]
    public void A_table_and_two_plots_are_printed()
    {
        Assert.Equal(
            ExitCode.Done,
            Run("--vary", "loading_percent", "--from", "10", "--to", "20", "--steps", "3")
        );
        Assert.Equal("", line.Error);
        Assert.Equal("a.yaml", line.OutLines[0]);
        Assert.Equal(
            "layers.layer-1.loading_percent from 10 to 20, 3 values; all else as in the recipe",
            string.Join(' ', line.OutLines[1..3])
        );
        Assert.Contains(line.OutLines, l => l.TrimStart().StartsWith("15  ", StringComparison.Ordinal));
        Assert.Contains("lit.cct_k  lit.duv", line.Out, StringComparison.Ordinal);
        Assert.Contains("\nlit.duv\n", line.Out, StringComparison.Ordinal);
        Assert.Contains("\nafterglow.luminance_mcd_m2[60]\n", line.Out, StringComparison.Ordinal);
        Assert.Contains(
            "Plan on the low ends of the glow: 10 to 90 % of 64 draws",
            line.Out,
            StringComparison.Ordinal
        );
        Assert.All(line.OutLines, l => Assert.True(l.Length <= 80, l));
    }

    [Fact]
    public void Ascii_draws_with_ascii_letters_only()
    {
        Run("--vary", "loading_percent", "--from", "10", "--to", "20", "--steps", "2", "--ascii");
        Assert.All(line.Out, c => Assert.True(char.IsAscii(c)));
    }

    [Fact]
    public void Json_and_csv_hold_the_same_numbers()
    {
        int code = Run(
            "--vary",
            "loading_percent",
            "--from",
            "10",
            "--to",
            "20",
            "--steps",
            "2",
            "--vary",
            "depth_mm",
            "--from",
            "1",
            "--to",
            "2",
            "--steps",
            "2",
            "--figure",
            "lit.duv",
            "afterglow.luminance_mcd_m2[60]",
            "--csv",
            "t.csv",
            "--json"
        );
        Assert.Equal(ExitCode.Done, code);
        using var json = JsonDocument.Parse(line.Out);
        var point = json.RootElement.GetProperty("points")[3];
        Assert.Equal(2, point.GetProperty("at").GetProperty("layers.layer-1.depth_mm").GetDouble());
        double duv = point.GetProperty("figures").GetProperty("lit.duv").GetDouble();
        var band = point.GetProperty("bands").GetProperty("afterglow.luminance_mcd_m2[60]");
        string[] rows = line.Read("t.csv").TrimEnd('\n').Split('\n');
        Assert.Equal(
            "layers.layer-1.loading_percent,layers.layer-1.depth_mm,lit.duv,lit.duv low,lit.duv high,"
                + "afterglow.luminance_mcd_m2[60],afterglow.luminance_mcd_m2[60] low,afterglow.luminance_mcd_m2[60] high",
            rows[0]
        );
        string[] last = rows[4].Split(',');
        Assert.Equal("20", last[0]);
        Assert.Equal(duv, double.Parse(last[2], System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(
            band.GetProperty("low").GetDouble(),
            double.Parse(last[6], System.Globalization.CultureInfo.InvariantCulture)
        );
    }

    [Theory]
    [InlineData(ExitCode.Usage, "sweep needs --vary with the key of a number")]
    [InlineData(ExitCode.Usage, "each --vary takes a --from", "--vary", "loading_percent", "--from", "1")]
    [InlineData(
        ExitCode.Usage,
        "--from: '3,5' is not a number; write it with a point, such as 3.5",
        "--vary",
        "loading_percent",
        "--from",
        "3,5",
        "--to",
        "9"
    )]
    [InlineData(
        ExitCode.Usage,
        "--steps: 'many' is not a number",
        "--vary",
        "loading_percent",
        "--from",
        "3",
        "--to",
        "9",
        "--steps",
        "many"
    )]
    [InlineData(
        ExitCode.Content,
        "loading_percent: 1000000000 values for one key; allowed: a whole number, 2 to 1000",
        "--vary",
        "loading_percent",
        "--from",
        "3",
        "--to",
        "9",
        "--steps",
        "1000000000"
    )]
    [InlineData(
        ExitCode.Content,
        "loading_percent: the last value is 3; needed: more than the first, 9",
        "--vary",
        "loading_percent",
        "--from",
        "9",
        "--to",
        "3"
    )]
    [InlineData(
        ExitCode.Content,
        "a.yaml: the recipe has no key 'grain'",
        "--vary",
        "grain",
        "--from",
        "3",
        "--to",
        "9"
    )]
    [InlineData(
        ExitCode.Content,
        "a.yaml:8:22: layers.layer-1.loading_percent at 90: loading_percent is 90; allowed: 0 to 80",
        "--vary",
        "loading_percent",
        "--from",
        "10",
        "--to",
        "90",
        "--steps",
        "2"
    )]
    [InlineData(
        ExitCode.Content,
        "--figure: no figure is called 'lit.cct'; did you mean 'lit.cct_k'?",
        "--vary",
        "loading_percent",
        "--from",
        "10",
        "--to",
        "20",
        "--figure",
        "lit.cct"
    )]
    public void Bad_input_gets_a_clear_error(int code, string error, params string[] args)
    {
        Assert.Equal(code, Run(args));
        Assert.StartsWith(error, line.Error, StringComparison.Ordinal);
        Assert.Equal("", line.Out);
    }

    [Fact]
    public void One_recipe_is_needed_and_it_must_be_there()
    {
        string[] range = ["--vary", "loading_percent", "--from", "3", "--to", "9"];
        Assert.Equal(ExitCode.Usage, line.Run(["sweep", .. range]));
        Assert.Equal(ExitCode.Usage, line.Run(["sweep", "a.yaml", "a.yaml", .. range]));
        Assert.Equal(ExitCode.FileAccess, line.Run(["sweep", "b.yaml", .. range]));
        Assert.Equal("b.yaml: no such file\n", line.Error);
    }

    [Fact]
    public void A_table_that_cannot_be_written_is_told_after_the_sweep()
    {
        line.Write("t.csv/x", "");
        Assert.Equal(
            ExitCode.FileAccess,
            Run("--vary", "loading_percent", "--from", "10", "--to", "20", "--steps", "2", "--csv", "t.csv")
        );
        Assert.StartsWith("t.csv: ", line.Error, StringComparison.Ordinal);
        Assert.NotEmpty(line.Out);
    }

    [Fact]
    public void A_stopped_sweep_says_so_and_returns_130()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        line.Stop = stop.Token;
        Assert.Equal(
            ExitCode.Interrupted,
            Run("--vary", "loading_percent", "--from", "10", "--to", "20", "--steps", "2")
        );
    }

    private int Run(params string[] args) => line.Run(["sweep", "a.yaml", .. args]);
}
