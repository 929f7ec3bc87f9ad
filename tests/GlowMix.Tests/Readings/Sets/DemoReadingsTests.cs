using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Predictions;
using GlowMix.Readings.Files;
using GlowMix.Readings.Fit;
using GlowMix.Readings.Sets;
using GlowMix.Recipes;
using GlowMix.Tests.Recipes;

namespace GlowMix.Tests.Readings.Sets;

/// <summary>
/// When the readings of recipes/readings no longer are what the model makes, write them anew: dotnet test tests/GlowMix.Tests -c Release
/// --filter FullyQualifiedName~Write_the_readings_anew -- xUnit.Explicit=only
/// </summary>
public sealed class DemoReadingsTests
{
    private static readonly char[] Marks = ['\t', ';'];

    [Fact]
    public void The_invented_readings_are_what_the_model_makes_of_their_hidden_truth()
    {
        foreach (var (name, text) in DemoReadings.Files)
        {
            string[] shipped = File.ReadAllLines(Path.Combine(DemoReadings.Folder, name));
            string[] anew = text.TrimEnd('\n').Split('\n');
            Assert.Equal(anew.Length, shipped.Length);
            Assert.All(
                anew.Zip(shipped),
                pair =>
                {
                    string[] made = pair.First.Split(Marks);
                    string[] read = pair.Second.Split(Marks);
                    if (made.Length < 2 || !NumberText.TryRead(made[1], out double expected))
                    {
                        Assert.Equal(pair.First, pair.Second);
                        return;
                    }
                    Assert.Equal(made[0], read[0]);
                    Assert.True(NumberText.TryRead(read[1], out double value));
                    // A last digit may fall to the other side of a half on another processor.
                    Assert.Equal(expected, value, 0.011);
                }
            );
        }
    }

    [Fact]
    public void A_fit_finds_the_hidden_truth_of_the_invented_readings()
    {
        var document = RecipeDocument.Read(
            DocumentFile.Read(Path.Combine(Sample.Folder(), "stair-edge.yaml"))
        );
        var (set, problems) = ReadingsSetFile.Read(
            DocumentFile.Read(Path.Combine(DemoReadings.Folder, "stair-edge.readings.yaml"))
        );
        Assert.Empty(problems);
        var predictor = new Predictor(new Shelf());
        var assembled = SetAssembly.Of(
            document,
            set!,
            predictor,
            path => DocumentFile.ReadBytes(Path.Combine(DemoReadings.Folder, path), ReadingFile.LongestBytes)
        );
        Assert.Empty(assembled.Problems);
        Assert.Equal(4, assembled.Hashes.Length);
        var (result, refusal) = new Fitter(predictor).Fit(assembled.Readings!);
        Assert.Null(refusal);
        AssertTold(result!, "led.conversion_factor", 1.2);
        AssertTold(result!, "green-aluminate.absorption_factor", DemoReadings.Truth.Strength);
        AssertTold(result!, "green-aluminate.photoluminescence_yield", DemoReadings.Truth.Yield!.Value);
        AssertTold(result!, "green-aluminate.trap_level", DemoReadings.Truth.TrapLevel);
        Assert.All(result!.Misfits, m => Assert.False(m.IsLackOfFit, m.Name));
    }

    [Fact(Explicit = true)]
    public void Write_the_readings_anew()
    {
        Directory.CreateDirectory(DemoReadings.Folder);
        foreach (var (name, text) in DemoReadings.Files)
        {
            File.WriteAllText(Path.Combine(DemoReadings.Folder, name), text);
        }
    }

    private static void AssertTold(FitResult result, string key, double truth)
    {
        var number = result[key];
        Assert.NotNull(number);
        Assert.InRange(number.Value, truth - (3 * number.StandardError), truth + (3 * number.StandardError));
    }
}
