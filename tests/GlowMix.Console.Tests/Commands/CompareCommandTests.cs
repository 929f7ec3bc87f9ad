using System.Diagnostics;
using System.Text.Json;

namespace GlowMix.Console.Tests.Commands;

public class CompareCommandTests
{
    private const string Strip = """
        format: 1
        title: Strip
        resin: epoxy-clear-slow
        led:
          material: warm-white-3000
        layers:
          - name: glow
            depth_mm: 2.5
            pigment: green-aluminate
            loading_percent: 20
        targets:
          - figure: afterglow.luminance_mcd_m2
            at_minutes: 60
            at_least: 50
        """;

    [Fact]
    public void The_yardstick_stands_first_then_targets_differences_and_figures()
    {
        using var program = new CommandLine();
        program.Write("a.yaml", Strip);
        Assert.Equal(
            0,
            program.Run(
                "compare",
                "--quick",
                "a.yaml",
                "--change",
                "loading_percent=10",
                "--change",
                "limit_mcd_m2=2"
            )
        );
        Assert.Empty(program.Error);
        string[] heads = ["The yardstick moved", "Targets", "Differences", "Figures", "Causes"];
        int[] places = [.. heads.Select(h => program.Out.IndexOf("\n" + h, StringComparison.Ordinal))];
        Assert.Equal(places.Order(), places);
        Assert.DoesNotContain(-1, places);
        Assert.Contains("darkness: limit not said → 2 mcd/m²", program.Out, StringComparison.Ordinal);
        Assert.Contains(
            "Breaks: afterglow.luminance_mcd_m2 at 60 min.",
            program.Out,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "glow: pigment 20 → 10 % by mass (25 → 11.1 g per 100 g of resin)",
            program.Out,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void One_change_keeps_its_page_within_eighty_columns()
    {
        using var program = new CommandLine();
        program.Write("a.yaml", Strip);
        program.Run("compare", "--quick", "a.yaml", "--change", "depth_mm=4", "--plot");
        Assert.All(program.OutLines, line => Assert.InRange(line.Length, 0, 80));
        Assert.Contains("warmer (yellower)", program.Out, StringComparison.Ordinal);
        Assert.Contains("before", program.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void By_default_both_are_drawn_and_the_change_is_told_with_its_own_band()
    {
        using var program = new CommandLine();
        program.Write("a.yaml", Strip);
        Assert.Equal(0, program.Run("compare", "a.yaml", "--change", "loading_percent=25"));
        string text = program.Out.Replace('\n', ' ');
        Assert.Matches(@"glow at 60 min .* \+\d+ % \(\+\d+ to \+\d+\)", text);
        Assert.Matches(@"though each is known to a factor of \d", text);
        Assert.Contains("draws, both pieces drawn alike", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Several_are_each_held_against_the_first_and_json_has_them_all()
    {
        using var program = new CommandLine();
        program.Write("a.yaml", Strip);
        program.Write("b.yaml", Strip.Replace("2.5", "3", StringComparison.Ordinal));
        program.Write("c.yaml", Strip.Replace("2.5", "2", StringComparison.Ordinal));
        Assert.Equal(0, program.Run("compare", "--quick", "a.yaml", "b.yaml", "c.yaml", "--json"));
        using var json = JsonDocument.Parse(program.Out);
        Assert.Equal(
            ["b.yaml", "c.yaml"],
            json.RootElement.EnumerateArray().Select(c => c.GetProperty("after").GetString())
        );
        Assert.True(
            json.RootElement[0]
                .GetProperty("figures")
                .GetProperty("afterglow.luminance_mcd_m2[60]")
                .GetProperty("ratio")
                .GetProperty("likely")
                .GetDouble() > 0
        );
    }

    [Fact]
    public void Markdown_has_tables()
    {
        using var program = new CommandLine();
        program.Write("a.yaml", Strip);
        Assert.Equal(0, program.Run("compare", "--quick", "a.yaml", "--change", "depth_mm=3", "--markdown"));
        Assert.Contains("\n| --- | ---: | ---: | --- |\n", program.Out, StringComparison.Ordinal);
        Assert.Contains("\n## Differences\n", program.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_shells_pattern_hands_over_beside_recipes_is_skipped_in_one_line()
    {
        using var program = new CommandLine();
        program.Write("a.yaml", Strip);
        program.Write("b.yaml", Strip);
        program.Write("a.calibration.yaml", "calibration_format: 1\n");
        Assert.Equal(0, program.Run("compare", "--quick", "a.calibration.yaml", "a.yaml", "b.yaml"));
        Assert.Equal("a.calibration.yaml: a calibration, no recipe; skipped\n", program.Error);
        Assert.Contains("None: the two say the same.", program.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2, "second recipe", "a.yaml")]
    [InlineData(2, "two recipe files")]
    [InlineData(1, "does not differ from itself", "a.yaml", "./a.yaml")]
    [InlineData(1, "broken.yaml:1:9: format is 2", "a.yaml", "broken.yaml")]
    [InlineData(3, "no such file", "a.yaml", "none.yaml")]
    [InlineData(1, "no key 'dept_mm'; did you mean 'depth_mm'?", "a.yaml", "--change", "dept_mm=2")]
    [InlineData(1, "allowed: 0 to 80", "a.yaml", "--change", "loading_percent=90")]
    [InlineData(2, "not KEY=VALUE", "a.yaml", "--change", "loading_percent")]
    [InlineData(2, "take one recipe", "a.yaml", "b.yaml", "--change", "depth_mm=2")]
    [InlineData(2, "exclude each other", "a.yaml", "--since", "HEAD", "--change", "depth_mm=2")]
    [InlineData(2, "name of a revision", "a.yaml", "--since", "--output=x")]
    [InlineData(3, "not on the path", "a.yaml", "--since", "HEAD")]
    public void What_cannot_be_compared_is_told(int code, string says, params string[] args)
    {
        using var program = new CommandLine();
        program.Write("a.yaml", Strip);
        program.Write("b.yaml", Strip);
        program.Write("broken.yaml", Strip.Replace("format: 1", "format: 2", StringComparison.Ordinal));
        Assert.Equal(code, program.Run(["compare", .. args]));
        Assert.Contains(says, program.Error, StringComparison.Ordinal);
        Assert.Empty(program.Out);
    }

    [Fact]
    public void Since_a_revision_takes_recipe_and_own_materials_of_then()
    {
        using var program = new CommandLine();
        if (!HasGit(program))
        {
            Assert.Skip("git is not installed here");
        }
        program.Run("new", "pigment", "bag", "--glow-colour", "green", "--luminance", "10=200");
        program.Write("a.yaml", Strip.Replace("green-aluminate", "bag", StringComparison.Ordinal));
        Assert.Equal(1, program.Run("compare", "--quick", "a.yaml", "--since", "HEAD"));
        Assert.Contains("not under version control", program.Error, StringComparison.Ordinal);
        Git(program, "init", "-q");
        Git(program, "add", "-A");
        Git(program, "-c", "user.name=a", "-c", "user.email=a@b.c", "commit", "-q", "-m", "one");
        string pigment = program.Read("materials/pigments/bag.yaml");
        program.Write(
            "materials/pigments/bag.yaml",
            pigment.Replace("value: 0.75\n", "value: 0.7\n", StringComparison.Ordinal)
        );
        program.Write("a.yaml", program.Read("a.yaml").Replace("2.5", "3", StringComparison.Ordinal));

        Assert.Equal(0, program.Run("compare", "--quick", "a.yaml", "--since", "HEAD"));
        Assert.Contains("with today's program", program.Out.Replace('\n', ' '), StringComparison.Ordinal);
        Assert.Contains("glow: 2.5 → 3 mm deep", program.Out, StringComparison.Ordinal);
        Assert.Contains(
            "bag, its own file: photoluminescence yield 0.75",
            program.Out,
            StringComparison.Ordinal
        );

        program.Write("fresh.yaml", Strip);
        Assert.Equal(0, program.Run("compare", "fresh.yaml", "--since", "HEAD"));
        Assert.StartsWith("fresh.yaml: new since HEAD (", program.Out, StringComparison.Ordinal);
        Assert.Equal(1, program.Run("compare", "a.yaml", "--since", "v9"));
        Assert.Contains("no revision 'v9'", program.Error, StringComparison.Ordinal);
    }

    private static bool HasGit(CommandLine program)
    {
        string path = Environment.GetEnvironmentVariable("PATH") ?? "";
        program.Set("PATH", path);
        return path.Split(Path.PathSeparator).Any(p => File.Exists(Path.Combine(p, "git")));
    }

    private static void Git(CommandLine program, params string[] words)
    {
        using var process = Process.Start(
            new ProcessStartInfo("git", words) { WorkingDirectory = program.Folder }
        )!;
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
    }
}
