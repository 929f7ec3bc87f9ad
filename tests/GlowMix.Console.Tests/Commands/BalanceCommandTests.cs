using System.Text.Json;
using GlowMix.Documents;
using GlowMix.Recipes;

namespace GlowMix.Console.Tests.Commands;

public sealed class BalanceCommandTests : IDisposable
{
    private const string Recipe = """
        format: 1
        title: Shelf edge               # invented
        resin: epoxy-clear-slow
        led:
          material: warm-white-3000
        layers:
          - name: glow
            depth_mm: 2                 # to be found
            pigment: green-aluminate
            loading_percent: 15         # to be found
        targets:
          - figure: lit.duv
            at_most: 0.02
          - figure: afterglow.luminance_mcd_m2
            at_minutes: 60
            at_least: 8
        balance:
          choices:
            - key: loading_percent
              from: 2
              to: 20
            - key: depth_mm
              from: 1
              to: 4

        """;

    private readonly CommandLine line = new();

    public BalanceCommandTests() => line.Write("a.yaml", Recipe);

    public void Dispose() => line.Dispose();

    [Fact]
    public void The_sheet_tells_what_to_take_the_trade_and_where_targets_are_met()
    {
        Assert.Equal(ExitCode.Done, line.Run("balance", "a.yaml", "--steps", "3", "--save-as", "b.yaml"));
        Assert.Equal("", line.Error);
        Assert.Equal("Shelf edge (a.yaml)", line.OutLines[0]);
        foreach (
            string label in (string[])
                [
                    "Take ",
                    "White ",
                    "Glow ",
                    "Held by ",
                    "Targets ",
                    "Sure ",
                    "Whitest ",
                    "Brightest ",
                    "Caution ",
                    "Saved ",
                ]
        )
        {
            Assert.Contains(line.OutLines, l => l.StartsWith(label, StringComparison.Ordinal));
        }
        Assert.Contains(line.OutLines, l => l.StartsWith("take ", StringComparison.Ordinal));
        Assert.Contains("\nlayers.glow.depth_mm\n", line.Out, StringComparison.Ordinal);
        Assert.Contains("  a only missed: lit.duv at most 0.02\n", line.Out, StringComparison.Ordinal);
        Assert.Equal(
            1,
            line.OutLines.Count(l =>
                l.Length > 8
                && l[8..].Contains(" @", StringComparison.Ordinal)
                && !l.Contains("take", StringComparison.Ordinal)
            )
        );
        Assert.All(line.OutLines, l => Assert.True(l.Length <= 80, l));

        // The saved recipe differs in the two numbers alone.
        string[] before = Recipe.Split('\n');
        string[] after = line.Read("b.yaml").Split('\n');
        Assert.Equal(before.Length, after.Length);
        Assert.All(
            Enumerable.Range(0, before.Length).Where(i => before[i] != after[i]),
            i => Assert.EndsWith("# to be found", after[i], StringComparison.Ordinal)
        );
        Assert.NotEqual(Recipe, line.Read("b.yaml"));
    }

    [Fact]
    public void Json_holds_it_all_and_is_the_same_each_time()
    {
        Assert.Equal(ExitCode.Done, Run("--steps", "2", "--json", "--save-as", "b.yaml"));
        string first = line.Out;
        using var json = JsonDocument.Parse(first);
        var root = json.RootElement;
        Assert.True(root.GetProperty("complete").GetBoolean());
        var best = root.GetProperty("recommended");
        double depth = best.GetProperty("choices").GetProperty("layers.glow.depth_mm").GetDouble();
        Assert.Equal(
            NumberText.Write(depth),
            RecipeDocument.Read(line.Read("b.yaml"), "b.yaml").Get("layers.glow.depth_mm")
        );
        Assert.Equal(2, best.GetProperty("prediction").GetProperty("targets").GetArrayLength());
        Assert.True(root.GetProperty("front").GetArrayLength() > 1);
        Assert.Equal(
            root.GetProperty("map").GetProperty("up_values").GetArrayLength(),
            root.GetProperty("map").GetProperty("missed").GetArrayLength()
        );
        Assert.Equal(0, root.GetProperty("relax").GetArrayLength());
        Assert.Equal(ExitCode.Done, Run("--steps", "2", "--json"));
        Assert.Equal(first, line.Out);
    }

