using GlowMix.Console.Texts;
using GlowMix.Predictions;

namespace GlowMix.Console.Tests.Texts;

public sealed class PredictionSheetTests
{
    [Fact]
    public void A_prediction_fits_80_columns_and_leads_with_three_sentences()
    {
        string[] lines = Print(SamplePredictions.StairEdge);
        Assert.Equal("Stair edge, warm white (recipes/stair-edge.yaml)", lines[0]);
        Assert.Equal(
            "Lit: 3000 → 3800 K, cooler (bluer), clearly greenish; 82 % of the light kept.",
            lines[1]
        );
        Assert.Equal("Dark: plan on 4.2 h above 0.3 mcd/m²; likely 8.3; at best 17.", lines[2]);
        Assert.StartsWith("Limited by: the charge", lines[3], StringComparison.Ordinal);
        Assert.All(lines, line => Assert.InRange(line.Length, 0, 80));
        Assert.InRange(lines.Length, 20, 28);
    }

    [Fact]
    public void The_low_end_of_the_glow_leads_with_two_digits_at_most()
    {
        string[] lines = Print(SamplePredictions.StairEdge);
        int first = Array.IndexOf(
            lines,
            "mcd/m²         2 min   10 min   30 min   60 min     above 0.3       above 2"
        );
        Assert.Equal(
            [
                "low               55       15        5      1.9         4.2 h        58 min",
                "likely           110       31       10      4.4         8.3 h       100 min",
                "high             220       66       21      9.7          17 h         3.7 h",
            ],
            lines[(first + 1)..(first + 4)]
        );
    }

