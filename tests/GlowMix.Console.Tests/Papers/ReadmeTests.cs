namespace GlowMix.Console.Tests.Papers;

/// <summary>What the README shows is what the program does.</summary>
public sealed class ReadmeTests : IDisposable
{
    private readonly CommandLine line = new();
    private readonly string readme = File.ReadAllText(Path.Combine(TopFolder.Path, "README.md"));

    public void Dispose() => line.Dispose();

    [Fact]
    public void The_first_recipe_prints_what_stands_below_it()
    {
        line.Write("first.yaml", Block("yaml"));
        Assert.Equal(ExitCode.Done, line.Run("check", "first.yaml"));
        Assert.Equal("first.yaml: no errors\n", line.Out);
        Assert.Equal(ExitCode.Done, line.Run("predict", "first.yaml"));
        Assert.Equal(Block("text"), line.Out);
    }

    [Fact]
    public void Every_command_and_exit_code_stands_in_it()
    {
        line.Run("--help");
        foreach (
            string help in line.OutLines.Where(l =>
                l.StartsWith("  ", StringComparison.Ordinal) && l[2] != ' '
            )
        )
        {
            string word = help.Trim().Split(' ')[0];
            if (char.IsAsciiLetter(word[0]))
            {
                Assert.Contains($"`glowmix {word}", readme, StringComparison.Ordinal);
            }
        }
        Assert.All(ExitCode.Meanings, code => Assert.Matches($@"\| (\d+, )?{code.Code}(, \d+)? \|", readme));
    }

    [Theory]
    [InlineData("README.md")]
    [InlineData("DEVELOPERS.md")]
    public void Every_file_named_in_it_is_there(string paper)
    {
        string text = File.ReadAllText(Path.Combine(TopFolder.Path, paper));
        foreach (
            System.Text.RegularExpressions.Match match in System.Text.RegularExpressions.Regex.Matches(
                text,
                @"`?((?:src|tests|recipes|data|\.ci)/[A-Za-z0-9_./-]+)"
            )
        )
        {
            string path = match.Groups[1].Value.TrimEnd('/', '.');
            if (!path.Contains("KIND", StringComparison.Ordinal))
            {
                Assert.True(Path.Exists(Path.Combine(TopFolder.Path, path)), $"{paper} names {path}");
            }
        }
    }

    // The first block of a language.
    private string Block(string language)
    {
        string fence = $"```{language}\n";
        int start = readme.IndexOf(fence, StringComparison.Ordinal) + fence.Length;
        return readme[start..readme.IndexOf("```", start, StringComparison.Ordinal)];
    }
}
