using System.Collections.Immutable;
using GlowMix.Afterglow;
using GlowMix.Materials;

namespace GlowMix.Tests.Afterglow;

public class LadderFitTests
{
    private static readonly double[] ClassMinutes = [2, 10, 30, 60];

    // Least luminances in mcd/m² after 5 min of 1000 lx, classes A to G as three trade pages print those of ISO 17398:2004.
    private static readonly Dictionary<string, double[]> ClassMcdM2 = new()
    {
        ["A"] = [108, 23, 7, 3],
        ["B"] = [210, 50, 15, 7],
        ["C"] = [690, 140, 45, 20],
        ["D"] = [1100, 260, 85, 35],
        ["E"] = [1800, 400, 120, 55],
        ["F"] = [2300, 520, 155, 70],
        ["G"] = [3000, 650, 190, 80],
    };

    [Theory]
    [InlineData("A")]
    [InlineData("B")]
    [InlineData("C")]
    [InlineData("D")]
    [InlineData("E")]
    public void Sheets_of_classes_A_to_E_come_out_within_3_percent(string name)
    {
        LadderFitResult fit = LadderFit.To(ClassSheet(name), TrapConstants.Assumed);
        Assert.Null(fit.Refusal);
        Assert.Equal(60, fit.ReachesMinutes);
        GlowCurve glow = Glow(fit.Ladder!, temperatureC: 20);
        for (int i = 0; i < ClassMinutes.Length; i++)
        {
            double ratio = glow.LuminanceMcdM2(ClassMinutes[i]) / ClassMcdM2[name][i];
            Assert.InRange(ratio, 0.97, 1.03);
            Assert.Equal(fit.ResidualsPercent[i], 100 * (ratio - 1), tolerance: 1e-6);
        }
    }

    [Theory]
    [InlineData("A")]
    [InlineData("C")]
    [InlineData("E")]
    public void The_rungs_add_up_to_the_capacity(string name)
    {
        TrapLadder ladder = LadderFit.To(ClassSheet(name), TrapConstants.Assumed).Ladder!;
        Assert.Equal(1, ladder.CapacityPerMm3 / SamplePour.CapacityPerMm3, tolerance: 1e-9);
        Assert.InRange(ladder.TrappingEfficiencyAt20C, 0, 1);
    }

    [Theory]
    [InlineData("F")]
    [InlineData("G")]
    public void A_sheet_too_bright_for_its_sample_is_refused_with_the_capacity_it_needs(string name)
    {
        LadderFitResult refused = LadderFit.To(ClassSheet(name), TrapConstants.Assumed);
        Assert.Null(refused.Ladder);
        double needed = refused.NeededCapacityPerMm3!.Value;
        Assert.True(needed > SamplePour.CapacityPerMm3);
        string times = FormattableString.Invariant($"{needed / SamplePour.CapacityPerMm3:0.00} times");
        Assert.Contains(times, refused.Refusal!, StringComparison.Ordinal);

        Assert.Null(LadderFit.To(ClassSheet(name, needed * 0.999), TrapConstants.Assumed).Ladder);
        LadderFitResult enough = LadderFit.To(ClassSheet(name, needed * 1.001), TrapConstants.Assumed);
        Assert.InRange(enough.Ladder!.TrappingEfficiencyAt20C, 0.95, 1);
    }

    [Fact]
    public void A_ladder_on_the_leaning_exponent_is_found_again_from_four_points()
    {
        TrapLadder told = SamplePour.Ladder(trappingEfficiencyAt20C: 0.37);
        LadderFitResult fit = LadderFit.To(SheetOf(told, temperatureC: 20), TrapConstants.Assumed);
        Assert.Equal(0.37, fit.Ladder!.TrappingEfficiencyAt20C, tolerance: 1e-8);
        for (int rung = 0; rung < TrapLadder.RungCount; rung++)
        {
            Assert.Equal(1, fit.Ladder.TrapsPerMm3[rung] / told.TrapsPerMm3[rung], tolerance: 1e-7);
        }
    }

    [Fact]
    public void A_sheet_read_in_the_warm_is_fitted_in_the_warm()
    {
        TrapLadder told = SamplePour.Ladder(trappingEfficiencyAt20C: 0.37);
        LadderFitResult fit = LadderFit.To(SheetOf(told, temperatureC: 28), TrapConstants.Assumed);
        Assert.Equal(0.37, fit.Ladder!.TrappingEfficiencyAt20C, tolerance: 1e-8);
    }

    [Fact]
    public void Ever_fewer_traps_are_needed_the_more_photons_are_trapped()
    {
        foreach (string name in ClassMcdM2.Keys)
        {
            var problem = new RungProblem(
                ClassSheet(name),
                TrapConstants.Assumed,
                LadderFit.LikelySmoothing,
                LadderFit.LeaningExponent
            );
            double last = double.PositiveInfinity;
            for (double efficiency = 0.01; efficiency < 1; efficiency *= 1.2)
            {
                double sum = problem.Solve(efficiency, SamplePour.CapacityPerMm3).Sum();
                Assert.True(sum < last);
                last = sum;
            }
        }
    }

