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
                .Select(f => Path.GetFileName(f)),
        ];

    [Theory, MemberData(nameof(Recipes))]
    public void A_recipe_is_predicted_in_words_that_fit_the_page(string recipe)
    {
        Assert.Equal(ExitCode.Done, line.Run("predict", Shipped(recipe), "--full", "--plot"));
        Assert.Empty(line.Error);
        Assert.All(line.OutLines.Skip(1), text => Assert.InRange(text.Length, 0, 80));
        foreach (string word in new[] { "NaN", "Infinity", "∞", "E+", "E-" })
        {
            Assert.DoesNotContain(word, line.Out, StringComparison.Ordinal);
        }
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
        Assert.Equal(ExitCode.Done, line.Run(["predict", "--json", .. files]));
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
            Assert.Equal(ExitCode.Done, line.Run(["predict", "--json", .. files]));
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
        Assert.Equal(json, line.Out);
    }

    private static string Shipped(string recipe) => Path.Combine(TopFolder.Path, "recipes", recipe);
}
