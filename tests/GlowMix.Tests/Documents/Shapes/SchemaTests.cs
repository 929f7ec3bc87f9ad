using System.Text.Json.Nodes;
using GlowMix.Documents;
using GlowMix.Documents.Shapes;
using GlowMix.Materials;
using GlowMix.Materials.Calibrations;
using GlowMix.Materials.Shapes;
using GlowMix.Predictions.Kept;
using GlowMix.Readings.Sets;
using GlowMix.Recipes;
using GlowMix.Tests.Documents.Tidying;
using GlowMix.Tests.Materials;
using GlowMix.Tests.Materials.Calibrations;
using GlowMix.Tests.Predictions;
using GlowMix.Tests.Recipes;

namespace GlowMix.Tests.Documents.Shapes;

/// <summary>
/// What editors check is what the program reads: a schema never refuses what a reader takes, and of single values, unknown keys
/// and missing keys it takes nothing that a reader refuses.
/// </summary>
public class SchemaTests
{
    private const string Recipe = "recipe.schema.json";
    private const string Material = "material.schema.json";

    public static TheoryData<MaterialKind> Kinds => [.. Enum.GetValues<MaterialKind>()];

    [Fact]
    public void The_schemas_beside_the_data_are_those_of_the_shapes()
    {
        foreach (var (name, text) in SchemaFiles.Texts)
        {
            Assert.Equal(text, File.ReadAllText(SchemaFiles.PathOf(name)));
        }
    }

    [Fact(Explicit = true)]
    public void Write_the_schemas_anew()
    {
        foreach (var (name, text) in SchemaFiles.Texts)
        {
            File.WriteAllText(SchemaFiles.PathOf(name), text);
        }
    }

    [Fact]
    public void Every_shipped_file_is_accepted()
    {
        foreach (string file in Directory.GetFiles(Sample.Folder(), "*.yaml"))
        {
            string schema = file.EndsWith(".figures.yaml", StringComparison.Ordinal)
                ? "figures.schema.json"
                : Recipe;
            Assert.True(SchemaFiles.Accepts(schema, SchemaFiles.NodeOf(File.ReadAllText(file), file)), file);
        }
        string readings = Path.Combine(Sample.Folder(), "readings", "stair-edge.readings.yaml");
        Assert.True(
            SchemaFiles.Accepts(
                "readings.schema.json",
                SchemaFiles.NodeOf(File.ReadAllText(readings), readings)
            )
        );
        foreach (var (file, text) in Enum.GetValues<MaterialKind>().SelectMany(ShippedOf))
        {
            Assert.True(SchemaFiles.Accepts(Material, SchemaFiles.NodeOf(text, file)), file);
        }
    }

    [Fact]
    public void An_untidy_recipe_is_accepted_like_a_tidy_one()
    {
        string path = Path.Combine(Sample.Folder(), "stair-edge.yaml");
        var root = Document.Read(File.ReadAllText(path), path).Root!;
        for (int seed = 1; seed <= 10; seed++)
        {
            Assert.True(SchemaFiles.Accepts(Recipe, SchemaFiles.NodeOf(UntidyText.Of(root, seed))));
        }
    }

    [Fact]
    public void Kept_figures_are_accepted_and_a_strange_figure_is_not()
    {
        var document = RecipeDocument.Read(Sample.OneLayer, "a.yaml");
        var outcome = TestRecipe.Predictor.Predict(document);
        string text = KeptFiguresText.Of(
            KeptFigures.Of(outcome.Prediction!, "a.yaml", TestRecipe.Predictor.InputsOf(document))
        );
        Assert.True(SchemaFiles.Accepts("figures.schema.json", SchemaFiles.NodeOf(text)));
        Assert.False(
            SchemaFiles.Accepts(
                "figures.schema.json",
                SchemaFiles.NodeOf(text.Replace("  lit.cct_k:", "  lit.cct:", StringComparison.Ordinal))
            )
        );
    }

