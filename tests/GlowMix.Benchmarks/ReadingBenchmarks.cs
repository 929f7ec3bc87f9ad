using System.Globalization;
using System.Text;
using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using GlowMix.Documents;
using GlowMix.Readings.Files;
using GlowMix.Readings.Spectral;
using Perfolizer.Horology;

namespace GlowMix.Benchmarks;

/// <summary>A spectrometer's file of 2,000 rows, from its bytes to all figures and warnings. Aim: 10 ms.</summary>
[Config(typeof(Short))]
public class ReadingBenchmarks
{
    private FileBytes file = null!;
    private ReadingOutcome outcome = null!;

    [GlobalSetup]
    public void Prepare()
    {
        var text = new StringBuilder("bench 3\nexposure: 12.5 ms\n\nnm\tcounts\n");
        var random = new Random(1);
        for (int i = 0; i < 2000; i++)
        {
            double nm = 340 + (0.35 * i);
            double light =
                (20000 * Math.Exp(-Math.Pow((nm - 450) / 12, 2)))
                + (30000 * Math.Exp(-Math.Pow((nm - 590) / 70, 2)))
                + (40 * (random.NextDouble() - 0.5));
            text.Append(CultureInfo.InvariantCulture, $"{nm:0.00}\t{light:0.00}\n");
        }
        file = new("bench.txt", Encoding.UTF8.GetBytes(text.ToString()));
        outcome = ReadingFile.Read(file);
    }

    [Benchmark(Baseline = true)]
    public ReadingFigures? Bytes_to_all_figures() => ReadingFigures.Of(ReadingFile.Read(file).Spectrum!);

    [Benchmark]
    public ReadingOutcome Bytes_to_a_spectrum() => ReadingFile.Read(file);

    [Benchmark]
    public ReadingFigures? Spectrum_to_figures() => ReadingFigures.Of(outcome.Spectrum!);

    private sealed class Short : ManualConfig
    {
        public Short()
        {
            AddJob(
                Job.Default.WithToolchain(InProcessEmitToolchain.Instance)
                    .WithLaunchCount(1)
                    .WithWarmupCount(3)
                    .WithIterationCount(5)
                    .WithIterationTime(TimeInterval.FromMilliseconds(200))
            );
            AddDiagnoser(MemoryDiagnoser.Default);
        }
    }
}
