using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using GlowMix.Optics.Grains;
using GlowMix.Spectra;
using Perfolizer.Horology;

namespace GlowMix.Benchmarks;

/// <summary>A table of 89 wavelengths and 40 sizes with 32 moments: what a new grain, pigment or resin costs.</summary>
[Config(typeof(Short))]
public class GrainTableBenchmarks
{
    /// <summary>Median diameter by mass, µm; geometric standard deviation 1.5.</summary>
    [Params(5, 15, 40)]
    public double MedianUm { get; set; }

    [Benchmark]
    public GrainTable Average_over_forty_sizes() =>
        GrainTable.Of(
            Spectrum.Constant(1.65),
            Spectrum.Constant(6),
            Spectrum.Constant(1.5),
            GrainSizes.ByMass(MedianUm, 1.5)
        );

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
