using GlowMix.Documents;
using GlowMix.Predictions;
using GlowMix.Recipes;
using GlowMix.Tests.Recipes;

namespace GlowMix.Tests.Predictions;

public class PredictionTests
{
    private static readonly TestRecipe Glowing = new();
    private static readonly TestRecipe Clear = new() { Layers = TestRecipe.Clear(2.5) };

    public static TheoryData<string> ShippedRecipes =>
        [
            .. Directory
                .GetFiles(Sample.Folder(), "*.yaml")
                .Select(f => Path.GetFileName(f)!)
                .Where(f => !f.EndsWith(".figures.yaml", StringComparison.Ordinal))
                .Order(),
        ];

    [Theory, MemberData(nameof(ShippedRecipes))]
    public void A_shipped_recipe_is_predicted_with_bands_around_what_is_likely(string name)
    {
        var files = new FolderFiles(Sample.Folder());
        var document = RecipeDocument.Read(DocumentFile.Read(Path.Combine(Sample.Folder(), name)));
        // Materials of the shelf are those of the other tests; only what a path names lies in the folder.
        var predictor = document.Text.Contains("spectrum:", StringComparison.Ordinal)
            ? new Predictor(new GlowMix.Materials.Shelf(), files)
            : TestRecipe.Predictor;
        var outcome = predictor.Predict(document);
        Assert.DoesNotContain(outcome.Problems, p => p.Severity == Severity.Error);
        AssertSound(outcome.Prediction!);
    }

    [Fact]
    public void Clear_resin_has_no_glow_and_says_so_with_nothing()
    {
        var prediction = Clear.Predicted;
        Assert.All(
            FigureCatalogue.All.Where(f => f.Name.StartsWith("afterglow.", StringComparison.Ordinal)),
            f => Assert.Null(prediction.Figures[f])
        );
        Assert.Equal(0, prediction.Figures["lit.green_share_percent"]);
        Assert.Null(prediction.Decay);
        Assert.Null(prediction.Spectra.GlowShape);
        Assert.Null(prediction.LimitedBy);
        Assert.Empty(prediction.Bands);
        Assert.Empty(prediction.Loadings);
    }

    [Fact]
    public void An_LED_without_blue_has_no_budget_of_it()
    {
        var figures = (Glowing with { Led = "no-die" }).Figures;
        Assert.Null(figures["lit.blue_escaped_percent"]);
        Assert.Null(figures["lit.blue_absorbed_by_pigment_percent"]);
        Assert.NotNull(figures["lit.flux_kept_percent"]);
    }

    [Fact]
    public void Without_number_and_size_there_are_shares_but_no_lumens()
    {
        var figures = (Glowing with { HasSize = false }).Figures;
        Assert.Null(figures["bare.flux_lm"]);
        Assert.Null(figures["lit.flux_lm"]);
        Assert.NotNull(figures["lit.flux_kept_percent"]);
        Assert.NotNull(figures["lit.cct_k"]);
        Assert.NotNull(figures["afterglow.luminance_mcd_m2", 10]);
        foreach (string masses in (string[])["mix_volume_ml", "part_a_g", "part_b_g", "pigment_g", "cost"])
        {
            Assert.Null(figures[$"casting.{masses}"]);
        }
    }

    [Fact]
    public void Windows_that_cover_5_percent_say_the_same_as_what_is_assumed_without_size()
    {
        var told = Glowing.Figures;
        var assumed = (Glowing with { HasSize = false }).Figures;
        foreach (string name in (string[])["lit.cct_k", "lit.duv", "afterglow.luminance_mcd_m2[10]"])
        {
            Assert.Equal(
                told[name]!.Value,
                assumed[name]!.Value,
                tolerance: 1e-6 * Math.Abs(told[name]!.Value)
            );
        }
    }

    [Fact]
    public void Lumens_are_those_of_all_LEDs_at_their_drive()
    {
        var full = Clear.Figures;
        Assert.Equal(2300, full["bare.flux_lm"]!.Value, tolerance: 1e-6);
        var half = TestRecipe.Predictor.Predict(Clear.Document.With("led.drive_ma", 30)).Prediction!.Figures;
        Assert.Equal(1150, half["bare.flux_lm"]!.Value, tolerance: 1e-6);
        Assert.Equal(full["lit.cct_k"]!.Value, half["lit.cct_k"]!.Value, tolerance: 1e-6);
    }

