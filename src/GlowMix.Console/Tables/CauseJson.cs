using System.Text.Json;
using GlowMix.Choosing.Draws;

namespace GlowMix.Console.Tables;

/// <summary>What makes figures doubtful, for programs: every cause, unrounded.</summary>
internal static class CauseJson
{
    /// <summary>One object a recipe; an array of them where there are several.</summary>
    public static string Of(IReadOnlyList<(string Recipe, CauseStudy Study)> studies, bool isArray) =>
        isArray
            ? JsonText.OfEach(studies, (json, each) => Write(json, each.Recipe, each.Study))
            : JsonText.Of(json => Write(json, studies[0].Recipe, studies[0].Study));

    private static void Write(Utf8JsonWriter json, string recipe, CauseStudy study)
    {
        json.WriteStartObject();
        json.WriteString("recipe", recipe);
        json.WriteNumber("runs", study.RunCount);
        json.WriteNumber("runs_left_out", study.RefusedCount);
        json.WriteStartArray("figures");
        foreach (var figure in study.Figures)
        {
            json.WriteStartObject();
            json.WriteString("figure", figure.Figure.Name);
            json.WriteStartArray("causes");
            foreach (var (cause, indices) in figure.Causes)
            {
                json.WriteStartObject();
                json.WriteString("cause", cause.Key);
                json.WriteString("what", cause.What);
                json.WriteNumber("first_order", indices.FirstOrder);
                json.WriteNumber("first_order_error", indices.FirstOrderError);
                json.WriteNumber("total_order", indices.TotalOrder);
                json.WriteNumber("total_order_error", indices.TotalOrderError);
                json.WriteString("reading", cause.Reading);
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }
}
