using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using GlowMix.Documents;

namespace GlowMix.Readings.Files;

/// <summary>
/// Readings kept as JSON, made into a table: pairs of numbers, objects of equal keys, arrays side by side, or numbers under
/// their wavelengths.
/// </summary>
internal static partial class JsonTables
{
    private const int FewestRows = 2;
    private const int DeepestLevel = 6;

    private static readonly JsonDocumentOptions Lax = new()
    {
        AllowTrailingCommas = true,
        CommentHandling = JsonCommentHandling.Skip,
        MaxDepth = 32,
    };

    /// <summary>Finds the table.</summary>
    /// <param name="text">The text.</param>
    /// <param name="table">Null where there is none, or several.</param>
    /// <param name="fault">Where the text begins like JSON and breaks off or has a fault; null if it does not.</param>
    /// <returns>The text is JSON, without a fault.</returns>
    public static bool IsJson(string text, out JsonTable? table, out Place? fault)
    {
        (table, fault) = (null, null);
        var start = text.AsSpan().TrimStart();
        if (start is not ['{' or '[', .. var rest])
        {
            return false;
        }
        try
        {
            using var document = JsonDocument.Parse(OfNumbers(text), Lax);
            var tables = new List<JsonTable>();
            Collect(document.RootElement, 0, tables);
            table = tables is [var only] ? only : null;
            return true;
        }
        catch (JsonException e)
        {
            table = OfLines(text);
            // '[Header]' and '[450, 0.8]' begin other files.
            if (
                table is null
                && (
                    start[0] == '{'
                        ? rest.TrimStart() is ['"', ..]
                        : rest.TrimStart() is ['"' or '{' or '[', ..]
                )
                && e is { LineNumber: { } line, BytePositionInLine: { } column }
            )
            {
                fault = new((int)line + 1, (int)column + 1);
            }
            return table is not null;
        }
    }

    // Many programs write NaN, which JSON does not know.
    private static string OfNumbers(string text) =>
        text.Contains("NaN", StringComparison.Ordinal) || text.Contains("Infinity", StringComparison.Ordinal)
            ? NoNumber().Replace(text, "null")
            : text;

    [GeneratedRegex(@"(?<=[:,\[]\s*)(?:NaN|-?Infinity)(?=\s*[,\]}])")]
    private static partial Regex NoNumber();