    [Fact]
    public void Where_nothing_is_possible_it_says_what_to_relax_and_saves_nothing()
    {
        line.Write("a.yaml", Recipe.Replace("at_least: 8", "at_least: 60", StringComparison.Ordinal));
        Assert.Equal(ExitCode.Content, Run("--steps", "2", "--save-as", "b.yaml"));
        Assert.Contains("No design meets every target.", line.Out, StringComparison.Ordinal);
        Assert.Matches(@"\nRelax      .* instead of ", line.Out);
        Assert.Contains("\nNearest    ", line.Out, StringComparison.Ordinal);
        Assert.Equal("b.yaml: not written, for no design meets every target\n", line.Error);
        Assert.False(File.Exists(Path.Combine(line.Folder, "b.yaml")));
    }

    [Fact]
    public void A_file_that_is_there_is_replaced_only_if_told()
    {
        line.Write("b.yaml", "mine");
        Assert.Equal(ExitCode.FileAccess, Run("--steps", "2", "--save-as", "b.yaml"));
        Assert.Equal("b.yaml: is there already; --replace writes over it\n", line.Error);
        Assert.Equal("", line.Out);
        Assert.Equal("mine", line.Read("b.yaml"));
        Assert.Equal(ExitCode.Done, Run("--steps", "2", "--save-as", "b.yaml", "--replace"));
        Assert.StartsWith("format: 1\n", line.Read("b.yaml"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(ExitCode.Usage, "--steps: 'few' is not a number", "--steps", "few")]
    [InlineData(ExitCode.Content, "--steps: 2.5 steps; allowed: a whole number, 2 to 200", "--steps", "2.5")]
    [InlineData(
        ExitCode.Content,
        "--steps: 1000000000 steps; allowed: a whole number, 2 to 200",
        "--steps",
        "1e9"
    )]
    [InlineData(ExitCode.Usage, "--replace stands beside --save-as only", "--replace")]
    [InlineData(ExitCode.Usage, "--save-as needs the name of a file", "--save-as", "")]
    public void Bad_options_get_a_clear_error(int code, string error, params string[] args)
    {
        Assert.Equal(code, Run(args));
        Assert.StartsWith(error, line.Error, StringComparison.Ordinal);
        Assert.Equal("", line.Out);
    }

    [Theory]
    [InlineData(
        "from: 2\n      to: 20",
        "from: 20\n      to: 2",
        "a.yaml:21:11: to is 2; needed: more than from, 20"
    )]
    [InlineData("from: 2\n      to: 20", "any_of: []", "a.yaml:20:15: any_of has 0 items; allowed: 1 to 30")]
    [InlineData(
        "key: loading_percent",
        "key: loading",
        "a.yaml:19:12: the recipe has no key 'loading'; did you mean 'loading_percent'?"
    )]
    [InlineData("from: 2\n      to: 20", "from: 2\n      to: 90", "a.yaml:21:11: to is 90; allowed: 0 to 80")]
    [InlineData(
        "figure: lit.duv",
        "figure: lit.dv",
        "a.yaml:12:13: no figure is called 'lit.dv'; did you mean 'lit.duv'?"
    )]
    public void Choices_that_offer_nothing_get_a_clear_error(string old, string changed, string error)
    {
        line.Write("a.yaml", Recipe.Replace(old, changed, StringComparison.Ordinal));
        Assert.Equal(ExitCode.Content, Run());
        Assert.Equal(error, line.Error.Split('\n')[0]);
        Assert.Equal("", line.Out);
    }

    [Fact]
    public void A_stopped_search_says_so_and_returns_130()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        line.Stop = stop.Token;
        Assert.Equal(ExitCode.Interrupted, Run("--save-as", "b.yaml"));
        Assert.False(File.Exists(Path.Combine(line.Folder, "b.yaml")));
    }

    private int Run(params string[] args) => line.Run(["balance", "a.yaml", "--quick", .. args]);
}
