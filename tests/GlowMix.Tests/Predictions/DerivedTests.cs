using GlowMix.Materials;
using GlowMix.Optics.Grains;
using GlowMix.Spectra;

namespace GlowMix.Tests.Predictions;

/// <summary>
/// What travels along is what would be worked out, and nothing else does. When these fail after a change of the model or of a
/// material, write the files anew with the command in data/derived/README.md.
/// </summary>
public class DerivedTests
{
    // The last digits depend on the processor's instructions.
    private const double Closeness = 1e-9;

    public static TheoryData<string> GrainKeys => [.. DerivedFiles.Grains.Keys];

    public static TheoryData<string> LadderKeys => [.. DerivedFiles.Ladders.Keys];

    [Theory, MemberData(nameof(GrainKeys))]
    public void Grains_that_travel_along_are_those_that_would_be_worked_out(string key)
    {
        var shipped = DerivedFiles.Grains[key].Shipped;
        Assert.NotNull(shipped);
        var anew = DerivedFiles.Grains[key].WorkedOut();
        Assert.Equal(anew.Classes.Length, shipped.Classes.Length);
        Assert.All(anew.Classes.Zip(shipped.Classes), pair => AssertClose(pair.First, pair.Second));
    }

    [Theory, MemberData(nameof(LadderKeys))]
    public void Ladders_that_travel_along_are_those_that_would_be_fitted(string key)
    {
        var shipped = DerivedFiles.Ladders[key].Shipped;
        var anew = DerivedFiles.Ladders[key].WorkedOut();
        Assert.NotEmpty(anew);
        Assert.Equal(anew.Select(f => f.Variation), shipped.Select(f => f.Variation));
        Assert.All(
            anew.Zip(shipped),
            pair =>
            {
                var (fitted, read) = (pair.First.Fit, pair.Second.Fit);
                Assert.Equal(fitted.ReachesMinutes, read.ReachesMinutes);
                Assert.Equal(fitted.Ladder!.Constants, read.Ladder!.Constants);
                Assert.Equal(
                    1,
                    read.Ladder.TrappingEfficiencyAt20C / fitted.Ladder.TrappingEfficiencyAt20C,
                    Closeness
                );
                Assert.All(
                    fitted.Ladder.TrapsPerMm3.ToArray().Zip(read.Ladder.TrapsPerMm3.ToArray()),
                    rung =>
                        Assert.Equal(0, (rung.Second - rung.First) / fitted.Ladder.CapacityPerMm3, Closeness)
                );
                Assert.All(
                    fitted.ResidualsPercent.Zip(read.ResidualsPercent),
                    residual => Assert.Equal(residual.First, residual.Second, 100 * Closeness)
                );
            }
        );
    }

    [Fact]
    public void Nothing_else_travels_along()
    {
        const string Folder = "data/derived/";
        var there = typeof(Shelf)
            .Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
            .Order();
        Assert.Equal(
            DerivedFiles
                .Grains.Keys.Select(key => $"{Folder}grains/{key}.csv")
                .Concat(DerivedFiles.Ladders.Keys.Select(key => $"{Folder}ladders/{key}.csv"))
                .Order(),
            there
        );
    }

    [Fact(Explicit = true)]
    public void Write_the_files_anew()
    {
        Write("grains", DerivedFiles.Grains.Select(f => (f.Key, f.Value.Text())));
        Write("ladders", DerivedFiles.Ladders.Select(f => (f.Key, f.Value.Text())));

        static void Write(string kind, IEnumerable<(string Key, string Text)> files)
        {
            string folder = Path.Combine(DerivedFiles.Folder, kind);
            Directory.CreateDirectory(folder);
            foreach (string old in Directory.GetFiles(folder, "*.csv"))
            {
                File.Delete(old);
            }
            foreach (var (key, text) in files)
            {
                File.WriteAllText(Path.Combine(folder, key + ".csv"), text);
            }
        }
    }

    private static void AssertClose(GrainTable anew, GrainTable shipped)
    {
        Assert.Equal(anew.HighestMoment, shipped.HighestMoment);
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            Assert.Equal(1, shipped.AbsorptionPerMm[i] / anew.AbsorptionPerMm[i], Closeness);
            Assert.Equal(1, shipped.ScatteringPerMm[i] / anew.ScatteringPerMm[i], Closeness);
            Assert.All(
                anew.Moments(i).ToArray().Zip(shipped.Moments(i).ToArray()),
                pair => Assert.Equal(pair.First, pair.Second, Closeness)
            );
        }
    }
}
