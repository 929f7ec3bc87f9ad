namespace GlowMix.Console.Tests.Tune;

public class PlainLinesTests
{
    [Fact]
    public void Lines_do_not_speak_of_arrows()
    {
        using var program = new CommandLine();
        program.Write("stair-edge.yaml", TuneRig.StairEdge);
        program.Typed = new(["drive 30", "undo", "quit"]);
        Assert.Equal(ExitCode.Done, program.Run("tune", "--plain", "stair-edge.yaml"));
        Assert.Contains("As the file has it.", program.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("Arrows", program.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_turn_numbers_and_save_through_a_pipe()
    {
        using var program = new CommandLine();
        program.Write("stair-edge.yaml", TuneRig.StairEdge);
        program.Typed = new([
            "loading 22",
            "depth more",
            "glow depth more",
            "loading 99",
            "undo",
            "save",
            "quit",
        ]);
        Assert.Equal(ExitCode.Done, program.Run("tune", "--plain", "stair-edge.yaml"));
        string[] told =
        [
            "3. glow loading 20 %",
            "Glow loading 20 → 22 % gave",
            "Several are called 'depth': cover depth, glow depth",
            "Glow depth 2.5 → 2.6 mm gave",
            "allowed: 0 to 80",
            "Saved stair-edge.yaml.",
        ];
        Assert.All(told, part => Assert.Contains(part, program.Out, StringComparison.Ordinal));
        Assert.Equal(
            TuneRig.StairEdge.Replace(
                "loading_percent: 20 ",
                "loading_percent: 22 ",
                StringComparison.Ordinal
            ),
            program.Read("stair-edge.yaml")
        );
    }

    [Fact]
    public void At_the_end_of_the_input_turns_are_kept_beside_the_file()
    {
        using var program = new CommandLine();
        program.Write("stair-edge.yaml", TuneRig.StairEdge);
        program.Typed = new(["loading 22"]);
        Assert.Equal(ExitCode.Done, program.Run("tune", "--plain", "stair-edge.yaml"));
        Assert.Equal(TuneRig.StairEdge, program.Read("stair-edge.yaml"));
        Assert.Contains(
            "loading_percent: 22",
            program.Read("stair-edge.yaml.autosave"),
            StringComparison.Ordinal
        );
    }
}
