using GlowMix.Documents;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Tests.Predictions;

/// <summary>Shipped LEDs under shipped resin, clear, through the whole model.</summary>
public class PottedLedTests
{
    private static readonly TestRecipe Potted = new()
    {
        Led = "flat-warm-white-3000",
        Layers = TestRecipe.Clear(3),
        Board = "black-mask",
    };

    [Theory]
    [InlineData(0.7)]
    [InlineData(0.4)]
    public void Packages_that_stay_in_air_keep_the_bare_figures_to_the_last_bit(double depthMm)
    {
        var figures = new TestRecipe { Layers = TestRecipe.Clear(depthMm) }.Figures;
        foreach (string name in (string[])["cct_k", "duv", "x", "y", "ra", "r9", "flux_lm"])
        {
            Assert.NotNull(figures[$"bare.{name}"]);
            Assert.Equal(figures[$"bare.{name}"], figures[$"lit.{name}"]);
        }
        Assert.Equal(0, figures["lit.shift_k"]);
        Assert.Equal(0, figures["lit.shift_u_prime_v_prime"]);
        Assert.Equal(100, figures["lit.flux_kept_percent"]);
        Assert.Equal(100, figures["lit.blue_escaped_percent"]);
        Assert.All(
            FigureCatalogue.Causes,
            cause => Assert.Equal(0, figures[$"lit.shift_by_cause_k.{cause}"])
        );
    }

    [Fact]
    public void Pigment_round_packages_in_air_changes_no_white_and_takes_no_light()
    {
        var figures = new TestRecipe { Layers = TestRecipe.Glow(0.7, 20) }.Figures;
        Assert.Equal(figures["bare.cct_k"], figures["lit.cct_k"]);
        Assert.Equal(0, figures["lit.green_share_percent"]);
        Assert.Equal(0, figures["lit.blue_absorbed_by_pigment_percent"]);
        Assert.Equal(0, figures["afterglow.luminance_mcd_m2", 0.5]);
        Assert.Equal(0, figures["afterglow.minutes_to_0_3_mcd_m2"]);
        Assert.Equal(0, figures["afterglow.capacity_filled_percent"]);
    }

    [Fact]
    public void A_film_over_the_packages_hardly_moves_the_white()
    {
        var figures = (Potted with { Layers = TestRecipe.Clear(0.01) }).Figures;
        Assert.InRange(figures["lit.shift_k"]!.Value, 1, 40);
        Assert.InRange(figures["lit.flux_kept_percent"]!.Value, 96, 101);
    }

    // Common practice, no source: warm white fully potted in clear resin in a dark mould turns cooler by 1000 K or more,
    // with a far larger loss near 600 nm than near 450 nm.
    [Theory]
    [InlineData(0.02)]
    [InlineData(0.05)]
    [InlineData(0.1)]
    public void Warm_white_in_a_dark_mould_turns_cooler_by_1000_K_or_more(double windowShare)
    {
        var prediction = (Potted with { WindowShare = windowShare }).Predicted;
        Assert.InRange(prediction.Figures["lit.shift_k"]!.Value, 1000, 2500);
        double kept450 = Kept(prediction, 450);
        double kept600 = Kept(prediction, 600);
        Assert.InRange(1 - kept450, 0.05, 0.25);
        Assert.True(1 - kept600 > 2.5 * (1 - kept450), $"{kept450} and {kept600}");
    }

    [Fact]
    public void A_thin_coat_turns_less_than_a_deep_pour()
    {
        double[] shifts =
        [
            .. ((double[])[0.05, 0.1, 0.2, 3]).Select(mm =>
                (Potted with { Layers = TestRecipe.Clear(mm) }).Figures["lit.shift_k"]!.Value
            ),
        ];
        Assert.Equal(shifts.Order(), shifts);
        Assert.InRange(shifts[0], 0.05 * shifts[3], 0.5 * shifts[3]);
    }

    // From an independent sketch: 90 to 102 mired, ± 30 %.
    [Theory]
    [InlineData(0.15)]
    [InlineData(0.05)]
    public void The_shift_in_mired_is_of_one_size_from_2700_to_4000_K(double windowShare)
    {
        double[] mired =
        [
            .. ((string[])["warm-white-2700", "warm-white-3000", "neutral-white-4000"]).Select(led =>
            {
                var figures = (Potted with { Led = $"flat-{led}", WindowShare = windowShare }).Figures;
                return (1e6 / figures["bare.cct_k"]!.Value) - (1e6 / figures["lit.cct_k"]!.Value);
            }),
        ];
        Assert.All(mired, m => Assert.InRange(m, 0.7 * 90, 1.3 * 102));
        Assert.InRange(mired.Max() / mired.Min(), 1, 1.3);
    }

    [Fact]
    public void Clear_resin_between_the_packages_takes_a_little_of_what_comes_down_beside_them()
    {
        var flat = (Potted with { Board = "white-mask" }).Figures;
        var tall = (
            Potted with
            {
                Board = "white-mask",
                Led = "warm-white-3000",
                Layers = TestRecipe.Clear(3.7),
            }
        ).Figures;
        Assert.Equal(flat["lit.cct_k"]!.Value, tall["lit.cct_k"]!.Value, tolerance: 25);
        double byResin =
            tall["lit.blue_absorbed_by_resin_percent"]!.Value
            - flat["lit.blue_absorbed_by_resin_percent"]!.Value;
        // 0.7 mm twice at 0.004 /mm, slanting: 1 % of the half that comes down, some twice.
        Assert.InRange(byResin, 0.3, 1.5);
        Assert.True(tall["lit.blue_escaped_percent"] < flat["lit.blue_escaped_percent"]);
    }

    [Fact]
    public void A_return_matrix_that_takes_more_than_the_LED_has_is_refused()
    {
        var outcome = TestRecipe.Predictor.Predict((Potted with { Led = "contradictory" }).Document);
        Assert.Null(outcome.Prediction);
        var problem = Assert.Single(outcome.Problems);
        Assert.Equal((Severity.Error, 4), (problem.Severity, problem.Place!.Value.Line));
        Assert.Contains("return matrix of contradictory", problem.Text, StringComparison.Ordinal);
    }

    private static double Kept(Prediction prediction, int nm)
    {
        int i = (nm - WavelengthGrid.FirstNm) / WavelengthGrid.StepNm;
        return prediction.Spectra.LitWPerNm[i] / prediction.Spectra.BareWPerNm[i];
    }
}