    // One object a line.
    private static JsonTable? OfLines(string text)
    {
        string[] lines = text.Split(
            '\n',
            StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries
        );
        if (lines.Length < FewestRows || !Array.TrueForAll(lines, l => l is ['{', .., '}']))
        {
            return null;
        }
        try
        {
            using var document = JsonDocument.Parse(OfNumbers($"[{string.Join(',', lines)}]"), Lax);
            return OfObjects([.. document.RootElement.EnumerateArray()]);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static void Collect(JsonElement element, int level, List<JsonTable> tables)
    {
        if (level > DeepestLevel)
        {
            return;
        }
        if (TableOf(element) is { } table)
        {
            tables.Add(table);
            return;
        }
        if (element.ValueKind == JsonValueKind.Object)
        {
            foreach (JsonProperty property in element.EnumerateObject())
            {
                Collect(property.Value, level + 1, tables);
            }
        }
        else if (element.ValueKind == JsonValueKind.Array)
        {
            foreach (JsonElement item in element.EnumerateArray())
            {
                Collect(item, level + 1, tables);
            }
        }
    }

    private static JsonTable? TableOf(JsonElement element)
    {
        if (element.ValueKind == JsonValueKind.Array)
        {
            JsonElement[] items = [.. element.EnumerateArray()];
            return items.Length < FewestRows ? null
                : Array.TrueForAll(items, i => i.ValueKind == JsonValueKind.Object) ? OfObjects(items)
                : !Array.TrueForAll(items, i => i.ValueKind == JsonValueKind.Array) ? null
                : items.Length == FewestRows && items[0].GetArrayLength() > FewestRows
                    ? OfColumns([.. items.Select(i => ("", i))])
                : OfRows(items);
        }
        if (element.ValueKind != JsonValueKind.Object)
        {
            return null;
        }
        JsonProperty[] all = [.. element.EnumerateObject()];
        JsonProperty[] arrays = [.. all.Where(p => IsOfNumbers(p.Value))];
        return arrays.Length >= 2
            ? OfColumns([.. arrays.Select(p => (p.Name, p.Value))], UnitsIn(all))
            : OfKeys(all);
    }

    private static JsonTable? OfRows(JsonElement[] rows)
    {
        int width = rows[0].GetArrayLength();
        return width < 2 || !Array.TrueForAll(rows, r => r.GetArrayLength() == width)
            ? null
            : Table("", rows.Select(r => r.EnumerateArray().AsEnumerable()));
    }

    private static JsonTable? OfObjects(JsonElement[] rows)
    {
        string[] names = [.. rows[0].EnumerateObject().Where(p => IsNumber(p.Value)).Select(p => p.Name)];
        return
            names.Length < 2
            || !Array.TrueForAll(
                rows,
                r =>
                    r.ValueKind == JsonValueKind.Object
                    && Array.TrueForAll(names, n => r.TryGetProperty(n, out _))
            )
            ? null
            : Table(string.Join('\t', names), rows.Select(r => names.Select(r.GetProperty)));
    }

    private static JsonTable? OfColumns((string Name, JsonElement Values)[] columns, string above = "")
    {
        JsonElement[][] values = [.. columns.Select(c => c.Values.EnumerateArray().ToArray())];
        int rows = values[0].Length;
        string names = string.Join('\t', columns.Select(c => c.Name));
        return rows < FewestRows || !Array.TrueForAll(values, v => v.Length == rows)
            ? null
            : Table(above + names, Enumerable.Range(0, rows).Select(i => values.Select(v => v[i])));
    }

    // { "380": 0.1, "385": 0.2 }.
    private static JsonTable? OfKeys(JsonProperty[] all)
    {
        JsonProperty[] rows =
        [
            .. all.Where(p =>
                p.Value.ValueKind == JsonValueKind.Number && NumberCell.TryRead(p.Name, '.', out _)
            ),
        ];
        return rows.Length < FewestRows
            ? null
            : new(string.Concat(rows.Select(p => $"{p.Name}\t{p.Value.GetRawText()}\n")), 0);
    }

    private static JsonTable Table(string header, IEnumerable<IEnumerable<JsonElement>> rows)
    {
        var text = new StringBuilder(header).Append('\n');
        foreach (var row in rows)
        {
            text.AppendJoin('\t', row.Select(Cell)).Append('\n');
        }
        return new(text.ToString(), header.Count(c => c == '\n') + 1);
    }

    private static string Cell(JsonElement value) =>
        value.ValueKind switch
        {
            JsonValueKind.Number => value.GetRawText(),
            JsonValueKind.String => value.GetString()!.ReplaceLineEndings(" ").Replace('\t', ' '),
            JsonValueKind.Null => "null",
            _ => "NaN",
        };

    private static string UnitsIn(JsonProperty[] all) =>
        string.Concat(
            all.Where(p => p.Value.ValueKind == JsonValueKind.String)
                .Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Name}: {Cell(p.Value)}\n"))
        );

    private static bool IsNumber(JsonElement value) =>
        value.ValueKind is JsonValueKind.Number or JsonValueKind.Null
        || (value.ValueKind == JsonValueKind.String && NumberCell.TryRead(value.GetString(), '.', out _));

    private static bool IsOfNumbers(JsonElement value) =>
        value.ValueKind == JsonValueKind.Array
        && value.GetArrayLength() >= FewestRows
        && value.EnumerateArray().All(IsNumber);
}
