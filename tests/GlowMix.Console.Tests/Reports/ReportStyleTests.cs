using System.Globalization;
using System.Text.RegularExpressions;

namespace GlowMix.Console.Tests.Reports;

/// <summary>The colours of the report's style sheet.</summary>
public class ReportStyleTests
{
    // WCAG 2.2, success criteria 1.4.3 (letters, AA) and 1.4.11 (parts of drawings).
    private const double LeastOfLetters = 4.5;
    private const double LeastOfDrawings = 3;

    private static readonly string css = File.ReadAllText(
        Path.Combine(TopFolder.Path, "src/GlowMix.Console/Reports/report.css")
    );

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void Letters_and_drawings_stand_out_from_light_dark_and_printed_paper(int scheme)
    {
        // The first stands always, the others put theirs in its place.
        var colours = new Dictionary<string, string>();
        foreach (int each in new[] { 0, scheme })
        {
            foreach (
                Match colour in Regex.Matches(
                    Regex.Matches(css, @":root \{(.*?)\}", RegexOptions.Singleline)[each].Value,
                    @"--(\w+): (#[0-9a-f]{6});"
                )
            )
            {
                colours[colour.Groups[1].Value] = colour.Groups[2].Value;
            }
        }
        Assert.All(
            (string[])["ink", "soft", "bare", "lit", "pigment", "limit"],
            name => Assert.InRange(Contrast(colours[name], colours["paper"]), LeastOfLetters, 21)
        );
        Assert.All(
            colours.Keys.Where(name => name.StartsWith("share", StringComparison.Ordinal)),
            name => Assert.InRange(Contrast(colours[name], colours["paper"]), LeastOfDrawings, 21)
        );
    }

    [Fact]
    public void What_is_folded_on_a_screen_is_open_in_print()
    {
        string print = css[css.IndexOf("@media print", StringComparison.Ordinal)..];
        Assert.Matches(
            @"details::details-content \{\s*content-visibility: visible;\s*display: block;",
            print
        );
    }

    [Fact]
    public void Black_on_white_is_21_to_1() => Assert.Equal(21, Contrast("#000000", "#ffffff"), 1e-9);

    private static double Contrast(string one, string other)
    {
        double[] luminances = [.. new[] { Luminance(one), Luminance(other) }.Order()];
        return (luminances[1] + 0.05) / (luminances[0] + 0.05);
    }

    private static double Luminance(string colour) =>
        (0.2126 * Linear(colour[1..3])) + (0.7152 * Linear(colour[3..5])) + (0.0722 * Linear(colour[5..7]));

    private static double Linear(string encoded)
    {
        double value = int.Parse(encoded, NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
    }
}
