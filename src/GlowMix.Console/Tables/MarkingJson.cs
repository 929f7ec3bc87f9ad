using System.Text.Json;
using GlowMix.Console.Texts;
using GlowMix.Markings;
using GlowMix.Predictions;

namespace GlowMix.Console.Tables;

/// <summary>Marking guidance for programs; what is not known is null.</summary>
internal static class MarkingJson
{
    /// <summary>One object, with a line end.</summary>
    public static string Of(MarkingGuidance guidance) =>
        JsonText.Of(json =>
        {
            json.WriteStartObject();
            json.WriteString("notice", MarkingWords.Notice);
            json.WriteString("recipe", guidance.Piece.Recipe.File);
            json.WriteString("band", MarkingWords.BandOf(guidance));
            json.WriteStartArray("criteria");
            foreach (var compared in guidance.Criteria)
            {
                Write(json, compared);
            }
            json.WriteEndArray();
            json.WritePropertyName("own_room");
            Write(json, guidance.Room, guidance.Bridge);
            json.WriteStartArray("cautions");
            foreach (string caution in Cautions.Of(guidance.Piece))
            {
                json.WriteStringValue(caution);
            }
            json.WriteEndArray();
            json.WriteEndObject();
        });

    private static void Write(Utf8JsonWriter json, CriterionComparison compared)
    {
        var criterion = compared.Criterion;
        json.WriteStartObject();
        json.WriteString("name", criterion.Name);
        json.WriteString("title", criterion.Title);
        json.WriteString("document", criterion.Document.Value);
        json.WriteString("clause", criterion.Clause);
        json.WriteStartObject("charge");
        json.WriteString("lamp", criterion.Charge.Lamp.Value);
        json.WriteNumberOrNull("illuminance_lx", criterion.Charge.IlluminanceLx.Value);
        json.WriteNumberOrNull("minutes", criterion.Charge.Minutes.Value);
        json.WriteEndObject();
        json.WriteString("state", Word(compared.State));
        json.WriteString("not_judged_because", compared.NotJudgedBecause);
        json.WriteString("read_first", MarkingWords.ReadFirst(compared));
        json.WriteStartArray("limits");
        foreach (var limit in compared.Limits)
        {
            json.WriteStartObject();
            json.WriteNumber("minutes", limit.Minutes);
            json.WriteNumberOrNull("at_least_mcd_m2", limit.LeastMcdPerM2);
            Write(json, "luminance_mcd_m2", limit.Luminance);
            json.WriteString("state", Word(limit.State));
            json.WriteEndObject();
        }
        json.WriteEndArray();
        Write(json, "minutes_to_0_3_mcd_m2", compared.MinutesTo03McdPerM2);
        json.WriteStartArray("asks_also");
        foreach (string more in criterion.AsksAlso)
        {
            json.WriteStringValue(more);
        }
        json.WriteEndArray();
        json.WriteStartArray("sources");
        foreach (string source in MarkingWords.Sources(criterion))
        {
            json.WriteStringValue(source);
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, RoomGlow? room, ChargeBridge? bridge)
    {
        if (room is null)
        {
            json.WriteNullValue();
            return;
        }
        json.WriteStartObject();
        json.WriteString("charged_by", room.ChargedBy);
        json.WriteNumber("darkness_temperature_c", room.DarknessTemperatureC);
        json.WriteNumber("limit_mcd_m2", room.LimitMcdPerM2);
        Write(json, "minutes_to_limit", room.MinutesToLimit);
        json.WriteNumberOrNull("luminance_10_min_mcd_m2", bridge?.TenMinuteMcdPerM2);
        json.WriteNumberOrNull("daylight_1000_lx_minutes", bridge?.DaylightMinutes);
        json.WriteNumberOrNull("lux_hours", bridge?.LuxHours);
        json.WriteNumberOrNull("daylight_lux_hours", bridge?.DaylightLuxHours);
        json.WriteNumberOrNull("charge_minutes_to_90_percent", bridge?.MinutesTo90Percent);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, Band? band)
    {
        if (band is not { } known)
        {
            json.WriteNull(name);
            return;
        }
        json.WriteStartObject(name);
        json.WriteNumberOrNull("low", known.Low);
        json.WriteNumberOrNull("likely", known.Likely);
        json.WriteNumberOrNull("high", known.High);
        json.WriteEndObject();
    }

    private static string Word(MarkingState state) => MarkingWords.Of(state).Replace(' ', '_');
}
