using GlowMix.Recipes;

namespace GlowMix.Tests.Recipes;

/// <summary>Short recipes for the tests, all invented.</summary>
internal static class Sample
{
    /// <summary>One layer with pigment; the layer begins on line 5 and its loading stands at 7:22.</summary>
    public const string OneLayer = """
        format: 1
        resin: epoxy-clear-slow
        led:
          material: warm-white-3000
        layers:
          - depth_mm: 2.5   # deep
            pigment: green-aluminate
            loading_percent: 20

        """;

    public static RecipeDocument Read(string text) => RecipeDocument.Read(text, "a.yaml");

    /// <summary>The sample with lines added, read.</summary>
    public static RecipeDocument With(string lines) => Read(OneLayer + lines);

    /// <summary>The folder of the shipped recipes, found from the tests' own folder upwards.</summary>
    public static string Folder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "GlowMix.sln")))
        {
            folder = folder.Parent;
        }
        return Path.Combine(folder.FullName, "recipes");
    }
}
