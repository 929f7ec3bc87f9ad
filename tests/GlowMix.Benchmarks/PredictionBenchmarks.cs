using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using GlowMix.Afterglow;
using GlowMix.Materials;
using GlowMix.Pieces;
using GlowMix.Predictions;
using GlowMix.Recipes;
using Perfolizer.Horology;

namespace GlowMix.Benchmarks;

/// <summary>A prediction of a stair edge, 2.5 mm with pigment under 0.5 mm of clear resin, materials and ladders at hand.</summary>
[Config(typeof(Short))]
public class PredictionBenchmarks
{
    private const string StairEdge = """
        format: 1
        resin: epoxy-clear-slow
        led:
          material: warm-white-3000
          count: 60
          drive_ma: 40
        pour:
          length_mm: 500
          width_mm: 12
        layers:
          - name: glow
            depth_mm: 2.5
            pigment: green-aluminate
            loading_percent: 20
          - name: cover
            depth_mm: 0.5
        charge:
          steps:
            - light: own-leds
              minutes: 480
            - light: daylight-d65
              illuminance_lx: 300
              minutes: 5
        """;

    private const string HalfSettled = """
        format: 1
        resin: epoxy-clear-slow
        led:
          material: warm-white-3000
        layers:
          - depth_mm: 5
            pigment: green-aluminate
            grain_median_um: 15
            loading_percent: 10
        charge:
          steps:
            - light: own-leds
              minutes: 480
            - light: daylight-d65
              illuminance_lx: 300
              minutes: 5
        """;

    private readonly OpticsShelf optics = new();
    private readonly RecipeDocument document = RecipeDocument.Read(StairEdge, "stair-edge.yaml");
    private Predictor predictor = null!;
    private Piece piece = null!;
    private Piece sliced = null!;
    private TrapLadder ladder = null!;

    [GlobalSetup]
    public void Warm()
    {
        var shelf = new Shelf();
        predictor = new Predictor(shelf);
        predictor.Predict(document);
        piece = PieceAssembly.Of(document, shelf).Piece!;
        sliced = PieceAssembly.Of(RecipeDocument.Read(HalfSettled, "half-settled.yaml"), shelf).Piece!;
        ladder = predictor.LadderOf(piece.Layers[0].Pigment!).Fit!.Ladder!;
        One_run();
        One_run_of_many_slices();
    }

    /// <summary>One draw: light and glow, every number as it stands; nearly all the pigment in the bed.</summary>
    [Benchmark]
    public object One_run() => RunOf(piece);

    /// <summary>The same, grains evenly spread: what a search takes.</summary>
    [Benchmark]
    public object One_run_evenly_spread() => RunOf(piece with { IsSettled = false });

    /// <summary>A pour that gels while its grains fall: a bed, steps and clear resin.</summary>
    [Benchmark]
    public object One_run_of_many_slices() => RunOf(sliced);

    /// <summary>With the nine bounding runs, the split by cause and the figures of the pour.</summary>
    [Benchmark]
    public PredictionOutcome Whole_prediction() => predictor.Predict(document);

    private Run RunOf(Piece what)
    {
        var light = PieceLight.Of(what, optics);
        return Run.Of(light, Variation.Likely, PieceGlow.Of(light, _ => ladder));
    }

    private sealed class Short : ManualConfig
    {
        public Short()
        {
            AddJob(
                Job.Default.WithToolchain(InProcessEmitToolchain.Instance)
                    .WithLaunchCount(1)
                    .WithWarmupCount(5)
                    .WithIterationCount(10)
                    .WithIterationTime(TimeInterval.FromMilliseconds(200))
            );
            AddDiagnoser(MemoryDiagnoser.Default);
        }
    }
}
