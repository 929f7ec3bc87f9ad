using GlowMix.Documents;
using GlowMix.Recipes;

namespace GlowMix.Tests.Recipes;

public class LedReaderTests
{
    [Fact]
    public void A_LED_from_a_label_is_read()
    {
        var led = Read("  cct_k: 4000\n  flux_lm: 22\n  at_ma: 60\n  max_ma: 150\n  count: 36\n").Recipe!.Led;
        Assert.Equal(
            new LedByLabel(
                4000,
                null,
                new()
                {
                    FluxLm = 22,
                    AtMa = 60,
                    MaxMa = 150,
                }
            ),
            led.Source
        );
        Assert.Equal(36, led.Count);
    }

    [Fact]
    public void A_LED_by_its_spectrum_is_read()
    {
        var led = Read("  spectrum: led.csv\n  flux_lm: 22\n  at_ma: 60\n").Recipe!.Led;
        Assert.Equal("led.csv", Assert.IsType<LedBySpectrum>(led.Source).SpectrumPath);
    }

    [Fact]
    public void A_spectrum_gives_the_shape_and_needs_the_flux() =>
        AssertProblems(
            "  spectrum: led.csv\n",
            "a.yaml:4:3: " + ProblemTexts.Missing("flux_lm", "led"),
            "a.yaml:4:3: " + ProblemTexts.Missing("at_ma", "led")
        );

    [Fact]
    public void A_LED_of_the_shelf_has_its_ratings_in_its_own_file() =>
        AssertProblems(
            "  material: warm\n  flux_lm: 22\n",
            "a.yaml:5:12: " + RecipeTexts.StandsInTheMaterial("flux_lm", "warm")
        );

    [Fact]
    public void A_label_and_a_spectrum_exclude_each_other() =>
        AssertProblems(
            "  cct_k: 3000\n  spectrum: led.csv\n  flux_lm: 22\n  at_ma: 60\n",
            "a.yaml:5:3: " + ProblemTexts.NotBoth("spectrum", "cct_k")
        );

    [Fact]
    public void More_current_than_the_label_allows_is_refused() =>
        AssertProblems(
            "  cct_k: 3000\n  flux_lm: 22\n  at_ma: 60\n  max_ma: 150\n  drive_ma: 200\n",
            "a.yaml:8:13: " + RecipeTexts.DriveOverMax(200, 150)
        );

    [Theory]
    [InlineData("0", "count is 0; allowed: 1 to 100000")]
    [InlineData("2.5", "count is 2.5; needed: a whole number, 1 to 100000")]
    public void LEDs_are_counted(string count, string problem) =>
        AssertProblems($"  material: warm\n  count: {count}\n", "a.yaml:5:10: " + problem);

    private static RecipeDocument Read(string led) =>
        Sample.Read($"format: 1\nresin: r\nled:\n{led}layers:\n  - depth_mm: 2\n");

    private static void AssertProblems(string led, params string[] problems) =>
        Assert.Equal(problems, Read(led).Problems.Select(p => p.ToString()));
}
