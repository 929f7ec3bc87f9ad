using System.Text.Json;
using GlowMix.Predictions;
using GlowMix.Readings.Decay;
using GlowMix.Readings.Spectral;

namespace GlowMix.Console.Tables;

/// <summary>A reading beside a prediction, for programs; null where none was asked for.</summary>
internal static class ReadingOfJson
{
    private const string Key = "of";

    /// <summary>A spectrum's.</summary>
    public static void Write(Utf8JsonWriter json, SpectrumAgainstPrediction? compared)
    {
        if (compared is null)
        {
            json.WriteNull(Key);
            return;
        }
        json.WriteStartObject(Key);
        json.WriteString("recipe", compared.Prediction.Recipe);
        json.WriteStartArray("figures");
        foreach (var figure in compared.Figures)
        {
            json.WriteStartObject();
            json.WriteString("figure", figure.Figure.Name);
            json.WriteNumberOrNull("read", figure.Read);
            Write(json, figure.Band, figure.IsInside);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteNumber("light_elsewhere_share", compared.Difference);
        json.WriteStartArray("causes");
        foreach (var cause in compared.Causes)
        {
            json.WriteStartObject();
            json.WriteString("cause", cause.Words);
            json.WriteNumber("factor", cause.Factor);
            json.WriteNumber("left_share", cause.LeftShare);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>A decay's.</summary>
    public static void Write(Utf8JsonWriter json, DecayAgainstPrediction? compared)
    {
        if (compared is null)
        {
            json.WriteNull(Key);
            return;
        }
        json.WriteStartObject(Key);
        json.WriteString("recipe", compared.Prediction.Recipe);
        json.WriteBoolean("course_only", compared.IsRelative);
        json.WriteStartArray("readings");
        foreach (var point in compared.Points)
        {
            json.WriteStartObject();
            json.WriteNumber("minutes", point.Minutes);
            json.WriteNumber("read", point.ReadMcdPerM2);
            Write(json, point.Band, point.IsInside);
            json.WriteNumber("factor", point.Factor);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteString("cause", compared.Cause);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Band band, bool? isInside)
    {
        json.WriteNumberOrNull("low", band.Low);
        json.WriteNumberOrNull("likely", band.Likely);
        json.WriteNumberOrNull("high", band.High);
        if (isInside is { } inside)
        {
            json.WriteBoolean("inside", inside);
        }
        else
        {
            json.WriteNull("inside");
        }
    }
}
