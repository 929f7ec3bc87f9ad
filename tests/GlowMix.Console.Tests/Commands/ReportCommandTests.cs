using System.Text.RegularExpressions;
using System.Xml.Linq;
using GlowMix.Console.Texts;

namespace GlowMix.Console.Tests.Commands;

public sealed class ReportCommandTests : IDisposable
{
    private const string Shortest = """
        format: 1
        title: {0}
        resin: epoxy-clear-slow
        led:
          material: warm-white-3000
        layers:
          - depth_mm: 2.5
            pigment: green-aluminate
            loading_percent: 20

        """;

    private readonly CommandLine line = new();

    public ReportCommandTests()
    {
        foreach (string name in (string[])["stair-edge", "door-sign", "level-strip", "clear-tread"])
        {
            line.Write(
                $"{name}.yaml",
                File.ReadAllText(Path.Combine(TopFolder.Path, $"recipes/{name}.yaml"))
            );
        }
    }

    public void Dispose() => line.Dispose();

    [Theory]
    [InlineData("stair-edge.yaml")]
    [InlineData("door-sign.yaml")]
    [InlineData("level-strip.yaml")]
    [InlineData("clear-tread.yaml")]
    [InlineData("stair-edge.yaml", "clear-tread.yaml")]
    [InlineData("stair-edge.yaml", "--short")]
    public void A_page_is_well_formed_and_asks_nothing_of_the_network(params string[] args)
    {
        var main = Page(args);
        Assert.DoesNotContain(
            main.Descendants(),
            e => e.Name.LocalName is "script" or "link" or "img" or "iframe"
        );
        string text = line.Read("page.html");
        Assert.DoesNotContain("http", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("stair-edge.yaml", 7)]
    [InlineData("clear-tread.yaml", 4)]
    public void Every_drawing_has_words_and_a_table(string recipe, int drawings)
    {
        var figures = Page(recipe).Descendants("figure").ToArray();
        Assert.Equal(drawings, figures.Length);
        Assert.All(
            figures,
            figure =>
            {
                var drawing = figure.Element("svg")!;
                Assert.True(drawing.Attribute("aria-label")!.Value.Length > 20);
                Assert.NotEqual("", drawing.Element("title")!.Value);
                Assert.NotEqual("", figure.Element("figcaption")!.Value);
                Assert.NotEmpty(figure.Descendants("tbody").Elements());
            }
        );
    }

    [Fact]
    public void It_says_what_predict_says()
    {
        string text = Regex.Replace(Page("stair-edge.yaml").Value, @"\s+", " ");
        line.Run("predict", "stair-edge.yaml", "--quick");
        string lit = string.Join(
            ' ',
            line.OutLines.SkipWhile(l => !l.StartsWith("Lit:", StringComparison.Ordinal))
                .TakeWhile(l => !l.StartsWith("Dark:", StringComparison.Ordinal))
        );
        Assert.Contains(lit, text, StringComparison.Ordinal);
        Assert.Contains(MarkingWords.Notice, text, StringComparison.Ordinal);
        Assert.Contains(Cautions.EscapeRoutes, text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_short_page_holds_no_recipe()
    {
        string text = Page("stair-edge.yaml", "--short").Value;
        Assert.DoesNotContain("% by mass", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Part A", text, StringComparison.Ordinal);
        Assert.Contains(MarkingWords.Notice, text, StringComparison.Ordinal);
        Assert.Contains("8 h by its own LEDs", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pour_that_runs_out_of_level_has_another_white_at_each_end()
    {
        line.Write(
            "a.yaml",
            Shortest.Replace("{0}", "a", StringComparison.Ordinal)
                + "pour:\n  length_mm: 100\n  width_mm: 10\n  runs_out_mm: 3\n"
        );
        var lit = Page("a.yaml").Descendants("linearGradient").First();
        Assert.Equal("strip1-lit", lit.Attribute("id")!.Value);
        string[] stops = [.. lit.Elements().Select(e => e.Attribute("stop-color")!.Value)];
        Assert.Equal(3, stops.Distinct().Count());
        // Under more pigment less blue is left; the third pair of digits.
        int[] blue = [.. stops.Select(s => Convert.ToInt32(s[5..], 16))];
        Assert.True(blue[0] > blue[1] && blue[1] > blue[2], string.Join(' ', stops));
    }

    [Theory]
    [InlineData("</main><script>alert(1)</script>")]
    [InlineData("\" onload=\"alert(1)")]
    [InlineData("a & b < c")]
    public void A_title_stays_a_text(string title)
    {
        line.Write("a.yaml", Shortest.Replace("{0}", "'" + title + "'", StringComparison.Ordinal));
        var main = Page("a.yaml");
        Assert.Equal(title, main.Descendants("h1").Single().Value);
        Assert.Empty(main.Descendants("script"));
        Assert.Empty(main.Descendants().Attributes("onload"));
    }

    [Fact]
    public void The_same_recipe_gives_the_same_page()
    {
        Page("stair-edge.yaml");
        string first = line.Read("page.html");
        Page("stair-edge.yaml");
        Assert.Equal(first, line.Read("page.html"));
    }

    [Theory]
    [InlineData(ExitCode.Usage, "report needs a recipe file", "-o", "page.html")]
    [InlineData(ExitCode.Usage, "report needs a page to write, such as -o page.html", "stair-edge.yaml")]
    [InlineData(
        ExitCode.Content,
        "--output is 'stair-edge.yaml'; allowed: a name that ends with .html",
        "door-sign.yaml",
        "-o",
        "stair-edge.yaml"
    )]
    [InlineData(ExitCode.FileAccess, "there is no such folder", "stair-edge.yaml", "-o", "nowhere/page.html")]
    [InlineData(
        ExitCode.FileAccess,
        "this is a folder; needed: a file",
        "stair-edge.yaml",
        "-o",
        "folder.html"
    )]
    [InlineData(ExitCode.FileAccess, "none.yaml", "none.yaml", "-o", "page.html")]
    [InlineData(ExitCode.Content, "format", "broken.yaml", "-o", "page.html")]
    [InlineData(ExitCode.Content, "format", "stair-edge.yaml", "broken.yaml", "-o", "page.html")]
    public void What_it_cannot_do_it_says_and_writes_nothing(int code, string words, params string[] args)
    {
        line.Write("broken.yaml", "resin: epoxy-clear-slow\n");
        Directory.CreateDirectory(Path.Combine(line.Folder, "folder.html"));
        string before = line.Read("stair-edge.yaml");
        Assert.Equal(code, line.Run(["report", .. args]));
        Assert.Contains(words, line.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(line.Folder, "page.html")));
        Assert.Equal(before, line.Read("stair-edge.yaml"));
    }

    /// <summary>The page that it writes, from its body on; read strictly, so that every element must be closed.</summary>
    private XElement Page(params string[] args)
    {
        int code = line.Run(["report", .. args, "--quick", "-o", "page.html"]);
        Assert.True(code == ExitCode.Done, line.Error);
        string text = line.Read("page.html");
        int start = text.IndexOf("<main", StringComparison.Ordinal);
        return XElement.Parse(text[start..text.IndexOf("</body>", StringComparison.Ordinal)]);
    }
}
