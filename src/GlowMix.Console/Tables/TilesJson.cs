using GlowMix.Casting;
using GlowMix.Console.Texts;

namespace GlowMix.Console.Tables;

/// <summary>Test tiles for programs.</summary>
internal static class TilesJson
{
    /// <summary>One object, with a line end.</summary>
    public static string Of(TestTiles tiles) =>
        JsonText.Of(json =>
        {
            json.WriteStartObject();
            json.WriteString("recipe", tiles.Piece.Recipe.File);
            json.WriteNumber("tile_length_mm", tiles.LengthMm);
            json.WriteNumber("tile_width_mm", tiles.WidthMm);
            json.WriteNumber("leds_a_tile", tiles.PackageCount);
            json.WriteNumber("scale_step_g", tiles.ScaleStepG);
            json.WriteStartArray("mixes");
            foreach (var mix in tiles.Mixes)
            {
                json.WriteStartObject();
                json.WriteString("layer", mix.Layer.Name);
                json.WriteNumber("depth_mm", mix.Layer.DepthMm);
                json.WriteString(
                    "pigment",
                    mix.Layer.Loading != default ? BatchPage.PigmentOf(tiles.Piece, mix.Layer) : null
                );
                json.WriteNumber("mix_volume_ml", mix.MixVolumeMl);
                json.WriteNumber("needed_resin_g", mix.NeededG);
                json.WritePropertyName("weighed");
                BatchJson.WriteWeighed(json, mix.Parts);
                json.WriteStartArray("tiles");
                foreach (var cup in mix.Cups)
                {
                    json.WriteStartObject();
                    json.WriteNumber("resin_g", cup.ResinG);
                    json.WriteNumber("pigment_g", cup.PigmentG);
                    json.WriteNumber("loading_planned_percent", cup.Batch.Layer.Loading.PercentByMass);
                    json.WriteNumber("loading_percent", cup.LoadingPercent);
                    json.WriteNumberOrNull("viscosity_mpa_s", cup.Batch.ViscosityMPaS);
                    json.WriteNumber("settled_mm", cup.Batch.SettledMm);
                    json.WriteEndObject();
                }
                json.WriteEndArray();
                json.WriteNumber("pot_life_min", mix.PotLifeMin);
                json.WriteNumber("degas_window_min", mix.DegasWindowMin);
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteNumber("dark_before_h", TestTiles.DarkBeforeH);
            json.WriteStartArray("charge");
            foreach (var step in tiles.Piece.Steps)
            {
                json.WriteStringValue(step.Words);
            }
            json.WriteEndArray();
            json.WriteStartArray("read_at_minutes");
            foreach (double minutes in TestTiles.ReadAtMinutes)
            {
                json.WriteNumberValue(minutes);
            }
            json.WriteEndArray();
            json.WriteStartArray("files");
            foreach (string file in TilesPage.FilesOf(tiles))
            {
                json.WriteStringValue(file);
            }
            json.WriteEndArray();
            BatchJson.WriteEnd(json, tiles.Warnings, [.. Cautions.Of(tiles.Piece), Cautions.EscapeRoutes]);
            json.WriteEndObject();
        });
}