    [Fact]
    public void A_number_of_a_recipe_is_refused_by_both_or_by_none()
    {
        string path = Path.Combine(Sample.Folder(), "stair-edge.yaml");
        string text = File.ReadAllText(path);
        int checkedCount = 0;
        foreach (var key in RecipeKeys.All.Where(k => k.IsNumber && k.Path != "format"))
        {
            string full = key
                .Path.Replace("layers.*", "layers.glow", StringComparison.Ordinal)
                .Replace("steps.*", "steps.2", StringComparison.Ordinal)
                .Replace(".*", ".1", StringComparison.Ordinal);
            foreach (double value in Around(key.Range))
            {
                var changed = RecipeDocument.Read(Fitting(text, key), path).With(full, value);
                string last = key.Name;
                bool isRead = !changed.Problems.Any(p =>
                    p.Severity == Severity.Error
                    && (
                        p.Text.StartsWith(
                            $"{last} is {NumberText.Write(value)}; allowed: ",
                            StringComparison.Ordinal
                        )
                        || p.Text.StartsWith(
                            $"{last} is {NumberText.Write(value)}; needed: a whole",
                            StringComparison.Ordinal
                        )
                    )
                );
                var node = SchemaFiles.NodeOf(changed.Text);
                Assert.True(isRead == SchemaFiles.Accepts(Recipe, node), $"{full}: {value} read {isRead}");
                checkedCount++;
            }
        }
        Assert.InRange(checkedCount, 150, 400);
    }

    [Fact]
    public void Missing_unknown_and_misshapen_keys_are_refused_by_both()
    {
        string path = Path.Combine(Sample.Folder(), "stair-edge.yaml");
        var root = SchemaFiles.NodeOf(File.ReadAllText(path), path);
        Assert.True(Reads(root));
        int refused = 0;
        foreach (var changed in Mutations(root, RecipeShape.Whole))
        {
            bool isRead = Reads(changed);
            bool isAccepted = SchemaFiles.Accepts(Recipe, changed);
            Assert.True(isAccepted || !isRead, $"the schema refuses what is read: {changed.ToJsonString()}");
            refused += isAccepted ? 0 : 1;
        }
        Assert.InRange(refused, 80, 1000);

        static bool Reads(JsonNode node) =>
            RecipeDocument.Read(node.ToJsonString(), "a.yaml").Recipe is not null;
    }

    [Theory, MemberData(nameof(Kinds))]
    public void What_the_schema_says_of_a_material_is_what_is_read(MaterialKind kind)
    {
        var (file, text) = ShippedOf(kind).First();
        var root = SchemaFiles.NodeOf(text, file);
        Assert.True(Reads(root), file);
        int refused = 0;
        foreach (var changed in Mutations(root, MaterialShapes.Of(kind)))
        {
            bool isRead = Reads(changed);
            bool isAccepted = SchemaFiles.Accepts(Material, changed);
            Assert.True(isAccepted || !isRead, $"the schema refuses what is read: {changed.ToJsonString()}");
            refused += isAccepted ? 0 : 1;
        }
        Assert.True(refused > 5, $"{kind}: {refused} refused");

        bool Reads(JsonNode node) =>
            new Shelf(new InMemoryMaterials(("x.yaml", node.ToJsonString()))).Any(kind, "x.yaml").Material
                is not null;
    }

    [Fact]
    public void What_the_schema_says_of_a_set_of_readings_is_what_is_read()
    {
        const string Text = """
            readings_format: 1
            corrected: yes
            comparable_percent: 5
            readings:
              - file: bare.txt
                state: bare
              - file: potted.txt
                state: potted
                depth_mm: 3
              - file: decay.txt
                state: decay
                tile: 2
                charge:
                  steps:
                    - light: daylight-d65
                      illuminance_lx: 1000
                      minutes: 5
                darkness_temperature_c: 15
                noise_percent: 3
                display_step: 0.1
                dark_from_min: 2
                geometry: contact-mask
                hole_mm: 5
                sensor_mm: 8
              - file: far.txt
                state: decay
                loading_percent: 12.5
                geometry: disc-at
                disc_mm: 50
                distance_mm: 100
            """;
        HeldAlike(
            "readings.schema.json",
            SchemaFiles.NodeOf(Text),
            ReadingsSetShape.Whole,
            text => ReadingsSetFile.Read(text).Set is not null,
            leastRefused: 100
        );
    }

