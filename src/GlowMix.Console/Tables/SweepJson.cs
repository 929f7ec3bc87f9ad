using GlowMix.Choosing;

namespace GlowMix.Console.Tables;

/// <summary>A sweep for programs, unrounded.</summary>
internal static class SweepJson
{
    /// <summary>One object, with a line end.</summary>
    public static string Of(SweepTable table, string recipe) =>
        JsonText.Of(json =>
        {
            json.WriteStartObject();
            json.WriteString("recipe", recipe);
            json.WriteBoolean("complete", table.IsComplete);
            json.WriteNumber("draws", table.DrawCount);
            json.WriteStartArray("vary");
            foreach (var axis in table.Axes)
            {
                json.WriteStartObject();
                json.WriteString("key", axis.KeyPath);
                json.WriteStartArray("values");
                foreach (double value in axis.Values)
                {
                    json.WriteNumberValue(value);
                }
                json.WriteEndArray();
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteStartArray("points");
            foreach (var point in table.Points)
            {
                json.WriteStartObject();
                json.WriteStartObject("at");
                for (int a = 0; a < table.Axes.Length; a++)
                {
                    json.WriteNumber(table.Axes[a].KeyPath, point.At[a]);
                }
                json.WriteEndObject();
                json.WriteStartObject("figures");
                for (int f = 0; f < table.Figures.Length; f++)
                {
                    json.WriteNumberOrNull(table.Figures[f].Name, point.Figures[f].Likely);
                }
                json.WriteEndObject();
                json.WriteStartObject("bands");
                for (int f = 0; f < table.Figures.Length; f++)
                {
                    var band = point.Figures[f];
                    json.WriteStartObject(table.Figures[f].Name);
                    json.WriteNumberOrNull("low", band.Low);
                    json.WriteNumberOrNull("likely", band.Likely);
                    json.WriteNumberOrNull("high", band.High);
                    json.WriteEndObject();
                }
                json.WriteEndObject();
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteEndObject();
        });
}
