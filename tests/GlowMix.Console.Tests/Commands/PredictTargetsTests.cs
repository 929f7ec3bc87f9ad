using System.Text.Json;
using GlowMix.Predictions;

namespace GlowMix.Console.Tests.Commands;

public sealed class PredictTargetsTests : IDisposable
{
    private readonly CommandLine line = new();

    public void Dispose() => line.Dispose();

    [Fact]
    public void Missed_target_is_exit_code_4_only_where_asked_for()
    {
        Given(SampleTargets.Missed, SampleTargets.Met);
        Assert.Equal(ExitCode.Done, line.Run("predict", "a.yaml"));
        Assert.Equal(ExitCode.TargetMissed, line.Run("predict", "a.yaml", "--targets"));
        Assert.Contains("Targets ", line.Out, StringComparison.Ordinal);
        Assert.Equal(ExitCode.TargetMissed, line.Run("predict", "a.yaml", "--targets", "--json"));
    }

    [Fact]
    public void Target_that_is_too_close_or_not_judged_is_not_missed()
    {
        Given(SampleTargets.TooClose, SampleTargets.NotJudged);
        Assert.Equal(ExitCode.Done, line.Run("predict", "a.yaml", "--targets"));
    }

    [Fact]
    public void Error_rules_before_a_missed_target()
    {
        Given(SampleTargets.Missed);
        line.Write("broken.yaml", "format: [1\n");
        Assert.Equal(ExitCode.Content, line.Run("predict", "a.yaml", "broken.yaml", "--targets"));
        Assert.Equal(ExitCode.FileAccess, line.Run("predict", "a.yaml", "none.yaml", "--targets"));
    }

    [Fact]
    public void Json_has_the_verdicts_and_the_places_along_the_pour()
    {
        Given(SampleTargets.TooClose, SampleTargets.NotJudged);
        Assert.Equal(ExitCode.Done, line.Run("predict", "a.yaml", "--json"));
        using var json = JsonDocument.Parse(line.Out);
        var first = json.RootElement.GetProperty("targets")[0];
        Assert.Equal(
            [
                "figure",
                "at_minutes",
                "at_least",
                "at_most",
                "value",
                "state",
                "share_of_draws",
                "margin",
                "reason",
                "decided_by",
            ],
            first.EnumerateObject().Select(p => p.Name)
        );
        Assert.Equal("afterglow.luminance_mcd_m2", first.GetProperty("figure").GetString());
        Assert.Equal("too_close", first.GetProperty("state").GetString());
        Assert.Equal(0.68, first.GetProperty("share_of_draws").GetDouble());
        var second = json.RootElement.GetProperty("targets")[1];
        Assert.Equal("not_judged", second.GetProperty("state").GetString());
        Assert.Equal(JsonValueKind.Null, second.GetProperty("value").ValueKind);
        var place = json.RootElement.GetProperty("along")[0];
        Assert.Equal(
            ["place", "depth_mm", "cct_k", "duv", "flux_lm", "luminance_10_min_mcd_m2"],
            place.EnumerateObject().Select(p => p.Name)
        );
        Assert.Equal("shallow", place.GetProperty("place").GetString());
    }

    [Theory]
    [InlineData("  - figure: lit.dvu\n    at_most: 1\n", "did you mean 'lit.duv'?")]
    [InlineData("  - figure: lit.duv\n    at_least: 2\n    at_most: 1\n", "below at_least")]
    public void Target_that_makes_no_sense_is_an_error_with_its_place(string target, string words)
    {
        line.Write("a.yaml", BadRecipes.Good + "targets:\n" + target);
        Assert.Equal(ExitCode.Content, line.Run("predict", "a.yaml"));
        Assert.Contains(words, line.Error, StringComparison.Ordinal);
        Assert.Matches(@"^a\.yaml:\d+:\d+: ", line.Error);
    }

    [Theory]
    [InlineData("depth_tolerance_mm")]
    [InlineData("loading_tolerance_points")]
    public void Negative_tolerance_is_an_error(string key)
    {
        line.Write("a.yaml", BadRecipes.Good + $"    {key}: -0.1\n");
        Assert.Equal(ExitCode.Content, line.Run("predict", "a.yaml"));
        Assert.Contains($"{key} is -0.1; allowed: 0 to", line.Error, StringComparison.Ordinal);
    }

    private void Given(params TargetVerdict[] targets)
    {
        line.Write("a.yaml", "format: 1\n");
        line.Runner = new SampleRunner(
            SamplePredictions.StairEdge with
            {
                Targets = targets,
                Along = [new("shallow", 2.8, 3790, 0.0202, 1104, 29.2)],
            }
        );
    }
}
