using BenchmarkDotNet.Attributes;
using GlowMix.Afterglow;
using GlowMix.Recipes;

namespace GlowMix.Benchmarks;

/// <summary>A layer of 24 depths: one charge, its figures, and the ladder behind a sheet of four points.</summary>
[MemoryDiagnoser]
public class AfterglowBenchmarks
{
    private const int Nodes = 24;
    private readonly double[] absorbedPerSMm3 =
    [
        .. Enumerable.Range(0, Nodes).Select(i => 1.5e13 * Math.Exp(-i / 10.0)),
    ];
    private readonly double[] mcdM2 = [.. Enumerable.Repeat(1.8e-10, Nodes)];
    private SolvedSheet sheet = null!;
    private TrapLadder ladder = null!;
    private ChargeProgramme day = null!;
    private ChargedTraps charged = null!;

    [GlobalSetup]
    public void Prepare()
    {
        sheet = new(
            [new(2, 690), new(10, 140), new(30, 45), new(60, 20)],
            chargeMinutes: 5,
            temperatureC: 20,
            [.. absorbedPerSMm3],
            [.. mcdM2],
            capacityPerMm3: 1.67e15
        );
        ladder = LadderFit.To(sheet, TrapConstants.Assumed).Ladder!;
        day = new(
            Nodes,
            [ChargeStep.Lit(absorbedPerSMm3, 480, 35), ChargeStep.Lit(absorbedPerSMm3, 5, 20)],
            ChargeStart.SettledDaily,
            darknessTemperatureC: 15
        );
        charged = day.Charge(ladder);
    }

    [Benchmark]
    public LadderFitResult Fit_a_ladder_to_a_sheet() => LadderFit.To(sheet, TrapConstants.Assumed);

    [Benchmark]
    public ChargedTraps Charge_until_the_day_repeats() => day.Charge(ladder);

    [Benchmark]
    public double Minutes_to_a_limit() => charged.Glow(mcdM2).MinutesUntil(0.3);

    [Benchmark]
    public double? Charge_to_90_percent() => ChargeTime.MinutesTo90Percent([(charged, mcdM2)]);
}
