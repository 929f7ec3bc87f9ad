using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Engines;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using GlowMix.Choosing.Search;
using GlowMix.Materials;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Benchmarks;

/// <summary>
/// Designs of a stair edge by the thousand: loading × depth × three grains. Times are of one design, but for the first. What a
/// design costs is told by the one alone; the difference to sixteen depths of a mix is what they share, the diffusing modes; all
/// share grains, directions, ladders and materials.
/// </summary>
[Config(typeof(Once))]
public class BalanceBenchmarks
{
    private const int Loadings = 58;
    private const int Depths = 58;
    private const int Together = 16;

    private const string StairEdge = """
        format: 1
        resin: epoxy-clear-slow
        led:
          material: warm-white-3000
          count: 60
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
        targets:
          - figure: lit.duv
            at_most: 0.02
          - figure: afterglow.luminance_mcd_m2
            at_minutes: 60
            at_least: 5
        balance:
          choices:
            - key: layers.glow.loading_percent
              from: 2
              to: 40
            - key: layers.glow.depth_mm
              from: 1
              to: 5
            - key: layers.glow.grain_median_um
              any_of: [20, 30, 40]
        """;

    private readonly RecipeDocument recipe = RecipeDocument.Read(StairEdge, "stair-edge.yaml");
    private readonly Predictor predictor = new(new Shelf());
    private SearchSpace space = null!;
    private Design[] all = null!;

    [GlobalSetup]
    public void Prepare()
    {
        space = SearchSpace.Of(recipe, predictor.Check, 50, CancellationToken.None).Space!;
        all =
        [
            .. from grain in Enumerable.Range(0, 3)
            from loading in Spread(space.Axes[0], Loadings)
            from depth in Spread(space.Axes[1], Depths)
            select new Design(grain, [loading, depth]),
        ];
        One_design_alone();
        One_of_sixteen_depths();
        One_design_as_it_settles();
    }

    /// <summary>10,092 designs on all cores.</summary>
    [Benchmark]
    public object Ten_thousand_designs() => Solve(all, Environment.ProcessorCount, isSettled: false);

    [Benchmark(OperationsPerInvoke = Loadings)]
    public object One_design_alone() =>
        Solve([.. all.Where((_, i) => i % Depths == 20).Take(Loadings)], 1, isSettled: false);

    [Benchmark(OperationsPerInvoke = 4 * Together)]
    public object One_of_sixteen_depths() =>
        Solve(
            [.. Enumerable.Range(0, 4).SelectMany(k => all.Skip(10 * k * Depths).Take(Together))],
            1,
            isSettled: false
        );

    [Benchmark(OperationsPerInvoke = Loadings)]
    public object One_design_as_it_settles() =>
        Solve([.. all.Where((_, i) => i % Depths == 20).Take(Loadings)], 1, isSettled: true);

    private IReadOnlyList<DesignResult> Solve(Design[] designs, int cores, bool isSettled) =>
        new DesignBench(predictor, space, new BalanceGoal(recipe.Recipe!), cores, isSettled).Solve(
            designs,
            _ => { },
            CancellationToken.None
        );

    private static IEnumerable<int> Spread(SearchAxis axis, int count) =>
        Enumerable.Range(0, count).Select(i => i * (axis.Values.Length - 1) / (count - 1));

    private sealed class Once : ManualConfig
    {
        public Once()
        {
            AddJob(
                Job.Default.WithToolchain(InProcessEmitToolchain.Instance)
                    .WithStrategy(RunStrategy.Monitoring)
                    .WithLaunchCount(1)
                    .WithWarmupCount(1)
                    .WithIterationCount(3)
            );
            AddDiagnoser(MemoryDiagnoser.Default);
        }
    }
}