    [Fact]
    public void What_the_schema_says_of_a_calibration_is_what_is_read() =>
        HeldAlike(
            "calibration.schema.json",
            // A hash of digits alone would be a number here.
            SchemaFiles.NodeOf(
                CalibrationText
                    .Of(SampleCalibration.Whole)
                    .Replace(new string('0', 64), new string('b', 64), StringComparison.Ordinal)
            ),
            CalibrationShape.Whole,
            text => CalibrationFile.Read(text).Calibration is not null,
            leastRefused: 150
        );

    [Theory]
    [InlineData("led:\n  cct_k: 3000\n  ra: 80\n  flux_lm: 20\n  at_ma: 60")]
    [InlineData("led:\n  spectrum: a.csv\n  flux_lm: 20\n  at_ma: 60")]
    [InlineData("title: 2026\nled:\n  material: my/led.yaml")]
    [InlineData("title: true\ntargets: []\ncriteria: []\nled:\n  material: mine")]
    public void Other_ways_to_say_it_are_accepted(string lines)
    {
        string text = $"format: 1\nresin: mine\n{lines}\nlayers:\n  - depth_mm: 2\n";
        Assert.NotNull(RecipeDocument.Read(text, "a.yaml").Recipe);
        Assert.True(SchemaFiles.Accepts(Recipe, SchemaFiles.NodeOf(text)));
    }

    [Theory]
    [InlineData("white:\n  cct_k: 2900\n  ra: 82\n  source: label\n", true)]
    [InlineData("white:\n  cct_k: 2900\n  source: label\n", true)]
    [InlineData("white:\n  cct_k: 900\n  source: label\n", false)]
    [InlineData("white:\n  ra: 82\n  source: label\n", false)]
    [InlineData("", false)]
    [InlineData(
        "white:\n  cct_k: 2900\n  source: label\ndie_peak_nm:\n  value: 450\n  source: label\n",
        false
    )]
    public void An_LED_may_tell_its_white_instead_of_its_bands(string white, bool isRead)
    {
        string text = ShippedOf(MaterialKind.Led)
            .First(f => f.File.Contains("warm-white-3000", StringComparison.Ordinal))
            .Text;
        int bands = text.IndexOf("die_peak_nm:", StringComparison.Ordinal);
        int flux = text.IndexOf("flux_lm:", StringComparison.Ordinal);
        text = text[..bands] + white + text[flux..];
        var read = new Shelf(new InMemoryMaterials(("x.yaml", text))).Any(MaterialKind.Led, "x.yaml");
        Assert.True(isRead == read.Material is not null, string.Join('\n', read.Problems));
        Assert.Equal(isRead, SchemaFiles.Accepts(Material, SchemaFiles.NodeOf(text)));
    }

    // Of every change to a good document: what is read is accepted, and what the shape tells is refused.
    private static void HeldAlike(
        string schema,
        JsonNode root,
        MappingShape shape,
        Func<FileText, bool> reads,
        int leastRefused
    )
    {
        Assert.True(IsRead(root));
        Assert.True(SchemaFiles.Accepts(schema, root));
        int refused = 0;
        foreach (var changed in Mutations(root, shape))
        {
            bool isAccepted = SchemaFiles.Accepts(schema, changed);
            Assert.True(
                isAccepted || !IsRead(changed),
                $"the schema refuses what is read: {changed.ToJsonString()}"
            );
            refused += isAccepted ? 0 : 1;
        }
        Assert.InRange(refused, leastRefused, 2000);

        bool IsRead(JsonNode node) => reads(new FileText("a.yaml", node.ToJsonString()));
    }