    [Fact]
    public void Remembering_the_rungs_in_use_does_not_change_the_answer()
    {
        // Falling far faster than the ladder leans, then staying: several rungs come out empty.
        SolvedSheet steep = Sheet([new(1, 900), new(2, 400), new(4, 90), new(8, 5), new(400, 3)]);
        RungProblem Fresh() => new(steep, TrapConstants.Assumed, smoothing: 0.01, leaningExponent: 0.15);
        RungProblem used = Fresh();
        bool anyEmpty = false;
        foreach (double efficiency in new[] { 1, 0.5, 0.02, 0.3, 0.001, 0.9 })
        {
            double[] afresh = Fresh().Solve(efficiency, SamplePour.CapacityPerMm3);
            double[] again = used.Solve(efficiency, SamplePour.CapacityPerMm3);
            anyEmpty |= afresh.Contains(0);
            for (int k = 0; k < afresh.Length; k++)
            {
                Assert.Equal(afresh[k], again[k], tolerance: 1e-9 * afresh.Max());
            }
        }
        Assert.True(anyEmpty);
    }

    [Fact]
    public void Smoothing_matters_beyond_the_sheet_and_little_within_it()
    {
        double[] spreads =
        [
            .. new[] { 30.0, 60, 480 }.Select(minutes =>
            {
                double[] found =
                [
                    .. new[]
                    {
                        LadderFit.LooseSmoothing,
                        LadderFit.LikelySmoothing,
                        LadderFit.StiffSmoothing,
                    }.Select(smoothing =>
                        Glow(LadderFit.To(ClassSheet("C"), TrapConstants.Assumed, smoothing).Ladder!, 20)
                            .LuminanceMcdM2(minutes)
                    ),
                ];
                return found.Max() / found.Min();
            }),
        ];
        Assert.InRange(spreads[0], 1, 1.06);
        Assert.InRange(spreads[1], 1, 1.06);
        Assert.InRange(spreads[2], 1.2, 3);
    }

    [Fact]
    public void The_order_in_which_points_are_told_does_not_matter()
    {
        SolvedSheet sheet = ClassSheet("B");
        LadderFitResult forwards = LadderFit.To(sheet, TrapConstants.Assumed);
        LadderFitResult backwards = LadderFit.To(Sheet([.. sheet.Points.Reverse()]), TrapConstants.Assumed);
        Assert.Equal(forwards.Ladder!.TrapsPerMm3, backwards.Ladder!.TrapsPerMm3);
    }

    [Fact]
    public void A_sample_that_absorbs_too_few_photons_is_refused_whatever_the_capacity()
    {
        LadderFitResult refused = LadderFit.To(ClassSheet("E", illuminanceLx: 100), TrapConstants.Assumed);
        Assert.Null(refused.Ladder);
        Assert.Null(refused.NeededCapacityPerMm3);
        Assert.Contains("too few photons", refused.Refusal!, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sample_without_light_is_refused() =>
        Assert.NotNull(LadderFit.To(ClassSheet("A", illuminanceLx: 0), TrapConstants.Assumed).Refusal);

    [Fact]
    public void Sheets_that_cannot_be_are_refused_when_told()
    {
        Assert.Throws<ArgumentException>(() => Sheet([]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Sheet([new(10, 0)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Sheet([new(double.NaN, 5)]));
        Assert.Throws<ArgumentException>(() => Sheet([new(10, 5), new(10, 6)]));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            LadderFit.To(ClassSheet("A"), TrapConstants.Assumed, smoothing: 0)
        );
    }

    // A thick layer also absorbs light for which its grains absorb little, so it takes more photons than those that count in
    // full: half as many again here.
    private static SolvedSheet ClassSheet(
        string name,
        double capacityPerMm3 = SamplePour.CapacityPerMm3,
        double illuminanceLx = 1500
    ) =>
        Sheet(
            [.. ClassMinutes.Zip(ClassMcdM2[name], (minutes, mcdM2) => new SheetPoint(minutes, mcdM2))],
            20,
            capacityPerMm3,
            illuminanceLx
        );

    private static SolvedSheet SheetOf(TrapLadder ladder, double temperatureC)
    {
        GlowCurve glow = Glow(ladder, temperatureC);
        return Sheet(
            [.. ClassMinutes.Select(minutes => new SheetPoint(minutes, glow.LuminanceMcdM2(minutes)))],
            temperatureC
        );
    }

    private static SolvedSheet Sheet(
        ImmutableArray<SheetPoint> points,
        double temperatureC = 20,
        double capacityPerMm3 = SamplePour.CapacityPerMm3,
        double illuminanceLx = 1500
    ) =>
        new(
            points,
            chargeMinutes: 5,
            temperatureC,
            [.. SamplePour.AbsorbedPerSMm3(illuminanceLx)],
            [.. SamplePour.McdM2PerPhotonPerSMm3],
            capacityPerMm3
        );

    private static GlowCurve Glow(TrapLadder ladder, double temperatureC) =>
        SamplePour.Charged(1500, 5, temperatureC, temperatureC, ladder: ladder).Glow();
}
