using GlowMix.Recipes;

namespace GlowMix.Console.Tests.Commands;

public class HelpCommandTests
{
    [Theory]
    [InlineData("recipe")]
    [InlineData("materials")]
    [InlineData("physics")]
    [InlineData("readings")]
    public void Each_topic_has_a_page_within_eighty_columns(string topic)
    {
        using var program = new CommandLine();
        Assert.Equal(0, program.Run("help", topic));
        Assert.True(program.OutLines.Length > 10);
        Assert.All(program.OutLines, line => Assert.InRange(line.Length, 0, 80));
        Assert.Empty(program.Error);
    }

    [Fact]
    public void The_page_on_recipes_names_every_key()
    {
        using var program = new CommandLine();
        program.Run("help", "recipe");
        Assert.All(
            RecipeKeys.All,
            key => Assert.Contains($"  {key.Path} ", program.Out, StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData("glowmix predict FILE", "help", "predict")]
    [InlineData("glowmix new led NAME", "help", "new", "led")]
    [InlineData("glowmix COMMAND", "help")]
    public void A_command_has_its_own_help(string usage, params string[] args)
    {
        using var program = new CommandLine();
        Assert.Equal(0, program.Run(args));
        Assert.StartsWith(usage, program.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_topic_that_is_none_is_told_with_the_nearest()
    {
        using var program = new CommandLine();
        Assert.Equal(2, program.Run("help", "recipes"));
        Assert.Contains("did you mean 'recipe'?", program.Error, StringComparison.Ordinal);
    }
}
