namespace GlowMix.Console.Tests.Commands;

public class CompletionTests
{
    [Theory]
    [InlineData("predict", "pre")]
    [InlineData("--watch", "predict", "--wa")]
    [InlineData("a.yaml", "predict", "")]
    [InlineData("a.yaml", "predict", "--csv", "out", "")]
    [InlineData("a.figures.yaml", "check", "a")]
    [InlineData("a.readings.yaml", "tidy", "a")]
    [InlineData("folder/", "predict", "f")]
    [InlineData("folder/b.yaml", "predict", "folder/")]
    [InlineData("folder/", "predict", "--csv", "")]
    [InlineData("epoxy-clear-slow", "new", "recipe", "x", "--resin", "epoxy")]
    [InlineData("my-resin", "new", "recipe", "x", "--resin", "my")]
    [InlineData("none", "new", "recipe", "x", "--pigment", "n")]
    [InlineData("blue-green", "new", "pigment", "x", "--glow-colour", "")]
    [InlineData("pigment", "new", "")]
    [InlineData("loading_percent=", "compare", "a.yaml", "--change", "load")]
    [InlineData("depth_mm", "sweep", "a.yaml", "--vary", "d")]
    [InlineData("lit.cct_k", "sweep", "a.yaml", "--figure", "lit.duv", "lit.")]
    [InlineData("jis9107-jb", "markings", "a.yaml", "--criterion", "j")]
    [InlineData("green-aluminate", "materials", "gr")]
    [InlineData("physics", "help", "")]
    [InlineData("balance", "help", "b")]
    [InlineData("fish", "completion", "")]
    public void What_could_follow_is_offered(string offered, params string[] typed)
    {
        using var program = Filled();
        Assert.Equal(0, program.Run(["completion", "words", "--", .. typed]));
        Assert.Contains(offered, program.OutLines);
        Assert.All(program.OutLines, line => Assert.StartsWith(typed[^1], line, StringComparison.Ordinal));
        Assert.Empty(program.Error);
    }

    [Theory]
    [InlineData("--json", "predict", "--json", "--")]
    [InlineData("notes.txt", "predict", "")]
    [InlineData("a.figures.yaml", "predict", "a")]
    [InlineData("a.readings.yaml", "report", "a")]
    [InlineData("a.calibration.yaml", "tidy", "a")]
    [InlineData("a.yaml", "predict", "--csv", "")]
    [InlineData("words", "completion", "")]
    [InlineData(".hidden.yaml", "predict", "")]
    public void What_could_not_follow_is_not(string left, params string[] typed)
    {
        using var program = Filled();
        Assert.Equal(0, program.Run(["completion", "words", "--", .. typed]));
        Assert.DoesNotContain(left, program.OutLines);
    }

    [Theory]
    [InlineData("bash", "complete -F _glowmix glowmix")]
    [InlineData("zsh", "compdef _glowmix glowmix")]
    [InlineData("fish", "complete -c glowmix")]
    [InlineData("powershell", "Register-ArgumentCompleter")]
    public void Each_shell_gets_a_script_that_asks_the_program(string shell, string line)
    {
        using var program = new CommandLine();
        Assert.Equal(0, program.Run("completion", shell));
        Assert.Contains(line, program.Out, StringComparison.Ordinal);
        Assert.Contains("completion words", program.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shell_without_a_script_is_told()
    {
        using var program = new CommandLine();
        Assert.Equal(2, program.Run("completion", "csh"));
        Assert.Contains("bash, zsh, fish, powershell", program.Error, StringComparison.Ordinal);
        Assert.Equal(2, program.Run("completion"));
    }

    private static CommandLine Filled()
    {
        var program = new CommandLine();
        program.Run("new", "resin", "my-resin", "--family", "epoxy");
        foreach (
            string file in (ReadOnlySpan<string>)
                [
                    "a.yaml",
                    "a.figures.yaml",
                    "a.readings.yaml",
                    "a.calibration.yaml",
                    "folder/b.yaml",
                    "notes.txt",
                    ".hidden.yaml",
                ]
        )
        {
            program.Write(file, "format: 1\n");
        }
        return program;
    }
}
