using System.Globalization;
using System.Text;
using GlowMix.Predictions;

namespace GlowMix.Tests.Predictions;

/// <summary>One recipe has one answer, whatever was asked before, by how many at once, and wherever the computer stands.</summary>
public class SameAnswerTests
{
    private static readonly TestRecipe Recipe = new()
    {
        Layers = TestRecipe.Glow(1.5, 20) + TestRecipe.Clear(0.5),
        Steps =
            TestRecipe.OwnLeds(90.5, "      with: led-4000\n      illuminance_lx: 50.5\n")
            + TestRecipe.Lamp("daylight-d65", 300, 5.5),
        DarknessC = 12.5,
    };

    [Fact]
    public void A_fresh_predictor_says_the_same_as_a_used_one_under_any_culture()
    {
        string expected = Written(Recipe.Predicted);
        Assert.Equal(expected, Under("tr-TR", () => Written(Recipe.PredictedBy(TestRecipe.Fresh()))));
        Assert.Equal(expected, Under("de-DE", () => Written(Recipe.PredictedBy(TestRecipe.Predictor))));
    }

    [Fact]
    public void Several_at_once_say_the_same_as_one_after_the_other()
    {
        TestRecipe[] recipes =
        [
            .. ((double[])[3, 8, 13, 21]).Select(percent =>
                Recipe with
                {
                    Layers = TestRecipe.Glow(2, percent),
                }
            ),
        ];
        string[] inTurn = [.. recipes.Select(r => Written(r.PredictedBy(TestRecipe.Predictor)))];
        string[] atOnce =
        [
            .. recipes
                .Reverse()
                .AsParallel()
                .AsOrdered()
                .WithDegreeOfParallelism(4)
                .Select(r => Written(r.PredictedBy(TestRecipe.Predictor)))
                .Reverse(),
        ];
        Assert.Equal(inTurn, atOnce);
    }

    private static string Under(string culture, Func<string> say)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            return say();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    /// <summary>All that a prediction says, to the last bit.</summary>
    private static string Written(Prediction prediction)
    {
        var text = new StringBuilder();
        void Line(FormattableString line) =>
            text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
        foreach (var figure in FigureCatalogue.All)
        {
            Line($"{figure.Name} {prediction.Figures[figure]:R}");
        }
        foreach (var (figure, band) in prediction.Bands)
        {
            Line($"{figure.Name} {band.Low:R} {band.Likely:R} {band.High:R}");
        }
        foreach (var warning in prediction.Warnings)
        {
            Line($"{warning.Code} {warning.Figure} {warning.Text}");
        }
        foreach (var assumption in prediction.Assumptions)
        {
            Line($"{assumption.What} {assumption.Text}");
        }
        Line($"{prediction.ChargedBy} {prediction.LimitedBy} {string.Join("; ", prediction.TakenAs)}");
        return text.ToString();
    }
}
