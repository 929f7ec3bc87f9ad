using System.Globalization;
using System.Text;
using System.Text.Json;

namespace GlowMix.Console.Tests.Commands;

/// <summary>A reading made from the prediction of a changed recipe: the change is what explains it.</summary>
public sealed class ReadingOfRecipeTests : IDisposable
{
    private const string Recipe = """
        format: 1
        resin: epoxy-clear-slow
        led:
          material: warm-white-3000
        layers:
          - name: glow
            depth_mm: 2.5
            pigment: green-aluminate
            loading_percent: 20
        """;

    private readonly CommandLine line = new();

    public ReadingOfRecipeTests() => line.Write("a.yaml", Recipe);

    public void Dispose() => line.Dispose();

    [Theory]
    [InlineData("loading_percent: 20", "loading_percent: 33", "loading of glow", 1.65)]
    [InlineData("depth_mm: 2.5", "depth_mm: 1.9", "depth of glow", 0.76)]
    public void The_cause_is_found(string from, string to, string cause, double factor)
    {
        line.Write("b.yaml", Recipe.Replace(from, to, StringComparison.Ordinal));
        line.Write("read.csv", Lit("b.yaml"));
        Assert.Equal(ExitCode.Done, line.Run("reading", "read.csv", "--of", "a.yaml", "--json"));
        using var json = JsonDocument.Parse(line.Out);
        var of = json.RootElement.GetProperty("of");
        var best = of.GetProperty("causes")[0];
        Assert.Equal(cause, best.GetProperty("cause").GetString());
        Assert.InRange(best.GetProperty("factor").GetDouble() / factor, 0.85, 1.18);
        Assert.True(best.GetProperty("left_share").GetDouble() < 0.35);
        Assert.Equal(10, of.GetProperty("figures").GetArrayLength());
    }

    [Theory]
    [InlineData]
    [InlineData("--quick")]
    public void The_bands_are_those_of_predict(params string[] quick)
    {
        line.Write("read.csv", "nm;W/m2/nm\n400;1\n500;2\n600;3\n700;1\n");
        Assert.Equal(ExitCode.Done, line.Run(["predict", "a.yaml", "--json", .. quick]));
        using var predicted = JsonDocument.Parse(line.Out);
        var band = predicted.RootElement.GetProperty("bands").GetProperty("lit.cct_k");
        Assert.Equal(ExitCode.Done, line.Run(["reading", "read.csv", "--of", "a.yaml", "--json", .. quick]));
        using var json = JsonDocument.Parse(line.Out);
        var cct = json
            .RootElement.GetProperty("of")
            .GetProperty("figures")
            .EnumerateArray()
            .Single(f => f.GetProperty("figure").GetString() == "lit.cct_k");
        Assert.Equal(band.GetProperty("low").GetDouble(), cct.GetProperty("low").GetDouble());
        Assert.Equal(band.GetProperty("high").GetDouble(), cct.GetProperty("high").GetDouble());
    }

    [Fact]
    public void Quick_bands_need_a_recipe()
    {
        line.Write("read.csv", "nm;W/m2/nm\n400;1\n500;2\n600;3\n700;1\n");
        Assert.Equal(ExitCode.Usage, line.Run("reading", "read.csv", "--quick"));
        Assert.Contains("--of", line.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_recipes_own_light_is_as_predicted()
    {
        line.Write("read.csv", Lit("a.yaml"));
        Assert.Equal(ExitCode.Done, line.Run("reading", "read.csv", "--of", "a.yaml"));
        Assert.Contains(
            "10 of 10 figures lie in their bands",
            line.Out.Replace("\n", " ", StringComparison.Ordinal),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "the spectrum is as predicted",
            line.Out.Replace("\n", " ", StringComparison.Ordinal),
            StringComparison.Ordinal
        );
        Assert.All(line.OutLines, l => Assert.True(l.Length <= 80, l));
    }

    [Fact]
    public void A_decay_is_compared_point_by_point()
    {
        Assert.Equal(ExitCode.Done, line.Run("predict", "a.yaml", "--json"));
        using var predicted = JsonDocument.Parse(line.Out);
        var luminance = predicted.RootElement.GetProperty("afterglow").GetProperty("luminance_mcd_m2");
        var text = new StringBuilder("min;mcd/m2\n");
        foreach (string minutes in new[] { "2", "5", "10", "30", "60" })
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"{minutes};{0.2 * luminance.GetProperty(minutes).GetDouble():0.000}\n"
            );
        }
        line.Write("glow.csv", text.ToString());
        Assert.Equal(ExitCode.Done, line.Run("reading", "glow.csv", "--of", "a.yaml", "--json"));
        using var json = JsonDocument.Parse(line.Out);
        var of = json.RootElement.GetProperty("of");
        Assert.Equal(5, of.GetProperty("readings").GetArrayLength());
        Assert.All(
            of.GetProperty("readings").EnumerateArray(),
            r => Assert.Equal(0.2, r.GetProperty("factor").GetDouble(), 0.004)
        );
        Assert.All(
            of.GetProperty("readings").EnumerateArray(),
            r => Assert.False(r.GetProperty("inside").GetBoolean())
        );
        Assert.StartsWith(
            "one factor of 0.20",
            of.GetProperty("cause").GetString(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_recipe_that_cannot_be_read_or_predicted_is_told()
    {
        line.Write("read.csv", "nm;W/m2/nm\n400;1\n500;2\n600;3\n");
        Assert.Equal(ExitCode.FileAccess, line.Run("reading", "read.csv", "--of", "none.yaml"));
        line.Write("bad.yaml", "format: 1\n");
        Assert.Equal(ExitCode.Content, line.Run("reading", "read.csv", "--of", "bad.yaml"));
        Assert.StartsWith("bad.yaml:", line.Error, StringComparison.Ordinal);
    }

    private string Lit(string recipe)
    {
        Assert.Equal(ExitCode.Done, line.Run("predict", recipe, "--csv", "out"));
        string[] rows = line.Read("out/spectra.csv").TrimEnd('\n').Split('\n');
        int lit = Array.IndexOf(rows[0].Split(','), "lit_w_per_nm");
        return "nm;W/m2/nm\n"
            + string.Concat(rows.Skip(1).Select(r => $"{r.Split(',')[0]};{r.Split(',')[lit]}\n"));
    }
}