    [Fact]
    public void Figures_of_the_lit_white_agree_with_each_other()
    {
        var figures = Glowing.Figures;
        double F(string name) => figures[name]!.Value;
        Assert.Equal(F("lit.cct_k") - F("bare.cct_k"), F("lit.shift_k"), tolerance: 1e-9);
        Assert.Equal(100 * F("lit.flux_lm") / F("bare.flux_lm"), F("lit.flux_kept_percent"), tolerance: 1e-9);
        double x = F("lit.x");
        double y = F("lit.y");
        Assert.Equal(4 * x / ((-2 * x) + (12 * y) + 3), F("lit.u_prime"), tolerance: 1e-12);
        Assert.Equal(9 * y / ((-2 * x) + (12 * y) + 3), F("lit.v_prime"), tolerance: 1e-12);
    }

    [Theory]
    [InlineData("epoxy-clear-slow", 20, 2.5)]
    [InlineData("silicone-clear", 5, 1.2)]
    [InlineData("epoxy-clear-slow", 40, 5)]
    public void The_shift_by_cause_adds_up_to_the_whole(string resin, double loadingPercent, double depthMm)
    {
        var figures = (
            Glowing with
            {
                Resin = resin,
                Layers = TestRecipe.Glow(depthMm, loadingPercent) + TestRecipe.Clear(0.5),
            }
        ).Figures;
        double Sum(string of) =>
            FigureCatalogue.Causes.Sum(cause => figures[$"lit.shift_by_cause_{of}.{cause}"]!.Value);
        var bare = Colour(figures["bare.x"]!.Value, figures["bare.y"]!.Value);
        Assert.Equal(figures["lit.u_prime"]!.Value - bare.UPrime, Sum("u_prime"), tolerance: 1e-12);
        Assert.Equal(figures["lit.v_prime"]!.Value - bare.VPrime, Sum("v_prime"), tolerance: 1e-12);
        Assert.Equal(
            figures["lit.shift_u_prime_v_prime"]!.Value,
            Math.Sqrt((Sum("u_prime") * Sum("u_prime")) + (Sum("v_prime") * Sum("v_prime"))),
            tolerance: 1e-12
        );
        Assert.Equal(figures["lit.shift_k"]!.Value, Sum("k"), tolerance: 1e-9);
    }

    [Fact]
    public void Causes_that_are_not_there_shift_nothing()
    {
        var figures = Clear.Figures;
        Assert.Equal(0, figures["lit.shift_by_cause_u_prime.pigment_absorption"]);
        Assert.Equal(0, figures["lit.shift_by_cause_u_prime.pigment_emission"]);
        Assert.True(figures["lit.shift_by_cause_k.index_matching"] > 500);
        Assert.True(figures["lit.shift_by_cause_k.resin_absorption"] < 0);
    }

    [Fact]
    public void The_decay_is_the_figures_curve()
    {
        var prediction = Glowing.Predicted;
        var decay = prediction.Decay!;
        Assert.Equal(decay.Minutes.Order(), decay.Minutes);
        Assert.Equal(
            prediction.Figures["afterglow.luminance_mcd_m2", 0.5]!.Value,
            decay.LikelyMcdPerM2[0],
            tolerance: 1e-9 * decay.LikelyMcdPerM2[0]
        );
        for (int i = 0; i < decay.Minutes.Count; i++)
        {
            Assert.True(decay.LowMcdPerM2[i] <= decay.LikelyMcdPerM2[i]);
            Assert.True(decay.LikelyMcdPerM2[i] <= decay.HighMcdPerM2[i]);
        }
    }

    [Fact]
    public void What_was_not_certain_of_the_sheet_is_less_certain_late()
    {
        double Spread(double minutes)
        {
            string name = FigureCatalogue.AtMinutes("afterglow.luminance_mcd_m2", minutes);
            var band = Glowing.Predicted.Bands.First(b => b.Key.Name == name).Value;
            return band.High!.Value / band.Low!.Value;
        }
        Assert.True(Spread(480) > 1.5 * Spread(30));
    }

    private static (double UPrime, double VPrime) Colour(double x, double y) =>
        (4 * x / ((-2 * x) + (12 * y) + 3), 9 * y / ((-2 * x) + (12 * y) + 3));

    private static void AssertSound(Prediction prediction)
    {
        foreach (var figure in FigureCatalogue.All)
        {
            Assert.True(prediction.Figures[figure] is null or (> double.MinValue and < double.MaxValue));
        }
        foreach (var (figure, band) in prediction.Bands)
        {
            Assert.Equal(prediction.Figures[figure], band.Likely);
            Assert.True(
                band.Likely is null || (band.Low <= band.Likely && band.Likely <= band.High),
                figure.Name
            );
        }
        Assert.InRange(prediction.Figures["lit.flux_kept_percent"]!.Value, 20, 130);
    }
}
