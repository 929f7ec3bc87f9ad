using System.Text.Json;
using GlowMix.Console.Tables;
using GlowMix.Predictions;

namespace GlowMix.Console.Tests.Tables;

public sealed class PredictionJsonTests
{
    [Fact]
    public void The_object_has_its_parts_in_order()
    {
        using var json = JsonDocument.Parse(PredictionJson.Object(SamplePredictions.StairEdge));
        Assert.Equal(
            [
                "recipe",
                "bare",
                "lit",
                "along",
                "along_largest_step_u_prime_v_prime",
                "afterglow",
                "casting",
                "bands",
                "targets",
                "warnings",
            ],
            json.RootElement.EnumerateObject().Select(p => p.Name)
        );
    }

    [Fact]
    public void Every_figure_stands_where_its_name_says_unrounded()
    {
        var prediction = SamplePredictions.StairEdge;
        using var json = JsonDocument.Parse(PredictionJson.Object(prediction));
        foreach (var figure in FigureCatalogue.All)
        {
            var element = json.RootElement;
            string[] words = figure.Name.TrimEnd(']').Split('.', 2);
            foreach (string word in words.SelectMany(w => w.Split('[')).SelectMany(Words))
            {
                element = element.GetProperty(word);
            }
            double? found = element.ValueKind == JsonValueKind.Null ? null : element.GetDouble();
            Assert.Equal(prediction.Figures[figure], found);
        }

        // Only a name has dots within; minutes such as 0.5 do not nest.
        static string[] Words(string word) => char.IsAsciiDigit(word[0]) ? [word] : word.Split('.');
    }

    [Fact]
    public void Bands_and_warnings_are_flat()
    {
        using var json = JsonDocument.Parse(PredictionJson.Object(SamplePredictions.StairEdge));
        var band = json.RootElement.GetProperty("bands").GetProperty("afterglow.luminance_mcd_m2[2]");
        Assert.Equal(54.9, band.GetProperty("low").GetDouble());
        Assert.Equal(224, band.GetProperty("high").GetDouble());
        var warning = json.RootElement.GetProperty("warnings")[0];
        Assert.Equal("depth_band", warning.GetProperty("code").GetString());
        Assert.Equal("lit.cct_k", warning.GetProperty("figure").GetString());
    }

    [Fact]
    public void Letters_beyond_ascii_stand_as_they_are()
    {
        var prediction = SamplePredictions.StairEdge with
        {
            Warnings = [new("a", null, "40 µm; 2 mcd/m²; u′ \"q\" </b>")],
        };
        string json = PredictionJson.Object(prediction);
        Assert.Contains("40 µm; 2 mcd/m²; u′ \\\"q\\\" </b>", json, StringComparison.Ordinal);
        Assert.EndsWith("}\n", json, StringComparison.Ordinal);
    }

    [Fact]
    public void Several_make_an_array_in_the_order_given()
    {
        using var json = JsonDocument.Parse(
            PredictionJson.Array([SamplePredictions.StairEdge, SamplePredictions.Clear])
        );
        Assert.Equal(
            ["recipes/stair-edge.yaml", "recipes/clear.yaml"],
            json.RootElement.EnumerateArray().Select(e => e.GetProperty("recipe").GetString()!)
        );
    }
}