    // On the ends, and a little beyond.
    private static IEnumerable<double> Around(NumberRange range)
    {
        foreach (double end in new[] { range.Least, range.Most }.Where(double.IsFinite))
        {
            double little = Math.Max(1e-9, Math.Abs(end) * 1e-9);
            yield return end - little;
            yield return end;
            yield return end + little;
        }
    }

    // Of keys that exclude each other the one in question stays.
    private static string Fitting(string text, RecipeKey key) =>
        key.Path is "led.count" or "led.drive_ma" or "led.drive_tolerance_percent" ? text
        : key.Section == "led"
            ? text.Replace(
                "material: warm-white-3000",
                "cct_k: 3000\n  flux_lm: 20\n  at_ma: 60",
                StringComparison.Ordinal
            )
        : key.Name is "grain_from_um" or "grain_to_um"
            ? text.Replace("    grain_median_um: 40", "    # ", StringComparison.Ordinal)
        : text;

    // Each key taken away, given a value of another kind or one out of range; a strange key beside each.
    private static IEnumerable<JsonNode> Mutations(JsonNode root, MappingShape shape) =>
        PathsOf(root, shape, []).SelectMany(at => Changes(root, at.Path, at.Shape));

    private static IEnumerable<(object[] Path, Shape Shape)> PathsOf(
        JsonNode? node,
        Shape shape,
        object[] path
    )
    {
        if (path.Length > 0)
        {
            yield return (path, shape);
        }
        var below = (node, shape) switch
        {
            (JsonObject o, MappingShape m) => o.SelectMany(p =>
                (m.Find(p.Key)?.Shape ?? m.OtherKeys) is { } inner
                    ? PathsOf(p.Value, inner, [.. path, p.Key])
                    : []
            ),
            (JsonArray a, ListShape l) => a.SelectMany((item, i) => PathsOf(item, l.Item, [.. path, i])),
            (JsonObject o, TableShape t) => PathsOf(o.First().Value, t.Value, [.. path, o.First().Key]),
            _ => [],
        };
        foreach (var found in below)
        {
            yield return found;
        }
    }

    private static IEnumerable<JsonNode> Changes(JsonNode root, object[] path, Shape shape)
    {
        yield return Changed(root, path, (parent, key) => Remove(parent, key));
        yield return Changed(root, path, (parent, key) => Set(parent, key, new JsonArray(1, 2)));
        yield return Changed(
            root,
            path,
            (parent, key) => Set(parent, key, new JsonObject { ["strange"] = 1 })
        );
        yield return Changed(root, path, (parent, key) => Set(parent, key, JsonValue.Create("strange word")));
        if (path[^1] is string)
        {
            yield return Changed(root, path, (parent, _) => ((JsonObject)parent)["strange_key"] = 1);
        }
        if (shape is NumberShape number)
        {
            foreach (double value in Around(number.Range))
            {
                yield return Changed(root, path, (parent, key) => Set(parent, key, JsonValue.Create(value)));
            }
        }
    }

    private static JsonNode Changed(JsonNode root, object[] path, Action<JsonNode, object> change)
    {
        var copy = root.DeepClone();
        JsonNode at = copy;
        foreach (object step in path[..^1])
        {
            at = step is int i ? at[i]! : at[(string)step]!;
        }
        change(at, path[^1]);
        return copy;
    }

    private static void Remove(JsonNode parent, object key)
    {
        if (key is int i)
        {
            ((JsonArray)parent).RemoveAt(i);
        }
        else
        {
            ((JsonObject)parent).Remove((string)key);
        }
    }

    private static void Set(JsonNode parent, object key, JsonNode value)
    {
        if (key is int i)
        {
            parent[i] = value;
        }
        else
        {
            parent[(string)key] = value;
        }
    }

    private static IEnumerable<(string File, string Text)> ShippedOf(MaterialKind kind) =>
        Directory
            .GetFiles(Path.Combine(Sample.Folder(), "..", "data", kind.Folder()), "*.yaml")
            .Order(StringComparer.Ordinal)
            .Select(file => (file, File.ReadAllText(file)));
}
