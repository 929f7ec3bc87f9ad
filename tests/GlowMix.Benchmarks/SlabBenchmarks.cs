using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using GlowMix.Optics.Slab;
using Perfolizer.Horology;

namespace GlowMix.Benchmarks;

/// <summary>
/// One layer of pigment at one wavelength on work space that is used again, whole and step by step. A pour takes 89 of
/// them. Aim: 20 µs for all of it with 8 + 8 nodes, nothing allocated.
/// </summary>
[Config(typeof(Short))]
public class SlabBenchmarks
{
    private const double DepthMm = 3;
    private const int Heights = 33;
    private readonly double[] edgesMm = [.. Enumerable.Range(0, 33).Select(i => DepthMm * i / 32)];
    private readonly Medium medium = Medium.HenyeyGreenstein(0.05, 5, 0.95, 32);
    private StreamQuadrature quadrature = null!;
    private LayerModes modes = null!;
    private StackTransfer transfer = null!;
    private CellWeights weights = null!;
    private LayerLight[] floor = null!;
    private LayerLight[] sky = null!;
    private SymmetricEigen eigen = null!;
    private double[] matrix = null!;
    private double[] scratch = null!;

    /// <summary>Directions in the cone, and as many beyond: as pours take them, and as single slabs do.</summary>
    [Params(6, 8)]
    public int Nodes { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        quadrature = StreamQuadrature.For(1.5, Nodes);
        int n = quadrature.Count;
        modes = new LayerModes(n);
        transfer = new StackTransfer(n);
        weights = new CellWeights(n, edgesMm.Length - 1);
        modes.Solve(medium, quadrature);
        Join();
        floor = SlabSolution.NewLight(transfer);
        sky = SlabSolution.NewLight(transfer);
        Solve_both_sources();
        eigen = new SymmetricEigen(n);
        matrix = new double[n * n];
        RowMath.MultiplyMatrices(matrix, modes.Sum, modes.Sum, n);
        for (int i = 0; i < n * n; i++)
        {
            matrix[i] += matrix[(i % n * n) + (i / n)];
        }
        scratch = new double[n * n];
    }

    [Benchmark(Baseline = true)]
    public double Whole_solve()
    {
        Modes_of_the_medium();
        Operators_of_the_depth();
        double sum = Solve_both_sources();
        return sum + Fluence_at_33_heights();
    }

    [Benchmark]
    public void Modes_of_the_medium() => modes.Solve(medium, quadrature);

    [Benchmark]
    public void Eigenvalues_alone()
    {
        matrix.CopyTo(scratch, 0);
        eigen.Decompose(scratch);
    }

    [Benchmark]
    public void Operators_of_the_depth() => Join();

    [Benchmark]
    public double Solve_both_sources()
    {
        var up = transfer.SolveFloor(floor);
        var down = transfer.SolveSky(sky);
        return up.Escaped
            + down.Floor
            + transfer.Layer(0).Absorbed(floor[0])
            + transfer.Layer(0).Absorbed(sky[0]);
    }

    [Benchmark]
    public double Fluence_at_33_heights()
    {
        var layer = transfer.Layer(0);
        layer.PrepareFluence(floor[0]);
        layer.PrepareFluence(sky[0]);
        double sum = 0;
        for (int i = 0; i < Heights; i++)
        {
            double height = DepthMm * i / (Heights - 1);
            sum += layer.Fluence(floor[0], height) + layer.Fluence(sky[0], height);
        }
        return sum;
    }

    /// <summary>As a pour does it.</summary>
    [Benchmark]
    public double Mean_fluence_in_32_cells()
    {
        weights.Prepare(transfer.Layer(0), edgesMm);
        double sum = 0;
        for (int i = 0; i < edgesMm.Length - 1; i++)
        {
            sum += weights.Mean(floor[0], i) + weights.Mean(sky[0], i);
        }
        return sum;
    }

    private void Join()
    {
        transfer.Begin(quadrature);
        transfer.Add(modes, DepthMm);
        transfer.Join();
    }

    private sealed class Short : ManualConfig
    {
        public Short()
        {
            AddJob(
                Job.Default.WithToolchain(InProcessEmitToolchain.Instance)
                    .WithLaunchCount(1)
                    .WithWarmupCount(5)
                    .WithIterationCount(7)
                    .WithIterationTime(TimeInterval.FromMilliseconds(100))
            );
            AddDiagnoser(MemoryDiagnoser.Default);
        }
    }
}
