using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using GlowMix.Predictions;

namespace GlowMix.Console.Tables;

/// <summary>How all JSON of the program is written: indented, line feeds, a line end at the end.</summary>
internal static class JsonText
{
    private static readonly JsonWriterOptions options = new()
    {
        Indented = true,
        NewLine = "\n",
        // Letters such as µ and ² as they are: the text is read by people too, and is not put into a web page.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>What an action writes, as text.</summary>
    public static string Of(Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>(16384);
        using (var json = new Utf8JsonWriter(buffer, options))
        {
            write(json);
        }
        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    /// <summary>An array in the order given, as text.</summary>
    public static string OfEach<T>(IEnumerable<T> items, Action<Utf8JsonWriter, T> write) =>
        Of(json =>
        {
            json.WriteStartArray();
            foreach (var item in items)
            {
                write(json, item);
            }
            json.WriteEndArray();
        });

    /// <summary>The warnings of figures, under their own name.</summary>
    public static void WriteWarnings(this Utf8JsonWriter json, IEnumerable<Warning> warnings)
    {
        json.WriteStartArray("warnings");
        foreach (var warning in warnings)
        {
            json.WriteStartObject();
            json.WriteString("code", warning.Code);
            json.WriteString("figure", warning.Figure);
            json.WriteString("text", warning.Text);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    /// <summary>A number, or null where it does not exist.</summary>
    public static void WriteNumberOrNull(this Utf8JsonWriter json, string name, double? value)
    {
        if (value is double number)
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
