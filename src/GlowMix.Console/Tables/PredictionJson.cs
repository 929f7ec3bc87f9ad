using System.Text.Json;
using GlowMix.Console.Texts;
using GlowMix.Predictions;

namespace GlowMix.Console.Tables;

/// <summary>
/// Predictions for programs: the figures nested by the dots of their names, unrounded; what does not exist is null.
/// Written token by token: a serializer would cost more start-up time than all of it.
/// </summary>
internal static class PredictionJson
{
    /// <summary>One object, with a line end.</summary>
    public static string Object(Prediction prediction) => JsonText.Of(json => Write(json, prediction));

    /// <summary>An array in the order given, with a line end.</summary>
    public static string Array(IEnumerable<Prediction> predictions) => JsonText.OfEach(predictions, Write);

    /// <summary>One object into a larger text.</summary>
    public static void Write(Utf8JsonWriter json, Prediction prediction)
    {
        json.WriteStartObject();
        json.WriteString("recipe", prediction.Recipe);
        WriteFigures(json, prediction);
        json.WriteStartObject("bands");
        foreach (var (figure, band) in prediction.Bands)
        {
            json.WriteStartObject(figure.Name);
            json.WriteNumberOrNull("low", band.Low);
            json.WriteNumberOrNull("likely", band.Likely);
            json.WriteNumberOrNull("high", band.High);
            json.WriteEndObject();
        }
        json.WriteEndObject();
        json.WriteStartArray("targets");
        foreach (var verdict in prediction.Targets)
        {
            WriteTarget(json, verdict);
        }
        json.WriteEndArray();
        json.WriteWarnings(prediction.Warnings);
        json.WriteEndObject();
    }

    // Figures that share the beginning of their names stand together in the catalogue, so that a change of the beginning
    // closes one object and opens the next.
    private static void WriteFigures(Utf8JsonWriter json, Prediction prediction)
    {
        string[] open = [];
        foreach (var figure in FigureCatalogue.All)
        {
            string[] path = Path(figure);
            int shared = 0;
            while (shared < open.Length && shared < path.Length - 1 && open[shared] == path[shared])
            {
                shared++;
            }
            for (int i = open.Length; i > shared; i--)
            {
                json.WriteEndObject();
            }
            if (figure.Name == FigureCatalogue.AlongLargestStep)
            {
                json.WriteStartArray("along");
                foreach (var place in prediction.Along)
                {
                    WritePlace(json, place);
                }
                json.WriteEndArray();
            }
            for (int i = shared; i < path.Length - 1; i++)
            {
                json.WriteStartObject(path[i]);
            }
            open = path[..^1];
            json.WriteNumberOrNull(path[^1], prediction.Figures[figure]);
        }
        foreach (string _ in open)
        {
            json.WriteEndObject();
        }
    }

    private static void WritePlace(Utf8JsonWriter json, AlongPlace place)
    {
        json.WriteStartObject();
        json.WriteString("place", place.Place);
        json.WriteNumberOrNull("depth_mm", place.DepthMm);
        json.WriteNumberOrNull("cct_k", place.CctK);
        json.WriteNumberOrNull("duv", place.Duv);
        json.WriteNumberOrNull("flux_lm", place.FluxLm);
        json.WriteNumberOrNull("luminance_10_min_mcd_m2", place.LuminanceAt10MinMcdPerM2);
        json.WriteEndObject();
    }

    private static void WriteTarget(Utf8JsonWriter json, TargetVerdict verdict)
    {
        json.WriteStartObject();
        json.WriteString("figure", verdict.Target.Figure);
        json.WriteNumberOrNull("at_minutes", verdict.Target.AtMinutes);
        json.WriteNumberOrNull("at_least", verdict.Target.AtLeast);
        json.WriteNumberOrNull("at_most", verdict.Target.AtMost);
        json.WriteNumberOrNull("value", verdict.Value);
        json.WriteString("state", TargetRows.WordOf(verdict.State));
        json.WriteNumberOrNull("share_of_draws", verdict.ShareOfDraws);
        json.WriteNumberOrNull("margin", verdict.Margin);
        json.WriteString("reason", verdict.Reason);
        json.WriteString("decided_by", verdict.DecidedBy);
        json.WriteEndObject();
    }

    private static string[] Path(Figure figure)
    {
        string[] words = figure.Family.Split('.');
        return figure.AtMinutes is double minutes ? [.. words, FigureCatalogue.MinutesKey(minutes)] : words;
    }
}
