using System.Text.Json.Nodes;
using GlowMix.Documents;
using GlowMix.Materials.Calibrations;
using GlowMix.Predictions.Kept;
using GlowMix.Readings.Sets;
using GlowMix.Recipes;
using GlowMix.Tests.Recipes;
using Json.Schema;

namespace GlowMix.Tests.Documents.Shapes;

/// <summary>The schemas that travel in data/, made of the shapes, and what they say of a document.</summary>
internal static class SchemaFiles
{
    public static IReadOnlyDictionary<string, string> Texts { get; } =
        new Dictionary<string, string>
        {
            ["recipe.schema.json"] = SchemaText.Of("GlowMix recipe", RecipeShape.Whole),
            ["material.schema.json"] = SchemaText.OfMaterials("GlowMix material"),
            ["readings.schema.json"] = SchemaText.Of("GlowMix set of readings", ReadingsSetShape.Whole),
            ["calibration.schema.json"] = SchemaText.Of("GlowMix calibration", CalibrationShape.Whole),
            ["figures.schema.json"] = SchemaText.Of("GlowMix figures", KeptFiguresShape.Whole),
        };

    private static readonly Dictionary<string, JsonSchema> Read = Texts.ToDictionary(
        t => t.Key,
        t => JsonSchema.FromText(t.Value)
    );

    public static string PathOf(string name) => Path.Combine(Sample.Folder(), "..", "data", name);

    public static bool Accepts(string name, JsonNode? node) => Read[name].Evaluate(node).IsValid;

    /// <summary>As a reader of YAML 1.2 gives it to an editor.</summary>
    public static JsonNode? NodeOf(DocumentNode node) =>
        node switch
        {
            MappingNode mapping => new JsonObject(
                mapping.Entries.Select(e => KeyValuePair.Create(e.Key.Value, NodeOf(e.Value)))
            ),
            ListNode list => new JsonArray([.. list.Items.Select(NodeOf)]),
            ScalarNode { IsEmpty: true } => null,
            ScalarNode { IsPlain: true } scalar when NumberText.TryRead(scalar.Value, out double number) =>
                JsonValue.Create(number),
            ScalarNode scalar => JsonValue.Create(scalar.Value),
            _ => throw new NotSupportedException(),
        };

    public static JsonNode NodeOf(string text, string name = "a.yaml")
    {
        var document = Document.Read(text, name);
        Assert.Empty(document.Problems);
        return NodeOf(document.Root!)!;
    }
}
