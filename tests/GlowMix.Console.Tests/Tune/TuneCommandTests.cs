namespace GlowMix.Console.Tests.Tune;

public class TuneCommandTests
{
    [Fact]
    public void Without_a_terminal_it_says_what_to_use_instead_and_ends_with_2()
    {
        using var program = new CommandLine();
        program.Write("stair-edge.yaml", TuneRig.StairEdge);
        Assert.Equal(ExitCode.Usage, program.Run("tune", "stair-edge.yaml"));
        Assert.Contains("tune needs a terminal", program.Error, StringComparison.Ordinal);
        Assert.Contains("glowmix predict stair-edge.yaml", program.Error, StringComparison.Ordinal);
        Assert.Empty(program.Out);
    }

    [Theory]
    [InlineData]
    [InlineData("a.yaml", "b.yaml")]
    public void It_takes_one_recipe(params string[] files)
    {
        using var program = new CommandLine();
        Assert.Equal(ExitCode.Usage, program.Run(["tune", .. files]));
        Assert.Contains("tune", program.Error, StringComparison.Ordinal);
    }
}
