using GlowMix.Documents;
using GlowMix.Recipes;

namespace GlowMix.Tests.Recipes;

public class RecipeReaderTests
{
    [Fact]
    public void A_recipe_of_required_keys_leaves_all_else_open()
    {
        var document = Sample.Read(Sample.OneLayer);
        Assert.Empty(document.Problems);
        var recipe = document.Recipe!;
        Assert.Equal("epoxy-clear-slow", recipe.ResinName);
        Assert.Equal(new LedByName("warm-white-3000"), recipe.Led.Source);
        var layer = Assert.Single(recipe.Layers);
        Assert.Equal(
            ("layer-1", 2.5, "green-aluminate", 20.0),
            (layer.Name, layer.DepthMm, layer.PigmentName, layer.LoadingPercent)
        );
        Assert.Null(layer.GrainMedianUm);
        Assert.Null(recipe.BoardName);
        Assert.Equal(new RecipePour(), recipe.Pour);
        Assert.Empty(recipe.Charge.Steps);
        Assert.Empty(recipe.Targets);
    }

    [Fact]
    public void Required_keys_that_are_missing_are_told_at_once()
    {
        AssertProblems(
            "title: nothing else\n",
            "a.yaml: 'format' is missing",
            "a.yaml: 'resin' is missing",
            "a.yaml: 'led' is missing",
            "a.yaml: 'layers' is missing"
        );
        AssertProblems(
            "format: 1\nresin: r\nled:\n  count: 2\nlayers:\n  - name: glow\n    pigment: p\n",
            "a.yaml:4:3: " + RecipeTexts.LedIsNotSaid,
            "a.yaml:6:5: " + ProblemTexts.Missing("depth_mm", "layers.glow"),
            "a.yaml:7:14: " + ProblemTexts.Missing("loading_percent", "layers.glow")
        );
    }

    [Fact]
    public void Several_errors_are_told_in_line_order_with_CRLF_too()
    {
        string text = """
            format: 2
            resin: Epoxy Clear
            led:
              material: warm-white-3000
              cuont: 4
            board: white-mask
            layers:
              - depth_in: 0.1
              - depth_mm: -1
                pigment: green-aluminate
                loading_percent: 85
            colour: red
            """;
        string[] expected =
        [
            "a.yaml:1:9: format is 2; allowed: 1",
            "a.yaml:2:8: " + RecipeTexts.NotAMaterial("resin", "Epoxy Clear"),
            "a.yaml:5:3: unknown key 'cuont'; did you mean 'count'?",
            "a.yaml:6:8: " + ProblemTexts.WrongShape("board", "one value", "keys with values"),
            "a.yaml:8:5: " + ProblemTexts.Missing("depth_mm", "layers.layer-1"),
            "a.yaml:8:5: unknown key 'depth_in'; write depth_mm: 2.54",
            "a.yaml:9:15: depth_mm is -1; allowed: 0.01 to 200",
            "a.yaml:11:22: loading_percent is 85; allowed: 0 to 80",
            "a.yaml:12:1: unknown key 'colour'; did you mean 'board'?",
        ];
        foreach (string lineEnd in new[] { "\n", "\r\n" })
        {
            var problems = Sample.Read(text.ReplaceLineEndings(lineEnd)).Problems;
            Assert.Equal(expected[..^1], problems.SkipLast(1).Select(p => p.ToString()));
            Assert.StartsWith(
                "a.yaml:12:1: unknown key 'colour'",
                problems[^1].ToString(),
                StringComparison.Ordinal
            );
        }
    }

    [Theory]
    [InlineData("figures_format")]
    [InlineData("material_format")]
    public void Another_kind_of_file_is_told_once(string key) =>
        AssertProblems($"{key}: 1\nname: x\n", "a.yaml:1:1: " + RecipeTexts.OtherKindOfFile(key));

