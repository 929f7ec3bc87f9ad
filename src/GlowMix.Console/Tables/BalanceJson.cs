using System.Text.Json;
using GlowMix.Choosing;
using GlowMix.Documents;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Console.Tables;

/// <summary>What a search for a balance found, for programs, unrounded.</summary>
internal static class BalanceJson
{
    /// <summary>One object, with a line end.</summary>
    public static string Of(BalanceAnswer answer, string recipe) =>
        JsonText.Of(json =>
        {
            json.WriteStartObject();
            json.WriteString("recipe", recipe);
            json.WriteBoolean("complete", answer.IsComplete);
            json.WriteNumberOrNull("white_cct_k", answer.WhiteCctK);
            json.WriteNumber("glow_at_minutes", answer.GlowAtMinutes);
            json.WriteNumber("designs_tried", answer.TriedCount);
            json.WriteNumber("designs_settled", answer.SettledCount);
            json.WriteNumber("designs_of_grid", answer.GridCount);
            json.WriteNumber("designs_of_grid_that_meet_targets", answer.GridFeasibleCount);
            WriteOffers(json, answer.Choices);
            WriteDesign(json, "recommended", answer.Recommended, answer.GlowAtMinutes, inFull: true);
            WriteLimits(json, "held_by", answer.HeldBy);
            json.WriteNumberOrNull("share_of_draws", answer.ShareOfDraws);
            json.WriteNumber("draws", answer.DrawCount);
            json.WriteStartArray("front");
            foreach (var design in answer.Front)
            {
                WriteDesign(json, null, design, answer.GlowAtMinutes, inFull: false);
            }
            json.WriteEndArray();
            WriteLimits(json, "whitest_held_by", answer.WhitestHeldBy);
            WriteLimits(json, "brightest_held_by", answer.BrightestHeldBy);
            WriteMap(json, answer.Map);
            WriteRelaxations(json, answer.Relaxations);
            WriteDesign(json, "nearest", answer.Nearest, answer.GlowAtMinutes, inFull: true);
            json.WriteEndObject();
        });

    private static void WriteOffers(Utf8JsonWriter json, IEnumerable<RecipeChoice> choices)
    {
        json.WriteStartArray("choices");
        foreach (var choice in choices)
        {
            json.WriteStartObject();
            json.WriteString("key", choice.KeyPath);
            if (choice.AnyOf.IsEmpty)
            {
                json.WriteNumberOrNull("from", choice.From);
                json.WriteNumberOrNull("to", choice.To);
            }
            else
            {
                json.WriteStartArray("any_of");
                foreach (string value in choice.AnyOf)
                {
                    WriteValue(json, value);
                }
                json.WriteEndArray();
            }
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void WriteDesign(
        Utf8JsonWriter json,
        string? name,
        BalanceDesign? design,
        double glowAtMinutes,
        bool inFull
    )
    {
        if (design is null)
        {
            json.WriteNull(name ?? "");
            return;
        }
        if (name is null)
        {
            json.WriteStartObject();
        }
        else
        {
            json.WriteStartObject(name);
        }
        WriteChoices(json, design.Choices);
        json.WriteNumberOrNull("off_white_u_prime_v_prime", design.OffWhite);
        var glow = Texts.PredictionBands.BandOf(
            design.Prediction,
            FigureCatalogue.Find("afterglow.luminance_mcd_m2", glowAtMinutes)!
        );
        json.WriteStartObject("glow_mcd_m2");
        json.WriteNumberOrNull("low", glow.Low);
        json.WriteNumberOrNull("likely", glow.Likely);
        json.WriteNumberOrNull("high", glow.High);
        json.WriteEndObject();
        if (inFull)
        {
            json.WritePropertyName("prediction");
            PredictionJson.Write(json, design.Prediction);
        }
        json.WriteEndObject();
    }

    private static void WriteLimits(Utf8JsonWriter json, string name, IEnumerable<BalanceLimit> limits)
    {
        json.WriteStartArray(name);
        foreach (var limit in limits)
        {
            json.WriteStartObject();
            if (limit.Target is { } target)
            {
                WriteTarget(json, target);
            }
            else
            {
                json.WriteString("key", limit.KeyPath);
                json.WriteNumberOrNull("ends_at", limit.EndsAt);
            }
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void WriteMap(Utf8JsonWriter json, BalanceMap? map)
    {
        if (map is null)
        {
            json.WriteNull("map");
            return;
        }
        json.WriteStartObject("map");
        json.WriteString("across", map.AcrossKeyPath);
        WriteNumbers(json, "across_values", map.Across);
        json.WriteString("up", map.UpKeyPath);
        WriteNumbers(json, "up_values", map.UpKeyPath is null ? [] : map.Up);
        // The targets missed, by their number in the recipe from 1.
        json.WriteStartArray("missed");
        foreach (var row in map.Missed)
        {
            json.WriteStartArray();
            foreach (var cell in row)
            {
                json.WriteStartArray();
                foreach (int target in cell)
                {
                    json.WriteNumberValue(target + 1);
                }
                json.WriteEndArray();
            }
            json.WriteEndArray();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteRelaxations(Utf8JsonWriter json, IEnumerable<BalanceRelaxation> relaxations)
    {
        json.WriteStartArray("relax");
        foreach (var relaxation in relaxations)
        {
            json.WriteStartObject();
            WriteTarget(json, relaxation.Target);
            json.WriteNumber("to", relaxation.To);
            WriteChoices(json, relaxation.Choices);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void WriteTarget(Utf8JsonWriter json, RecipeTarget target)
    {
        json.WriteString("figure", target.Figure);
        json.WriteNumberOrNull("at_minutes", target.AtMinutes);
        json.WriteNumberOrNull("at_least", target.AtLeast);
        json.WriteNumberOrNull("at_most", target.AtMost);
    }

    private static void WriteChoices(Utf8JsonWriter json, IEnumerable<KeyValuePair<string, string>> choices)
    {
        json.WriteStartObject("choices");
        foreach (var (key, value) in choices)
        {
            json.WritePropertyName(key);
            WriteValue(json, value);
        }
        json.WriteEndObject();
    }

    private static void WriteNumbers(Utf8JsonWriter json, string name, IEnumerable<double> numbers)
    {
        json.WriteStartArray(name);
        foreach (double number in numbers)
        {
            json.WriteNumberValue(number);
        }
        json.WriteEndArray();
    }

    private static void WriteValue(Utf8JsonWriter json, string value)
    {
        if (NumberText.TryRead(value, out double number))
        {
            json.WriteNumberValue(number);
        }
        else
        {
            json.WriteStringValue(value);
        }
    }
}