    [Fact]
    public void Ra_is_told_only_where_it_means_something()
    {
        Assert.Contains(
            "Ra 78, not meaningful at this tint; bare Ra 82",
            Text(SamplePredictions.StairEdge),
            StringComparison.Ordinal
        );
        Assert.Contains("Ra 78, R9 -3; bare Ra 82", Text(SamplePredictions.Clear), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_pigment_there_is_no_dark_part()
    {
        string text = Text(SamplePredictions.Clear);
        Assert.Contains("Dark: no glow, for there is no pigment in it.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("mcd/m²", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Charged", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Packages_in_air_are_told_plainly()
    {
        string text = Text(SamplePredictions.StairEdge with { DepthOverPackagesMm = 0 });
        Assert.Contains(
            "Lit: as the bare board, 3000 K, for the LED packages stay in air",
            text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_light_without_colour_temperature_is_told_in_words()
    {
        var green = SamplePredictions
            .StairEdge.WithFigure("lit.cct_k", null)
            .WithFigure("lit.duv", null)
            .WithFigure("lit.x", 0.28)
            .WithFigure("lit.y", 0.55);
        string text = Text(green with { Bands = [] });
        Assert.Contains(
            "Lit: from 3000 K to green, too far from white for a colour temperature",
            text,
            StringComparison.Ordinal
        );
        Assert.Contains("White none: green, x 0.280, y 0.550; bare 3000 K", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(3000.0, 2600.0, "3000 → 2600 K, warmer (yellower), no tint to see")]
    [InlineData(3000.0, 3004.0, "stays at 3000 K, no tint to see")]
    public void A_colour_temperature_comes_with_its_direction(double bareK, double litK, string words)
    {
        var prediction = SamplePredictions
            .Clear.WithFigure("bare.cct_k", bareK)
            .WithFigure("lit.cct_k", litK);
        Assert.StartsWith(
            $"Lit: {words};",
            PredictionSentences.Of(prediction).First(),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(25.2, 50.4, 99.7, "Dark: plan on 25 min above 0.3 mcd/m²; likely 50; at best 100.")]
    [InlineData(400, 2500.0, 9000.0, "Dark: plan on 6.7 h above 0.3 mcd/m²; likely 42 h; at best 6.2 days.")]
    [InlineData(0.4, 2.0, 5.0, "Dark: plan on under 1 min above 0.3 mcd/m²; likely 2; at best 5.")]
    [InlineData(25.0, 25.1, 25.2, "Dark: plan on 25 min above 0.3 mcd/m²; at best hardly more.")]
    [InlineData(6e6, 1e7, 1e7, "Dark: plan on 11 years above 0.3 mcd/m²; likely over 19; at best over 19.")]
    [InlineData(0.0, 12.0, 40.0, "Dark: plan on no glow above 0.3 mcd/m²; likely 12 min; at best 40 min.")]
    [InlineData(0.0, 0.0, 4.0, "Dark: plan on no glow above 0.3 mcd/m²; likely none; at best 4 min.")]
    [InlineData(0.0, 0.0, 0.0, "Dark: never above 0.3 mcd/m².")]
    public void The_minutes_lead_with_the_low_end(double low, double likely, double high, string words)
    {
        var prediction = SamplePredictions.StairEdge.WithBand(
            "afterglow.minutes_to_0_3_mcd_m2",
            new Band(low, likely, high)
        );
        Assert.Equal(words, PredictionSentences.Of(prediction).ElementAt(1));
    }

    [Theory]
    [InlineData(82.4, "82 % of the light kept")]
    [InlineData(0.2, "<1 % of the light kept")]
    [InlineData(99.7, "as bright as the bare board")]
    [InlineData(107.2, "7 % brighter than the bare board")]
    public void The_light_is_told_against_the_bare_board(double keptPercent, string words) =>
        Assert.EndsWith(
            $"; {words}.",
            PredictionSentences
                .Of(SamplePredictions.Clear.WithFigure("lit.flux_kept_percent", keptPercent))
                .First(),
            StringComparison.Ordinal
        );

    [Fact]
    public void A_piece_that_lets_no_light_out_says_so()
    {
        var dark = SamplePredictions.Clear;
        foreach (string figure in new[] { "lit.cct_k", "lit.duv", "lit.x", "lit.y", "lit.ra", "lit.r9" })
        {
            dark = dark.WithFigure(figure, null);
        }
        Assert.Equal("Lit: no light comes out.", PredictionSentences.Of(dark).First());
        Assert.Contains("no Ra at this tint; bare Ra 82", Text(dark), StringComparison.Ordinal);
    }

    [Fact]
    public void Warnings_are_a_line_each_and_the_lightest_wait_for_the_full_output()
    {
        Warning[] warnings =
        [
            new("packages-in-air", null, "the packages stay in air: told above already"),
            .. Enumerable.Range(1, 7).Select(i => new Warning("w", null, $"reminder {i}; and why")),
        ];
        var prediction = SamplePredictions.StairEdge with { Warnings = warnings };
        string[] lines = Print(prediction);
        int first = Array.IndexOf(lines, "Warnings   reminder 1");
        Assert.Equal("           reminder 4", lines[first + 3]);
        Assert.Equal("           and 3 more with --full", lines[first + 4]);
        Assert.Contains("           - reminder 7; and why", Print(prediction, full: true));
    }

    [Fact]
    public void What_to_calibrate_first_is_named_once_for_each_material()
    {
        var prediction = SamplePredictions.StairEdge with
        {
            Assumptions =
            [
                new("grain absorption of a", "1"),
                new("trap capacity of a", "2"),
                new("reflectance of b", "3"),
                new("absorption of c", "4"),
            ],
        };
        Assert.Contains(
            "Calibrate first grain absorption, trap capacity of a, reflectance of b; 1 more with --full",
            Text(prediction),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_full_output_has_every_figure_and_the_split_by_cause()
    {
        string[] lines = Print(SamplePredictions.StairEdge, full: true);
        Assert.All(
            FigureCatalogue.All,
            figure =>
                Assert.Contains(lines, line => line.StartsWith(figure.Name + " ", StringComparison.Ordinal))
        );
        Assert.Contains("By cause   index matching: 690 K cooler (bluer), u′ -0.0123, v′ -0.0051", lines);
        Assert.Contains("           pigment emission: no CCT, u′ -0.0088, v′ +0.0094", lines);
        Assert.All(lines, line => Assert.InRange(line.Length, 0, 80));
    }

    [Theory]
    [InlineData(40)]
    [InlineData(57)]
    public void A_narrow_terminal_gets_narrow_lines(int columns)
    {
        string[] lines = Print(SamplePredictions.StairEdge, full: true, columns);
        Assert.All(lines, line => Assert.InRange(line.Length, 0, Math.Max(columns, 46)));
    }

    private static string[] Print(Prediction prediction, bool full = false, int columns = 80)
    {
        using var writer = new StringWriter { NewLine = "\n" };
        new PredictionSheet(prediction, new Sheet(writer, new TextStyle(columns))).Print(full);
        return writer.ToString().TrimEnd('\n').Split('\n');
    }

    // On one line, so that a text is found wherever its lines break.
    private static string Text(Prediction prediction) =>
        System.Text.RegularExpressions.Regex.Replace(string.Join(' ', Print(prediction)), " +", " ");
}
