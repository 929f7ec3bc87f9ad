using GlowMix.Documents;
using GlowMix.Documents.Shapes;
using GlowMix.Documents.Tidying;
using GlowMix.Materials;
using GlowMix.Materials.Shapes;
using GlowMix.Predictions;
using GlowMix.Recipes;
using GlowMix.Tests.Recipes;

namespace GlowMix.Tests.Documents.Tidying;

/// <summary>Whatever a careless hand writes, tidying keeps what it says and where its remarks stand.</summary>
public class UntidyTextTests
{
    private const int Seeds = 40;

    public static TheoryData<string> Files =>
        [
            "recipes/stair-edge.yaml",
            "recipes/two-glow-plaque.yaml",
            "recipes/reel-label.yaml",
            "data/pigments/green-aluminate.yaml",
            "data/resins/epoxy-clear-slow.yaml",
            "data/leds/warm-white-3000.yaml",
            "data/criteria/iso17398-a.yaml",
        ];

    [Theory, MemberData(nameof(Files))]
    public void An_untidy_text_says_the_same_when_tidied_and_is_tidied_once(string file)
    {
        var original = Document.Read(File.ReadAllText(PathOf(file)), file);
        var shape = ShapeOf(file);
        var expected = Said(original.Root!, "").Order(StringComparer.Ordinal).ToList();
        for (int seed = 1; seed <= Seeds; seed++)
        {
            var untidy = Document.Read(UntidyText.Of(original.Root!, seed), $"{file} {seed}");
            Assert.Empty(untidy.Problems);
            string? tidy = TidyText.Of(untidy, shape);
            Assert.NotNull(tidy);
            var read = Document.Read(tidy, file);
            Assert.Equal(expected, Said(read.Root!, "").Order(StringComparer.Ordinal));
            Assert.Equal(tidy, TidyText.Of(read, shape));
            Assert.Equal(Remarks(untidy.Text), Remarks(tidy));
            RemarksStandWithTheirKeys(tidy);
            // Without its remarks and empty lines every hand's text becomes the same.
            Assert.Equal(KeysOf(TidyText.Of(original, shape)!), KeysOf(tidy));
        }
    }

    [Theory]
    [InlineData("clear-tread.yaml")]
    [InlineData("reel-label.yaml")]
    [InlineData("stair-edge.yaml")]
    public void A_tidied_recipe_is_predicted_as_before(string name)
    {
        string file = $"recipes/{name}";
        var original = Document.Read(File.ReadAllText(PathOf(file)), file);
        var predictor = new Predictor(new Shelf());
        string untidy = UntidyText.Of(original.Root!, seed: 7);
        string tidy = TidyText.Of(Document.Read(untidy, file), RecipeShape.Whole)!;
        Assert.Equal(FiguresOf(untidy), FiguresOf(tidy));

        IEnumerable<double?> FiguresOf(string text)
        {
            var outcome = predictor.Predict(RecipeDocument.Read(text, file));
            Assert.NotNull(outcome.Prediction);
            return FigureCatalogue.All.Select(f => outcome.Prediction.Figures[f]);
        }
    }

    private static void RemarksStandWithTheirKeys(string tidy)
    {
        string[] lines = tidy.Split('\n');
        for (int i = 0; i < lines.Length; i++)
        {
            int behind = lines[i].IndexOf("# behind ", StringComparison.Ordinal);
            if (behind >= 0)
            {
                Assert.Contains(lines[i][(behind + 9)..] + ":", lines[i], StringComparison.Ordinal);
            }
            int above = lines[i].IndexOf("# above ", StringComparison.Ordinal);
            if (above >= 0 && !lines[i].EndsWith(" item", StringComparison.Ordinal))
            {
                string next = lines.Skip(i + 1).First(l => !l.TrimStart().StartsWith('#') && l.Length > 0);
                Assert.StartsWith(
                    lines[i][(above + 8)..] + ":",
                    next.TrimStart(' ', '-'),
                    StringComparison.Ordinal
                );
            }
        }
    }

    private static IEnumerable<string> Remarks(string text) =>
        text.Split('\n')
            .Where(l => l.Contains("# ", StringComparison.Ordinal))
            .Select(l => l[l.LastIndexOf("# ", StringComparison.Ordinal)..].Trim())
            .Order(StringComparer.Ordinal);

    private static IEnumerable<string> KeysOf(string text) =>
        text.Split('\n').Select(l => l.Split('#')[0].TrimEnd().Split(": ")[0]).Where(l => l.Length > 0);

    private static IEnumerable<string> Said(DocumentNode node, string path) =>
        node switch
        {
            MappingNode mapping => mapping.Entries.SelectMany(e => Said(e.Value, $"{path}.{e.Key.Value}")),
            ListNode list => list.Items.SelectMany((item, i) => Said(item, $"{path}[{i}]")),
            ScalarNode scalar when NumberText.TryRead(scalar.Value, out double number) =>
            [
                $"{path} {NumberText.Write(number)}",
            ],
            _ => [$"{path} {((ScalarNode)node).Value}"],
        };

    private static MappingShape ShapeOf(string file) =>
        file.Split('/') switch
        {
            ["recipes", _] => RecipeShape.Whole,
            [_, var folder, _] => MaterialShapes.Of(
                Enum.GetValues<MaterialKind>().Single(k => k.Folder() == folder)
            ),
            _ => throw new ArgumentException(file),
        };

    private static string PathOf(string file) => Path.Combine(Sample.Folder(), "..", file);
}
