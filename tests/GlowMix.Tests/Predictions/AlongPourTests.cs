using GlowMix.Colour;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Tests.Predictions;

public sealed class AlongPourTests
{
    private static readonly TestRecipe Level = new() { Layers = TestRecipe.Glow(2.5, 20) };

    [Fact]
    public void Level_pour_has_no_ends()
    {
        Assert.Empty(Level.Predicted.Along);
        Assert.Null(Level.Figures["along_largest_step_u_prime_v_prime"]);
    }

    [Fact]
    public void Ends_are_what_pieces_of_their_depth_are()
    {
        var along = RunsOut(0.6);
        Assert.Equal(["shallow", "nominal", "deep"], along.Along.Select(p => p.Place));
        foreach (var (place, depthMm) in along.Along.Zip([2.2, 2.5, 2.8]))
        {
            var alone = (Level with { Layers = TestRecipe.Glow(depthMm, 20) }).Figures;
            Assert.Equal(depthMm, place.DepthMm, tolerance: 1e-12);
            Assert.Equal(alone["lit.cct_k"]!.Value, place.CctK!.Value, tolerance: 1e-6);
            Assert.Equal(alone["lit.duv"]!.Value, place.Duv!.Value, tolerance: 1e-10);
            Assert.Equal(alone["lit.flux_lm"]!.Value, place.FluxLm!.Value, tolerance: 1e-6);
            Assert.Equal(
                alone["afterglow.luminance_mcd_m2[10]"]!.Value,
                place.LuminanceAt10MinMcdPerM2!.Value,
                tolerance: 1e-6
            );
        }
        Assert.Equal(
            ColourDifference.UPrimeVPrime(At(2.2), At(2.8)),
            along.Figures["along_largest_step_u_prime_v_prime"]!.Value,
            tolerance: 1e-9
        );
    }

    [Fact]
    public void Colour_step_grows_with_the_slope()
    {
        double? small = RunsOut(0.1).Figures["along_largest_step_u_prime_v_prime"];
        double? large = RunsOut(1).Figures["along_largest_step_u_prime_v_prime"];
        Assert.True(small > 0 && large > 5 * small);
    }

    private static Prediction RunsOut(double mm) =>
        TestRecipe
            .Predictor.Predict(
                RecipeDocument.Read(
                    Level.Text.Replace(
                        "  length_mm: 100\n",
                        FormattableString.Invariant($"  length_mm: 100\n  runs_out_mm: {mm}\n"),
                        StringComparison.Ordinal
                    ),
                    "a.yaml"
                )
            )
            .Prediction!;

    private static Chromaticity At(double depthMm)
    {
        var figures = (Level with { Layers = TestRecipe.Glow(depthMm, 20) }).Figures;
        return Chromaticity.FromXy(figures["lit.x"]!.Value, figures["lit.y"]!.Value);
    }
}
