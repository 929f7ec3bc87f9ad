using GlowMix.Documents;
using GlowMix.Recipes;

namespace GlowMix.Tests.Recipes;

public class RecipeDocumentTests
{
    private static string StairEdge => File.ReadAllText(Path.Combine(Sample.Folder(), "stair-edge.yaml"));

    [Theory]
    [InlineData("layers.glow.loading_percent", "loading_percent: 20 ", "loading_percent: 27.5 ")]
    [InlineData("loading_percent", "loading_percent: 20 ", "loading_percent: 27.5 ")]
    [InlineData("cover.depth_mm", "depth_mm: 0.5\n", "depth_mm: 27.5\n")]
    [InlineData("charge.steps.2.temperature_c", "temperature_c: 20", "temperature_c: 27.5")]
    public void With_changes_one_value_and_nothing_else(string keyPath, string before, string after)
    {
        string text = StairEdge;
        var changed = Sample.Read(text).With(keyPath, 27.5);
        Assert.Equal(text.Replace(before, after, StringComparison.Ordinal), changed.Text);
        Assert.NotEqual(text, changed.Text);
        Assert.Equal("27.5", changed.Get(keyPath));
        Assert.NotNull(changed.Recipe);
    }

    [Fact]
    public void With_keeps_CRLF()
    {
        string text = StairEdge.ReplaceLineEndings("\r\n");
        var changed = Sample
            .Read(text)
            .With("layers.cover.pigment", "green-aluminate")
            .With("layers.cover.loading_percent", 5);
        Assert.DoesNotContain(
            "\n",
            changed.Text.Replace("\r\n", "", StringComparison.Ordinal),
            StringComparison.Ordinal
        );
        Assert.Equal(5, changed.Recipe!.Layers[1].LoadingPercent);
    }

