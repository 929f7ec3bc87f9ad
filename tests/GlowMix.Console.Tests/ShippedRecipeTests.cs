using System.Globalization;
using System.Text.Json;

namespace GlowMix.Console.Tests;

/// <summary>The worked examples through the whole program.</summary>
public sealed class ShippedRecipeTests : IDisposable
{
    private readonly CommandLine line = new();

    public void Dispose() => line.Dispose();

    public static TheoryData<string> Recipes =>
        [
            .. Directory
                .GetFiles(Path.Combine(TopFolder.Path, "recipes"), "*.yaml")
                .Select(f => Path.GetFileName(f))
                .Where(f => !f.EndsWith(".figures.yaml", StringComparison.Ordinal)),
        ];

    [Theory, MemberData(nameof(Recipes))]
    public void A_recipe_is_predicted_in_words_that_fit_the_page(string recipe)
    {
        Assert.Equal(ExitCode.Done, line.Run("predict", Shipped(recipe), "--quick", "--full", "--plot"));
        Assert.Empty(line.Error);
        Assert.All(line.OutLines.Skip(1), text => Assert.InRange(text.Length, 0, 80));
        foreach (string word in new[] { "NaN", "Infinity", "∞", "E+", "E-" })
        {
            Assert.DoesNotContain(word, line.Out, StringComparison.Ordinal);
        }
    }

    [Theory, MemberData(nameof(Recipes))]
    public void The_plain_output_is_a_page_with_warnings_of_a_line_each(string recipe)
    {
        Assert.Equal(ExitCode.Done, line.Run("predict", Shipped(recipe), "--quick"));
        string[] lines = line.OutLines;
        Assert.StartsWith("Lit: ", lines[1], StringComparison.Ordinal);
        Assert.Contains(lines, l => l.StartsWith("Dark: ", StringComparison.Ordinal));
        Assert.InRange(lines.Length, 15, 36);
        int blank = Array.IndexOf(lines, "");
        Assert.InRange(blank, 3, 7);
        Assert.All(lines.Skip(1), l => Assert.InRange(l.Length, 0, 80));

        Assert.Equal(ExitCode.Done, line.Run("predict", Shipped(recipe), "--quick", "--json"));
        using var json = JsonDocument.Parse(line.Out);
        int told = json
            .RootElement.GetProperty("warnings")
            .EnumerateArray()
            .Count(w => w.GetProperty("code").GetString() is not ("ra-beyond-method" or "packages-in-air"));
        int first = Array.FindIndex(lines, l => l.StartsWith("Warnings ", StringComparison.Ordinal));
        int end = Array.FindIndex(lines, l => l.StartsWith("Calibrate ", StringComparison.Ordinal));
        Assert.Equal(Math.Min(told, 5), first < 0 ? 0 : end - first);
    }

    [Fact]
    public void Draws_fit_the_page_too_and_say_how_many_they_are()
    {
        Assert.Equal(ExitCode.Done, line.Run("predict", Shipped("stair-edge.yaml")));
        Assert.InRange(line.OutLines.Length, 15, 36);
        Assert.All(line.OutLines, l => Assert.InRange(l.Length, 0, 80));
        Assert.Contains(
            line.OutLines,
            l => l.StartsWith("Bands      10 to 90 % of ", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Causes_are_bars_on_the_page_and_shares_in_json()
    {
        Assert.Equal(ExitCode.Done, line.Run("predict", Shipped("clear-tread.yaml"), "--causes"));
        Assert.Empty(line.Error);
        Assert.All(line.OutLines, l => Assert.InRange(l.Length, 0, 80));
        Assert.Contains("lit.cct_k\n  package return of ", line.Out, StringComparison.Ordinal);
        Assert.Contains(
            "  first a bare and a potted reading of the LED\n",
            line.Out,
            StringComparison.Ordinal
        );

        Assert.Equal(ExitCode.Done, line.Run("predict", Shipped("clear-tread.yaml"), "--causes", "--json"));
        using var json = JsonDocument.Parse(line.Out);
        var heaviest = json.RootElement.GetProperty("figures")[0].GetProperty("causes")[0];
        foreach (
            string key in (string[])["first_order", "first_order_error", "total_order", "total_order_error"]
        )
        {
            Assert.InRange(heaviest.GetProperty(key).GetDouble(), 0, 1.5);
        }
        Assert.Equal(ExitCode.Usage, line.Run("predict", Shipped("clear-tread.yaml"), "--causes", "--full"));
    }

    [Fact]
    public void Several_recipes_make_one_array_the_same_under_any_culture()
    {
        string[] files =
        [
            Shipped("shortest.yaml"),
            Shipped("clear-tread.yaml"),
            Shipped("measured-led.yaml"),
        ];
        Assert.Equal(ExitCode.Done, line.Run(["predict", "--json", "--quick", .. files]));
        string json = line.Out;
        using (var parsed = JsonDocument.Parse(json))
        {
            Assert.Equal(
                files,
                parsed.RootElement.EnumerateArray().Select(e => e.GetProperty("recipe").GetString()!)
            );
        }
        var culture = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(ExitCode.Done, line.Run(["predict", "--json", "--quick", .. files]));
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
        Assert.Equal(json, line.Out);
    }

    private static string Shipped(string recipe) => Path.Combine(TopFolder.Path, "recipes", recipe);
}
