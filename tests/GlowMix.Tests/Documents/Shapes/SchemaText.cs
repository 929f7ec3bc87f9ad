using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using GlowMix.Documents.Shapes;
using GlowMix.Materials;
using GlowMix.Materials.Shapes;

namespace GlowMix.Tests.Documents.Shapes;

/// <summary>A shape as a JSON schema, 2020-12, for editors that complete and check.</summary>
internal sealed class SchemaText
{
    private const string Draft = "https://json-schema.org/draft/2020-12/schema";

    private readonly Utf8JsonWriter json;

    private SchemaText(Utf8JsonWriter json) => this.json = json;

    /// <summary>Of a file of one shape.</summary>
    public static string Of(string title, MappingShape shape) =>
        Written(schema =>
        {
            schema.json.WriteString("$schema", Draft);
            schema.json.WriteString("title", title);
            schema.Body(shape);
        });

    /// <summary>Of a material's file: the shape follows from its kind.</summary>
    public static string OfMaterials(string title) =>
        Written(schema =>
        {
            var json = schema.json;
            json.WriteString("$schema", Draft);
            json.WriteString("title", title);
            json.WriteString("type", "object");
            schema.Strings("required", ["material_format", "kind"]);
            json.WriteStartObject("properties");
            json.WriteStartObject("kind");
            schema.Strings("enum", Enum.GetValues<MaterialKind>().Select(k => k.Word()));
            json.WriteEndObject();
            json.WriteEndObject();
            json.WriteStartArray("allOf");
            foreach (var kind in Enum.GetValues<MaterialKind>())
            {
                json.WriteStartObject();
                json.WriteStartObject("if");
                json.WriteStartObject("properties");
                json.WriteStartObject("kind");
                json.WriteString("const", kind.Word());
                json.WriteEndObject();
                json.WriteEndObject();
                schema.Strings("required", ["kind"]);
                json.WriteEndObject();
                json.WriteStartObject("then");
                schema.Body(MaterialShapes.Of(kind));
                json.WriteEndObject();
                json.WriteEndObject();
            }
            json.WriteEndArray();
        });

    private static string Written(Action<SchemaText> write)
    {
        using var stream = new MemoryStream();
        var options = new JsonWriterOptions
        {
            Indented = true,
            NewLine = "\n",
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        };
        using (var json = new Utf8JsonWriter(stream, options))
        {
            json.WriteStartObject();
            write(new(json));
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private void Body(Shape shape)
    {
        switch (shape)
        {
            case NumberShape number:
                Number(number);
                break;
            case TextShape text:
                Text(text);
                break;
            case ListShape list:
                json.WriteString("type", "array");
                json.WriteNumber("minItems", list.Least);
                if (list.Most is int most)
                {
                    json.WriteNumber("maxItems", most);
                }
                json.WriteStartObject("items");
                Body(list.Item);
                json.WriteEndObject();
                break;
            case TableShape table:
                json.WriteString("type", "object");
                json.WriteNumber("minProperties", 1);
                json.WriteStartObject("propertyNames");
                json.WriteString("pattern", @"^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$");
                json.WriteEndObject();
                json.WriteStartObject("additionalProperties");
                Body(table.Value);
                json.WriteEndObject();
                break;
            case EitherShape either:
                json.WriteStartArray("anyOf");
                foreach (var one in either.Shapes)
                {
                    json.WriteStartObject();
                    Body(one);
                    json.WriteEndObject();
                }
                json.WriteEndArray();
                break;
            case MappingShape mapping:
                Mapping(mapping);
                break;
            default:
                throw new NotSupportedException(shape.GetType().Name);
        }
    }

    private void Number(NumberShape number)
    {
        if (!number.Only.IsEmpty)
        {
            json.WriteStartArray("enum");
            foreach (double only in number.Only)
            {
                json.WriteNumberValue(only);
            }
            json.WriteEndArray();
            return;
        }
        json.WriteString("type", number.IsWhole ? "integer" : "number");
        if (double.IsFinite(number.Range.Least))
        {
            json.WriteNumber(
                number.Range.LeastIsOutside ? "exclusiveMinimum" : "minimum",
                number.Range.Least
            );
        }
        if (double.IsFinite(number.Range.Most))
        {
            json.WriteNumber("maximum", number.Range.Most);
        }
    }

    private void Text(TextShape text)
    {
        if (!text.Only.IsEmpty)
        {
            Strings("enum", text.Only);
            return;
        }
        if (!text.Known.IsEmpty)
        {
            json.WriteStartArray("anyOf");
            json.WriteStartObject();
            Strings("enum", text.Known);
            json.WriteEndObject();
            json.WriteStartObject();
            AnyText();
            json.WriteEndObject();
            json.WriteEndArray();
            return;
        }
        AnyText();
    }

    // What a text without quotes looks like to a reader of YAML: 'title: 2026', 'title: yes'.
    private void AnyText() => Strings("type", ["string", "number", "boolean"]);

    private void Mapping(MappingShape mapping)
    {
        json.WriteString("type", "object");
        var needed = mapping.Keys.Where(k => k.IsNeeded).Select(k => k.Name).ToList();
        var always = mapping.Lender is null ? needed : [.. needed.Take(3)];
        if (always.Count > 0)
        {
            Strings("required", always);
        }
        if (mapping.Keys.Length > 0)
        {
            json.WriteStartObject("properties");
            foreach (var key in mapping.Keys)
            {
                json.WriteStartObject(key.Name);
                json.WriteString("description", key.Description);
                Body(key.Shape);
                json.WriteEndObject();
            }
            json.WriteEndObject();
        }
        if (mapping.OtherKeys is { } other)
        {
            json.WriteStartObject("additionalProperties");
            Body(other);
            json.WriteEndObject();
        }
        else
        {
            json.WriteBoolean("additionalProperties", false);
        }
        Rules(mapping, needed);
    }

    private void Rules(MappingShape mapping, List<string> needed)
    {
        if (mapping.OneNeededOf.IsEmpty && mapping.Exclusive.IsEmpty && mapping.Lender is null)
        {
            return;
        }
        json.WriteStartArray("allOf");
        foreach (var keys in mapping.OneNeededOf)
        {
            json.WriteStartObject();
            json.WriteStartArray("anyOf");
            foreach (string key in keys)
            {
                json.WriteStartObject();
                Strings("required", [key]);
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteEndObject();
        }
        foreach (var (key, excluded) in mapping.Exclusive)
        {
            json.WriteStartObject();
            json.WriteStartObject("not");
            Strings("required", [key, excluded]);
            json.WriteEndObject();
            json.WriteEndObject();
        }
        if (mapping.Lender is { } lender)
        {
            json.WriteStartObject();
            json.WriteStartObject("if");
            Strings("required", [lender]);
            json.WriteEndObject();
            json.WriteStartObject("else");
            Strings("required", needed);
            json.WriteEndObject();
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private void Strings(string name, IEnumerable<string> values)
    {
        json.WriteStartArray(name);
        foreach (string value in values)
        {
            json.WriteStringValue(value);
        }
        json.WriteEndArray();
    }
}