    [Theory]
    [InlineData("title", "Edge", "format: 1\ntitle: Edge\nresin: r")]
    [InlineData("led.count", "60", "  material: l   # LED\n  count: 60\nlayers:")]
    [InlineData("led.spectrum", "a.csv", "  material: l   # LED\n  spectrum: a.csv\nlayers:")]
    [InlineData("board.material", "white-mask", "# LED\nboard:\n  material: white-mask\nlayers:")]
    [InlineData("layers.layer-1.name", "glow", "  - name: glow\n    depth_mm: 2   # deep\n")]
    [InlineData("layers.layer-1.depth_tolerance_mm", "0.1", "# deep\n    depth_tolerance_mm: 0.1\n")]
    [InlineData("darkness.limit_mcd_m2", "2", "# deep\ndarkness:\n  limit_mcd_m2: 2\n")]
    public void With_adds_a_key_in_its_canonical_place(string keyPath, string value, string expected)
    {
        const string Text =
            "format: 1\nresin: r\nled:\n  material: l   # LED\nlayers:\n  - depth_mm: 2   # deep\n";
        Assert.Contains(expected, Sample.Read(Text).With(keyPath, value).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("title", "Edge", "title: Edge   # none yet")]
    [InlineData("board.material", "white-mask", "board:   # to do\n  material: white-mask\n")]
    [InlineData("pour.width_mm", "10", "pour: {length_mm: 500, width_mm: 10, face: up}")]
    [InlineData("mixing.vacuum_min", "10", "mixing: {vacuum_min: 10}")]
    [InlineData("layers.layer-1.name", "glow", "layers: [{name: glow, depth_mm: 2}, {depth_mm: 3}]")]
    [InlineData("prices.resin_per_kg", "10", "prices: {resin_per_kg: 10, pigment_per_kg: 5}")]
    public void With_fills_what_is_empty_and_what_stands_on_one_line(
        string keyPath,
        string value,
        string expected
    )
    {
        const string Text =
            "format: 1\ntitle:   # none yet\nboard:   # to do\npour: {length_mm: 500, face: up}\nlayers: [{depth_mm: 2}, {depth_mm: 3}]\nmixing: {}\nprices: {pigment_per_kg: 5}\n";
        string changed = Sample.Read(Text).With(keyPath, value).Text;
        // The blanks before a comment are those that were there.
        Assert.Contains(expected, changed, StringComparison.Ordinal);
    }

    [Fact]
    public void With_replaces_the_other_way_to_say_the_same()
    {
        var document = Sample.Read(
            Sample.OneLayer.Replace(
                "loading_percent: 20",
                "loading_g_per_100g_resin: 25   # weighed\n    grain_from_um: 20\n    grain_to_um: 80",
                StringComparison.Ordinal
            )
        );
        var changed = document.With("loading_percent", 10).With("grain_median_um", 30);
        Assert.Empty(changed.Problems);
        Assert.Contains("loading_percent: 10   # weighed", changed.Text, StringComparison.Ordinal);
        var (before, after) = (document.Recipe!.Layers[0], changed.Recipe!.Layers[0]);
        Assert.Equal((30, before.GrainGsd), (after.GrainMedianUm, after.GrainGsd));
    }

    [Theory]
    [InlineData("Stair: edge # 3")]
    [InlineData("\"quoted\"")]
    [InlineData(" blanks ")]
    [InlineData("- dash")]
    [InlineData("~")]
    [InlineData("é 5/8, [x]")]
    [InlineData("*star")]
    public void With_writes_any_title_so_that_it_reads_back(string title)
    {
        var changed = Sample.Read(Sample.OneLayer).With("title", title);
        Assert.Empty(changed.Problems);
        Assert.Equal(title, changed.Get("title"));
    }

    [Fact]
    public void With_tells_what_is_not_allowed_in_the_result()
    {
        var changed = Sample.Read(Sample.OneLayer).With("loading_percent", 95);
        Assert.Null(changed.Recipe);
        Assert.Equal("loading_percent is 95; allowed: 0 to 80", Assert.Single(changed.Problems).Text);
    }

    [Fact]
    public void A_last_word_that_several_keys_share_is_ambiguous()
    {
        var document = Sample.Read(StairEdge);
        Assert.False(document.TryResolve("depth_mm", out _, out string problem));
        Assert.Equal(
            RecipeTexts.AmbiguousKeyPath("depth_mm", ["layers.glow.depth_mm", "layers.cover.depth_mm"]),
            problem
        );
        Assert.Throws<ArgumentException>(() => document.With("depth_mm", 1));
    }

    [Fact]
    public void A_key_path_that_is_not_there_is_told_with_the_nearest()
    {
        Assert.False(Sample.Read(StairEdge).TryResolve("loading_precent", out _, out string problem));
        Assert.Equal("the recipe has no key 'loading_precent'; did you mean 'loading_percent'?", problem);
    }

    [Fact]
    public void Get_is_null_for_a_key_that_is_not_written() =>
        Assert.Null(Sample.Read(Sample.OneLayer).Get("pour.length_mm"));

    [Fact]
    public void The_key_of_a_path_tells_its_range() =>
        Assert.Equal(NumberRange.Between(0, 80), Sample.Read(Sample.OneLayer).KeyOf("loading_percent").Range);

    [Fact]
    public void Every_key_there_is_can_be_added_and_is_known_to_the_reader()
    {
        var document = Sample.Read(StairEdge);
        foreach (var key in RecipeKeys.All.Where(k => k.Kind != RecipeKeyKind.List && k.Name != "name"))
        {
            string path = key
                .Path.Replace("layers.*", "layers.glow", StringComparison.Ordinal)
                .Replace("*", "1", StringComparison.Ordinal);
            var changed = document.With(path, "7");
            Assert.Equal("7", changed.Get(path));
            Assert.DoesNotContain(
                changed.Problems,
                p =>
                    p.Text.StartsWith("unknown", StringComparison.Ordinal)
                    || p.Text.StartsWith("not YAML", StringComparison.Ordinal)
            );
        }
    }
}
