using BenchmarkDotNet.Attributes;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Predictions;
using GlowMix.Readings.Files;
using GlowMix.Readings.Fit;
using GlowMix.Readings.Sets;
using GlowMix.Recipes;

namespace GlowMix.Benchmarks;

/// <summary>A fit of eight numbers to the invented readings of recipes/readings: asked for, 5 s at most.</summary>
public class FitBenchmarks
{
    private RecipeDocument document = null!;
    private ReadingsSet set = null!;

    /// <summary>Reads recipe and set.</summary>
    [GlobalSetup]
    public void Setup()
    {
        document = RecipeDocument.Read(DocumentFile.Read(Path.Combine(Recipes(), "stair-edge.yaml")));
        set = ReadingsSetFile
            .Read(DocumentFile.Read(Path.Combine(Recipes(), "readings", "stair-edge.readings.yaml")))
            .Set!;
    }

    /// <summary>From files to numbers, nothing known beforehand.</summary>
    [Benchmark]
    public FitResult From_files_to_numbers()
    {
        var predictor = new Predictor(new Shelf());
        var assembled = SetAssembly.Of(
            document,
            set,
            predictor,
            path =>
                DocumentFile.ReadBytes(Path.Combine(Recipes(), "readings", path), ReadingFile.LongestBytes)
        );
        return new Fitter(predictor).Fit(assembled.Readings!).Result!;
    }

    private static string Recipes()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "GlowMix.sln")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }
        return Path.Combine(folder, "recipes");
    }
}
