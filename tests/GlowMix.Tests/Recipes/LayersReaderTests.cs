using GlowMix.Documents;
using GlowMix.Recipes;

namespace GlowMix.Tests.Recipes;

public class LayersReaderTests
{
    private const string Head = "format: 1\nresin: r\nled:\n  material: l\nlayers:\n";

    [Theory]
    [InlineData("0")]
    [InlineData("-2.5")]
    [InlineData("0.001")]
    [InlineData("201")]
    public void A_layer_has_a_depth(string depthMm) =>
        AssertLayer($"depth_mm: {depthMm}", $"a.yaml:6:15: depth_mm is {depthMm}; allowed: 0.01 to 200");

    [Fact]
    public void A_depth_with_a_comma_is_refused() =>
        AssertLayer("depth_mm: 3,5", "a.yaml:6:15: depth_mm is '3,5'; write it with a point, such as 3.5");

    [Fact]
    public void Loading_0_is_legal()
    {
        var document = Read("depth_mm: 2\n    pigment: p\n    loading_percent: 0\n");
        Assert.Empty(document.Problems);
        Assert.Equal(0, document.Recipe!.Layers[0].LoadingPercent);
    }

    [Fact]
    public void A_loading_below_1_percent_is_read_with_a_warning()
    {
        var document = Read("depth_mm: 2\n    pigment: p\n    loading_percent: 0.2\n");
        Assert.Equal(0.2, document.Recipe!.Layers[0].LoadingPercent);
        Assert.Equal(
            [new Problem("a.yaml", new(8, 22), RecipeTexts.LoadingIsSmall(0.2), Severity.Warning)],
            document.Problems
        );
        Assert.EndsWith("did you mean 20?", document.Problems[0].Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(85)]
    [InlineData(100)]
    public void A_loading_above_80_percent_is_refused(int percent) =>
        AssertLayer(
            $"depth_mm: 2\n    pigment: p\n    loading_percent: {percent}",
            $"a.yaml:8:22: loading_percent is {percent}; allowed: 0 to 80"
        );

    [Fact]
    public void Grams_per_100_g_of_resin_become_percent_of_the_mix()
    {
        var recipe = Read("depth_mm: 2\n    pigment: p\n    loading_g_per_100g_resin: 25\n").Recipe!;
        Assert.Equal(20, recipe.Layers[0].LoadingPercent);
    }

    [Fact]
    public void Both_ways_to_tell_the_loading_are_refused() =>
        AssertLayer(
            "depth_mm: 2\n    pigment: p\n    loading_percent: 20\n    loading_g_per_100g_resin: 25",
            "a.yaml:9:5: " + ProblemTexts.NotBoth("loading_g_per_100g_resin", "loading_percent")
        );

    [Fact]
    public void A_loading_without_pigment_is_refused() =>
        AssertLayer(
            "depth_mm: 2\n    loading_percent: 20",
            "a.yaml:7:22: " + RecipeTexts.NeedsAPigment("loading_percent")
        );

    // For a log-normal the 10 and 90 % points lie 1.2816 standard deviations off the median (any table of the normal).
    [Fact]
    public void The_ends_of_the_grain_give_median_and_spread()
    {
        var layer = Read(
            "depth_mm: 2\n    pigment: p\n    loading_percent: 5\n    grain_from_um: 20\n    grain_to_um: 80\n"
        ).Recipe!.Layers[0];
        Assert.True(layer.GrainIsFromEnds);
        Assert.Equal(40, layer.GrainMedianUm!.Value, 1e-12);
        Assert.Equal(80, 40 * Math.Exp(1.2816 * Math.Log(layer.GrainGsd!.Value)), 1e-2);
        Assert.Equal(20, 40 * Math.Exp(-1.2816 * Math.Log(layer.GrainGsd!.Value)), 1e-2);
    }

    [Theory]
    [InlineData(
        "grain_from_um: 80\n    grain_to_um: 20",
        "9:18: grain_to_um is 20; needed: more than grain_from_um, 80"
    )]
    [InlineData("grain_from_um: 80", "8:20: grain_from_um needs 'grain_to_um' beside it")]
    [InlineData(
        "grain_median_um: 40\n    grain_to_um: 20",
        "9:5: grain_to_um and grain_median_um exclude each other; write one of them"
    )]
    [InlineData(
        "grain_to_um: 20\n    grain_gsd: 2",
        "9:5: grain_gsd and grain_to_um exclude each other; write one of them"
    )]
    public void A_grain_is_told_in_one_way(string lines, string problem) =>
        AssertLayer($"depth_mm: 2\n    pigment: p\n    {lines}\n    loading_percent: 5", "a.yaml:" + problem);

    [Fact]
    public void A_thousand_layers_are_one_problem() =>
        RecipeReaderTests.AssertProblems(
            Head + string.Concat(Enumerable.Repeat("  - depth_mm: 0\n", 1000)),
            "a.yaml:6:3: layers has 1000 items; allowed: 1 to 12"
        );

    [Fact]
    public void No_layer_is_a_problem() =>
        RecipeReaderTests.AssertProblems(
            Head.Replace("layers:", "layers: []", StringComparison.Ordinal),
            "a.yaml:5:9: layers has 0 items; allowed: 1 to 12"
        );

    [Fact]
    public void Layers_have_names_of_their_own_also_against_the_default_ones() =>
        RecipeReaderTests.AssertProblems(
            Head + "  - name: layer-2\n    depth_mm: 1\n  - depth_mm: 1\n",
            "a.yaml:8:5: " + RecipeTexts.LayerNameTwice("layer-2")
        );

    [Theory]
    [InlineData("Glow")]
    [InlineData("glow.green")]
    [InlineData("2")]
    [InlineData("the glow")]
    public void A_layer_is_called_by_a_word(string name) =>
        AssertLayer($"name: {name}\n    depth_mm: 1", "a.yaml:6:11: " + RecipeTexts.NotALayerName(name));

    private static RecipeDocument Read(string lines) => Sample.Read(Head + "  - " + lines);

    private static void AssertLayer(string lines, string problem) =>
        RecipeReaderTests.AssertProblems(Head + "  - " + lines + "\n", problem);
}