    [Theory]
    [InlineData("White Mask")]
    [InlineData("white_mask")]
    [InlineData("white-mask.yml")]
    [InlineData("boards/white")]
    [InlineData("-white")]
    public void A_material_is_a_word_or_a_path_to_YAML(string name)
    {
        // 'white-mask.yml' is a word with a point in it as far as the recipe knows.
        bool isWord = name == "white-mask.yml";
        var document = Sample.With($"board:\n  material: {name}\n");
        Assert.Equal(
            isWord ? [] : [$"a.yaml:10:13: {RecipeTexts.NotAMaterial("material", name)}"],
            document.Problems.Select(p => p.ToString())
        );
    }

    [Fact]
    public void Pour_tolerances_need_their_quantity() =>
        AssertProblems(
            Sample.OneLayer + "pour:\n  width_tolerance_mm: 1\n",
            "a.yaml:10:23: " + RecipeTexts.Needs("width_tolerance_mm", "width_mm")
        );

    [Fact]
    public void A_pour_runs_out_within_its_top_layer() =>
        AssertProblems(
            Sample.OneLayer + "pour:\n  runs_out_mm: 5\n",
            "a.yaml:10:16: " + RecipeTexts.RunsOutOfTheLayer(5, 2.5)
        );

    [Fact]
    public void Criteria_are_words_listed_once() =>
        AssertProblems(
            Sample.OneLayer + "criteria: [jis9107-jb, jis9107-jb, J B]\n",
            "a.yaml:9:24: " + RecipeTexts.ListedTwice("criteria", "jis9107-jb"),
            "a.yaml:9:36: " + RecipeTexts.NotAMaterial("criteria", "J B")
        );

    [Fact]
    public void A_later_stage_can_complain_at_the_place_of_any_key()
    {
        var recipe = Sample.Read(Sample.OneLayer).Recipe!;
        Assert.Equal(new Place(7, 14), recipe.PlaceOf("layers.layer-1.pigment"));
        Assert.Equal(new Place(4, 3), recipe.PlaceOf("led.drive_ma"));
        Assert.Null(recipe.PlaceOf("pour.length_mm"));
        Assert.Equal("a.yaml:4:13: unknown", recipe.ProblemAt("led.material", "unknown").ToString());
    }

    [Fact]
    public void A_file_that_cannot_be_read_keeps_its_kind_of_problem()
    {
        var document = RecipeDocument.Read(DocumentFile.Read("no/such/recipe.yaml"));
        Assert.Null(document.Recipe);
        Assert.Equal(ProblemKind.FileAccess, Assert.Single(document.Problems).Kind);
    }

    [Fact]
    public void A_recipe_with_lines_lost_swapped_or_spoilt_is_read_or_has_a_problem()
    {
        string[] junk = ["[]", "{}", "~", "-1", "1e999", "x", "[1, 2]", "{a: 1}", "|\n   z"];
        var lines = File.ReadAllLines(Path.Combine(Sample.Folder(), "stair-edge.yaml"));
        var random = new Random(11);
        for (int i = 0; i < 1000; i++)
        {
            var spoilt = lines.ToArray();
            for (int change = random.Next(1, 4); change > 0; change--)
            {
                int line = random.Next(spoilt.Length);
                int colon = spoilt[line].IndexOf(": ", StringComparison.Ordinal);
                spoilt[line] = random.Next(4) switch
                {
                    0 => "",
                    1 => " " + spoilt[line],
                    2 => spoilt[random.Next(spoilt.Length)],
                    _ => colon < 0
                        ? spoilt[line]
                        : spoilt[line][..(colon + 2)] + junk[random.Next(junk.Length)],
                };
            }
            var document = Sample.Read(string.Join('\n', spoilt));
            Assert.Equal(document.Recipe is null, document.Problems.Any(p => p.Severity == Severity.Error));
        }
    }

    internal static void AssertProblems(string text, params string[] expected)
    {
        var document = Sample.Read(text);
        Assert.Equal(expected, document.Problems.Select(p => p.ToString()));
        Assert.Null(document.Recipe);
    }
}
