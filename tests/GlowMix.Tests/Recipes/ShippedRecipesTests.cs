using GlowMix.Documents;
using GlowMix.Recipes;

namespace GlowMix.Tests.Recipes;

public class ShippedRecipesTests
{
    public static TheoryData<string> Names =>
        [
            .. Directory
                .GetFiles(Sample.Folder(), "*.yaml")
                .Select(f => Path.GetFileName(f)!)
                .Where(IsRecipe)
                .Order(),
        ];

    [Theory, MemberData(nameof(Names))]
    public void A_shipped_recipe_reads_without_a_problem_and_is_marked_as_invented(string name)
    {
        var file = DocumentFile.Read(Path.Combine(Sample.Folder(), name));
        var document = RecipeDocument.Read(file);
        Assert.Empty(document.Problems);
        Assert.NotNull(document.Recipe);
        Assert.StartsWith(
            "# yaml-language-server: $schema=../data/recipe.schema.json\n",
            file.Text,
            StringComparison.Ordinal
        );
        Assert.Contains("nvented example", file.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void There_are_at_least_six() => Assert.True(Names.Count >= 6);

    [Fact]
    public void The_stair_edge_says_what_the_design_of_a_recipe_shows()
    {
        var recipe = RecipeDocument
            .Read(DocumentFile.Read(Path.Combine(Sample.Folder(), "stair-edge.yaml")))
            .Recipe!;
        Assert.Equal("Stair edge, warm white", recipe.Title);
        Assert.Equal((60, 40, 5), (recipe.Led.Count, recipe.Led.DriveMa, recipe.Led.DriveTolerancePercent));
        Assert.Equal("white-mask", recipe.BoardName);
        Assert.Equal(
            (500, 12, 0.4, Face.Up),
            (recipe.Pour.LengthMm, recipe.Pour.WidthMm, recipe.Pour.RunsOutMm, recipe.Pour.Face)
        );
        Assert.Equal(["glow", "cover"], recipe.Layers.Select(l => l.Name));
        Assert.Equal(
            (2.5, 0.2, 40, 1.5),
            (
                recipe.Layers[0].DepthMm,
                recipe.Layers[0].DepthToleranceMm,
                recipe.Layers[0].GrainMedianUm,
                recipe.Layers[0].GrainGsd
            )
        );
        Assert.Equal((20, 1), (recipe.Layers[0].LoadingPercent, recipe.Layers[0].LoadingTolerancePoints));
        Assert.Null(recipe.Layers[1].PigmentName);
        Assert.Equal(
            new()
            {
                TemperatureC = 22,
                WastePercent = 10,
                VacuumMin = 15,
                ScaleStepG = 0.1,
            },
            recipe.Mixing
        );
        Assert.Equal(ChargeStart.Empty, recipe.Charge.Start);
        Assert.Equal(
            new()
            {
                OwnLeds = true,
                LampName = "led-4000",
                IlluminanceLx = 50,
                Minutes = 480,
                TemperatureC = 35,
            },
            recipe.Charge.Steps[0]
        );
        Assert.Equal(
            new()
            {
                LampName = "daylight-d65",
                IlluminanceLx = 300,
                IlluminanceTolerancePercent = 10,
                Minutes = 5,
                TemperatureC = 20,
            },
            recipe.Charge.Steps[1]
        );
        Assert.Equal(new() { TemperatureC = 15, LimitMcdPerM2 = 2 }, recipe.Darkness);
        Assert.Equal((3000, 60), (recipe.Balance.WhiteCctK, recipe.Balance.GlowAtMinutes));
        Assert.Equal(
            ["layers.glow.loading_percent", "layers.glow.pigment"],
            recipe.Balance.Choices.Select(c => c.KeyPath)
        );
        Assert.Equal(["jis9107-jb"], recipe.CriteriaNames);
        Assert.Equal(new() { ResinPerKg = 28, PigmentPerKg = 190 }, recipe.Prices);
    }

    [Fact]
    public void The_spectrum_of_the_measured_LED_reads_without_a_problem()
    {
        var spectrum = SpectrumFile.Read(
            DocumentFile.Read(Path.Combine(Sample.Folder(), "measured-led.csv"))
        );
        Assert.Empty(spectrum.Problems);
        Assert.Equal((380, 780), (spectrum.Table!.FirstNm, spectrum.Table.LastNm));
    }

    // Figures files lie beside their recipes.
    private static bool IsRecipe(string name) => !name.EndsWith(".figures.yaml", StringComparison.Ordinal);
}
