using System.Text.Json;
using GlowMix.Casting;
using GlowMix.Console.Texts;

namespace GlowMix.Console.Tables;

/// <summary>A batch sheet for programs: unrounded, and as the scale shows it; what does not exist is null.</summary>
internal static class BatchJson
{
    /// <summary>One object, with a line end.</summary>
    public static string Of(BatchSheet batch) =>
        JsonText.Of(json =>
        {
            json.WriteStartObject();
            json.WriteString("recipe", batch.Piece.Recipe.File);
            json.WriteNumber("pieces", batch.Pieces);
            json.WriteString("resin", batch.Piece.Resin.Name);
            json.WriteNumber("temperature_c", batch.Mixing.TemperatureC);
            json.WriteNumber("waste_percent", batch.Mixing.WastePercent);
            json.WriteNumber("vacuum_min", batch.Mixing.VacuumMin);
            json.WriteNumber("scale_step_g", batch.ScaleStepG);
            json.WriteBoolean("scale_step_assumed", batch.ScaleStepIsAssumed);
            json.WriteStartArray("mixes");
            foreach (var mix in batch.Mixes)
            {
                Write(json, batch, mix);
            }
            json.WriteEndArray();
            json.WriteStartObject("in_all");
            json.WriteNumberOrNull("mix_volume_ml", batch.Plan.MixVolumeMl);
            json.WriteNumberOrNull("part_a_g", batch.Plan.PartAG);
            json.WriteNumberOrNull("part_b_g", batch.Plan.PartBG);
            json.WriteNumberOrNull("pigment_g", batch.Plan.PigmentG);
            json.WriteNumberOrNull("cost", batch.Plan.Cost);
            json.WriteEndObject();
            WriteEnd(json, batch.Warnings, [.. Cautions.Of(batch.Piece), Cautions.EscapeRoutes]);
            json.WriteEndObject();
        });

    /// <summary>Warnings and cautions, as all sheets have them.</summary>
    public static void WriteEnd(
        Utf8JsonWriter json,
        IEnumerable<BatchWarning> warnings,
        IEnumerable<string> cautions
    )
    {
        json.WriteStartArray("warnings");
        foreach (var warning in warnings)
        {
            json.WriteStartObject();
            json.WriteString("code", warning.Code);
            json.WriteString("layer", warning.Layer);
            json.WriteString("text", warning.Text);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartArray("cautions");
        foreach (string caution in cautions)
        {
            json.WriteStringValue(caution);
        }
        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, BatchSheet batch, LayerMix mix)
    {
        var layer = mix.Batch;
        bool hasPigment = layer.Layer.Loading != default;
        json.WriteStartObject();
        json.WriteString("layer", layer.Layer.Name);
        json.WriteNumber("depth_mm", layer.Layer.DepthMm);
        json.WriteString("pigment", hasPigment ? BatchPage.PigmentOf(batch.Piece, layer.Layer) : null);
        json.WriteNumber("loading_percent", layer.Layer.Loading.PercentByMass);
        json.WriteNumber("pigment_g_per_100g_resin", layer.Layer.Loading.GPer100GResin);
        json.WriteNumber("pigment_volume_percent", layer.PigmentVolumePercent);
        json.WriteNumberOrNull("pour_volume_ml", layer.PourVolumeMl);
        json.WriteNumberOrNull("mix_volume_ml", layer.MixVolumeMl);
        json.WriteNumberOrNull("part_a_g", layer.PartAG);
        json.WriteNumberOrNull("part_b_g", layer.PartBG);
        json.WriteNumberOrNull("pigment_g", layer.PigmentG);
        json.WritePropertyName("weighed");
        if (mix.Weighed is { } weighed)
        {
            WriteWeighed(json, weighed);
        }
        else
        {
            json.WriteNullValue();
        }
        json.WriteBoolean("pours", layer.Pours);
        json.WriteNumberOrNull("viscosity_mpa_s", layer.ViscosityMPaS);
        json.WriteNumberOrNull("settled_mm", hasPigment ? layer.SettledMm : null);
        json.WriteNumber("pot_life_min", layer.PotLifeMin);
        json.WriteNumber("degas_window_min", layer.DegasWindowMin);
        json.WriteNumberOrNull("vessel_least_ml", mix.LeastVesselMl);
        json.WriteNumberOrNull("vessel_most_ml", mix.MostVesselMl);
        json.WriteNumberOrNull("cups", mix.Cups);
        json.WriteNumberOrNull("cost", layer.Cost);
        json.WriteEndObject();
    }

    /// <summary>Masses in steps of the scale.</summary>
    public static void WriteWeighed(Utf8JsonWriter json, WeighedBatch weighed)
    {
        json.WriteStartObject();
        json.WriteNumber("part_a_g", weighed.PartAG);
        json.WriteNumber("part_b_g", weighed.PartBG);
        json.WriteNumber("pigment_g", weighed.PigmentG);
        json.WriteNumber("ratio_error_percent", weighed.RatioErrorPercent);
        json.WriteNumber("ratio_doubt_percent", weighed.RatioDoubtPercent);
        json.WriteBoolean("too_small", weighed.IsTooSmall);
        json.WriteNumber("smallest_safe_mix_g", weighed.SmallestSafeMixG);
        json.WriteNumber("loading_percent", weighed.LoadingPercent);
        json.WriteNumber("loading_least_percent", weighed.LowLoadingPercent);
        json.WriteNumber("loading_most_percent", weighed.HighLoadingPercent);
        json.WriteEndObject();
    }
}
