using System.Text.Json;
using GlowMix.Readings.Fit;

namespace GlowMix.Console.Tables;

/// <summary>A fit for programs, unrounded.</summary>
internal static class FitJson
{
    /// <summary>One object, with a line end.</summary>
    /// <param name="result">The fit.</param>
    /// <param name="recipe">The recipe's name.</param>
    /// <param name="written">The calibration's file; null if none was written.</param>
    public static string Of(FitResult result, string recipe, string? written) =>
        JsonText.Of(json =>
        {
            json.WriteStartObject();
            json.WriteString("recipe", recipe);
            json.WriteString("written", written);
            Write(json, "numbers", result.Numbers);
            Write(json, "led_shares", result.Shares);
            json.WriteStartArray("held");
            foreach (var held in result.Held)
            {
                json.WriteStartObject();
                json.WriteString("key", held.Key);
                json.WriteString("what", held.Words);
                json.WriteNumber("value", held.Value);
                json.WriteStartArray("told_together_with");
                foreach (string other in held.ToldTogetherWith)
                {
                    json.WriteStringValue(other);
                }
                json.WriteEndArray();
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteStartArray("correlations");
            foreach (var row in result.Correlations)
            {
                json.WriteStartArray();
                foreach (double r in row)
                {
                    json.WriteNumberValue(r);
                }
                json.WriteEndArray();
            }
            json.WriteEndArray();
            json.WriteStartArray("readings");
            foreach (var misfit in result.Misfits)
            {
                Write(json, misfit);
            }
            json.WriteEndArray();
            json.WriteNumber("errors_widened_by", result.ErrorsWidenedBy);
            json.WriteNumber("iterations", result.Iterations);
            json.WriteStartArray("warnings");
            foreach (string warning in result.Warnings)
            {
                json.WriteStringValue(warning);
            }
            json.WriteEndArray();
            json.WriteEndObject();
        });

    private static void Write(Utf8JsonWriter json, string name, IEnumerable<FittedNumber> numbers)
    {
        json.WriteStartArray(name);
        foreach (var number in numbers)
        {
            json.WriteStartObject();
            json.WriteString("key", number.Key);
            json.WriteString("what", number.Words);
            json.WriteNumber("value", number.Value);
            json.WriteNumber("standard_error", number.StandardError);
            json.WriteNumber("start", number.Start);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, ReadingMisfit misfit)
    {
        json.WriteStartObject();
        json.WriteString("file", misfit.Name);
        json.WriteString("state", misfit.State);
        json.WriteNumber("rms_percent", misfit.RmsPercent);
        json.WriteNumber("noise_percent", misfit.NoisePercent);
        json.WriteNumber("times_its_noise", misfit.TimesItsNoise);
        json.WriteBoolean("lack_of_fit", misfit.IsLackOfFit);
        json.WriteStartArray("residuals");
        foreach (var (at, percent) in misfit.ResidualsPercent)
        {
            json.WriteStartObject();
            json.WriteNumber(misfit.IsDecay ? "minutes" : "nm", at);
            json.WriteNumber("percent", percent);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }
}
