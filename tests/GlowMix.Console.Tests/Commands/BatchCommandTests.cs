using System.Text.Json;

namespace GlowMix.Console.Tests.Commands;

public sealed class BatchCommandTests : IDisposable
{
    private readonly CommandLine line = new();

    public BatchCommandTests() => line.Write("stair-edge.yaml", Recipe("stair-edge"));

    public void Dispose() => line.Dispose();

    [Fact]
    public void A_two_layer_piece_fits_on_one_printed_page()
    {
        Assert.Equal(ExitCode.Done, line.Run("batch", "stair-edge.yaml", "--pieces", "3"));
        Assert.Equal("", line.Error);
        Assert.True(line.OutLines.Length <= 60, $"{line.OutLines.Length} lines");
        Assert.All(line.OutLines, l => Assert.True(l.Length <= 80, l));
    }

    [Fact]
    public void It_says_what_a_maker_needs_at_the_bench()
    {
        line.Run("batch", "stair-edge.yaml", "--pieces", "3");
        foreach (
            string needed in (string[])
                [
                    "batch sheet for 3 pieces",
                    "Part A",
                    "green-aluminate",
                    "_________",
                    "25 g per 100 g of A + B",
                    "pours",
                    "sink",
                    "min pot life left to pour",
                    "it foams",
                    "Cost       4.02",
                    "A : B within",
                    "too small for this scale",
                    "smallest safe batch is",
                    "Cautions",
                ]
        )
        {
            Assert.Contains(needed, line.Out, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_masses_for_programs_are_those_of_predict_times_the_pieces()
    {
        line.Run("predict", "stair-edge.yaml", "--quick", "--json");
        using var predicted = JsonDocument.Parse(line.Out);
        Assert.Equal(ExitCode.Done, line.Run("batch", "stair-edge.yaml", "--pieces", "4", "--json"));
        using var batch = JsonDocument.Parse(line.Out);
        foreach (string mass in (string[])["mix_volume_ml", "part_a_g", "part_b_g", "pigment_g", "cost"])
        {
            double one = predicted.RootElement.GetProperty("casting").GetProperty(mass).GetDouble();
            double four = batch.RootElement.GetProperty("in_all").GetProperty(mass).GetDouble();
            Assert.Equal(4 * one, four, tolerance: 1e-9 * four);
        }
        Assert.Equal(4, batch.RootElement.GetProperty("pieces").GetInt32());
        Assert.Equal(2, batch.RootElement.GetProperty("mixes").GetArrayLength());
        Assert.True(batch.RootElement.GetProperty("cautions").GetArrayLength() > 5);
    }

    [Fact]
    public void Markdown_leaves_the_masses_open_and_lets_no_title_break_a_table()
    {
        line.Write(
            "a.yaml",
            Recipe("stair-edge").Replace("Stair edge, warm white", "A | *b* <c>", StringComparison.Ordinal)
        );
        Assert.Equal(ExitCode.Done, line.Run("batch", "a.yaml", "--markdown"));
        Assert.StartsWith(@"# A \| \*b\* \<c\> (a.yaml)", line.Out, StringComparison.Ordinal);
        Assert.Contains("| 1. Part A | 12.3 |  |", line.Out, StringComparison.Ordinal);
        Assert.Contains("## Mix 2", line.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_size_the_masses_are_for_100_g()
    {
        line.Write(
            "short.yaml",
            """
            format: 1
            resin: epoxy-clear-slow
            led:
              material: warm-white-3000
            layers:
              - depth_mm: 2.5
                pigment: green-aluminate
                loading_percent: 20
            """
        );
        Assert.Equal(ExitCode.Done, line.Run("batch", "short.yaml"));
        Assert.Contains("g for 100 g", line.Out, StringComparison.Ordinal);
        Assert.Matches(@"Part A +75\.0 ", line.Out);
        Assert.Matches(@"green-aluminate +25\.0 ", line.Out);
        Assert.Contains("(assumed)", line.Out, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, line.Run("batch", "short.yaml", "--json"));
        using var batch = JsonDocument.Parse(line.Out);
        Assert.Equal(
            JsonValueKind.Null,
            batch.RootElement.GetProperty("mixes")[0].GetProperty("weighed").ValueKind
        );
    }

    [Fact]
    public void Test_tiles_come_with_charge_reading_times_and_the_files_of_their_readings()
    {
        Assert.Equal(ExitCode.Done, line.Run("batch", "stair-edge.yaml", "--test-tiles"));
        Assert.Contains("three test tiles", line.Out, StringComparison.Ordinal);
        Assert.Contains("48 h in the dark", line.Out, StringComparison.Ordinal);
        Assert.Contains("50 lx of led-4000", line.Out, StringComparison.Ordinal);
        Assert.Contains("stair-edge.readings.yaml", line.Out, StringComparison.Ordinal);
        Assert.All(line.OutLines, l => Assert.True(l.Length <= 80, l));
        Assert.Equal(ExitCode.Done, line.Run("batch", "stair-edge.yaml", "--test-tiles", "--json"));
        using var tiles = JsonDocument.Parse(line.Out);
        var loadings = tiles
            .RootElement.GetProperty("mixes")[0]
            .GetProperty("tiles")
            .EnumerateArray()
            .Select(t => t.GetProperty("loading_planned_percent").GetDouble());
        Assert.Equal([10, 20, 30], loadings.Select(l => Math.Round(l, 9)));
        Assert.Equal(8, tiles.RootElement.GetProperty("files").GetArrayLength());
        Assert.Equal(ExitCode.Done, line.Run("batch", "stair-edge.yaml", "--test-tiles", "--markdown"));
        Assert.Contains("| Tile 3, A + B |", line.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Test_tiles_of_a_clear_piece_have_nothing_to_vary()
    {
        line.Write("clear.yaml", Recipe("clear-tread"));
        Assert.Equal(ExitCode.Content, line.Run("batch", "clear.yaml", "--test-tiles"));
        Assert.Matches(@"^clear\.yaml:\d+:\d+: test tiles differ by their loading", line.Error);
        Assert.Equal("", line.Out);
    }

    [Theory]
    [InlineData("0", ExitCode.Content, "--pieces is 0; allowed: a whole number, 1 to 10000")]
    [InlineData("1000000000", ExitCode.Content, "--pieces is 1000000000; allowed")]
    [InlineData("1e9", ExitCode.Content, "allowed: a whole number, 1 to 10000")]
    [InlineData("2.5", ExitCode.Content, "--pieces is 2.5; allowed: a whole number")]
    [InlineData("-3", ExitCode.Content, "--pieces is -3; allowed")]
    [InlineData("three", ExitCode.Usage, "--pieces: 'three' is not a number")]
    [InlineData("3,5", ExitCode.Usage, "write it with a point, such as 3.5")]
    [InlineData("nan", ExitCode.Usage, "needed: a finite number")]
    public void A_number_of_pieces_that_cannot_be_is_told(string pieces, int code, string text)
    {
        Assert.Equal(code, line.Run("batch", "stair-edge.yaml", "--pieces", pieces));
        Assert.Contains(text, line.Error, StringComparison.Ordinal);
        Assert.Equal("", line.Out);
    }

    [Theory]
    [InlineData(ExitCode.Usage, "batch")]
    [InlineData(ExitCode.Usage, "batch", "stair-edge.yaml", "stair-edge.yaml")]
    [InlineData(ExitCode.Usage, "batch", "stair-edge.yaml", "--piece", "3")]
    [InlineData(ExitCode.Usage, "batch", "stair-edge.yaml", "--json", "--markdown")]
    [InlineData(ExitCode.Usage, "batch", "stair-edge.yaml", "--test-tiles", "--pieces", "2")]
    [InlineData(ExitCode.FileAccess, "batch", "nowhere.yaml")]
    public void What_cannot_be_understood_or_read_is_told(int code, params string[] args)
    {
        Assert.Equal(code, line.Run(args));
        Assert.NotEqual("", line.Error);
        Assert.Equal("", line.Out);
    }

    [Theory]
    [InlineData("part_a: 3", "part_a: 0", "part_a is 0; allowed: above 0")]
    [InlineData("minutes: 100", "minutes: 0", "minutes is 0; allowed: above 0")]
    public void A_mix_ratio_of_nothing_and_a_pot_life_of_zero_are_told_in_their_file(
        string old,
        string changed,
        string text
    )
    {
        string resin = File.ReadAllText(Path.Combine(TopFolder.Path, "data/resins/epoxy-clear-slow.yaml"));
        Assert.Contains(old, resin, StringComparison.Ordinal);
        line.Write(
            "materials/resins/epoxy-clear-slow.yaml",
            resin.Replace(old, changed, StringComparison.Ordinal)
        );
        Assert.Equal(ExitCode.Content, line.Run("batch", "stair-edge.yaml"));
        Assert.Matches(@"^materials/resins/epoxy-clear-slow\.yaml:\d+:\d+: ", line.Error);
        Assert.Contains(text, line.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Plain_letters_are_plain()
    {
        line.Run("batch", "stair-edge.yaml", "--ascii");
        Assert.All(line.Out, c => Assert.True(char.IsAscii(c)));
        line.Run("batch", "stair-edge.yaml", "--markdown", "--ascii");
        Assert.All(line.Out, c => Assert.True(char.IsAscii(c)));
    }

    [Fact]
    public void A_narrow_terminal_gets_narrow_lines()
    {
        line.TerminalColumns = 50;
        line.Set("NO_COLOR", "1");
        line.Run("batch", "stair-edge.yaml");
        Assert.All(line.OutLines, l => Assert.True(l.Length <= 50, l));
    }

    private static string Recipe(string name) =>
        File.ReadAllText(Path.Combine(TopFolder.Path, "recipes", $"{name}.yaml"));
}
