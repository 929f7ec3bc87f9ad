using System.Collections.Immutable;
using GlowMix.Spectra;

namespace GlowMix.Afterglow;

/// <summary>The least-squares problem for the rungs of a sheet at a given trapping efficiency and capacity.</summary>
/// <remarks>Not thread-safe: it remembers which rungs were in use last. The answer does not depend on it.</remarks>
internal sealed class RungProblem
{
    private const int Rungs = TrapLadder.RungCount;

    private readonly SolvedSheet sheet;
    private readonly TrapConstants constants;
    private readonly double smoothing;
    private readonly double stepDown;
    private readonly double[] sharePerS; // point after point: r exp(−r t) of each rung
    private int[] lastUsed = [.. Enumerable.Range(0, Rungs)];

    internal RungProblem(SolvedSheet sheet, TrapConstants constants, double smoothing, double leaningExponent)
    {
        this.sheet = sheet;
        this.constants = constants;
        this.smoothing = smoothing;
        stepDown = Math.Pow(10, leaningExponent / 2);
        TrapRates rates = TrapRates.At(sheet.TemperatureC, 1, sheet.CapacityPerMm3, constants);
        sharePerS = new double[sheet.Points.Length * Rungs];
        for (int i = 0; i < sharePerS.Length; i++)
        {
            (int point, int rung) = Math.DivRem(i, Rungs);
            double seconds = sheet.Points[point].Minutes * DarkSchedule.SecondsPerMinute;
            double rate = rates.EmptyingPerS(rung);
            sharePerS[i] = rate * Math.Exp(-rate * seconds);
        }
    }

    /// <summary>Whether any depth both absorbs light and shows its glow.</summary>
    internal bool CanGlow =>
        sheet.AbsorbedPerSMm3.Zip(sheet.McdM2PerPhotonPerSMm3, (g, w) => g * w).Any(x => x > 0);

    /// <summary>Traps on each rung per mm³ of pigment.</summary>
    internal double[] Solve(double efficiencyAt20C, double capacityPerMm3)
    {
        double[,] rows = Rows(efficiencyAt20C, capacityPerMm3);
        var target = new double[rows.GetLength(0)];
        Array.Fill(target, 1, 0, sheet.Points.Length);
        double[] inUnits = AsLastTime(rows, target) ?? Afresh(rows, target);
        return [.. inUnits.Select(x => x * capacityPerMm3 / Rungs)];
    }

    internal ImmutableArray<double> ResidualsPercent(
        double[] rungs,
        double efficiencyAt20C,
        double capacityPerMm3
    )
    {
        double[,] rows = Rows(efficiencyAt20C, capacityPerMm3);
        return
        [
            .. Enumerable
                .Range(0, sheet.Points.Length)
                .Select(i =>
                    100 * (rungs.Select((n, k) => rows[i, k] * n * Rungs / capacityPerMm3).Sum() - 1)
                ),
        ];
    }

    // Unknowns in units of capacity / 13. First the relative luminances, then the smoothing.
    private double[,] Rows(double efficiencyAt20C, double capacityPerMm3)
    {
        double[] trapped = TrappedMcdSM2(efficiencyAt20C, capacityPerMm3);
        int points = sheet.Points.Length;
        var rows = new double[points + Rungs - 1, Rungs];
        for (int i = 0; i < points; i++)
        {
            for (int k = 0; k < Rungs; k++)
            {
                double luminance = sharePerS[(i * Rungs) + k] * trapped[k] * capacityPerMm3 / Rungs;
                rows[i, k] = luminance / sheet.Points[i].LuminanceMcdM2;
            }
        }
        for (int k = 0; k < Rungs - 1; k++)
        {
            rows[points + k, k] = smoothing;
            rows[points + k, k + 1] = -smoothing * stepDown;
        }
        return rows;
    }

    // Filled fraction of each rung at lights out, over depth, times what a photon per second adds to the luminance.
    private double[] TrappedMcdSM2(double efficiencyAt20C, double capacityPerMm3)
    {
        TrapRates rates = TrapRates.At(sheet.TemperatureC, efficiencyAt20C, capacityPerMm3, constants);
        double seconds = sheet.ChargeMinutes * DarkSchedule.SecondsPerMinute;
        var trapped = new double[Rungs];
        for (int node = 0; node < sheet.AbsorbedPerSMm3.Length; node++)
        {
            for (int k = 0; k < Rungs; k++)
            {
                FillStep charge = rates.Step(k, sheet.AbsorbedPerSMm3[node], seconds);
                trapped[k] += sheet.McdM2PerPhotonPerSMm3[node] * charge.Gain;
            }
        }
        return trapped;
    }

    // Mostly the same rungs are empty as at the efficiency tried before. If least squares over the others alone is positive,
    // and no empty rung would lower the misfit, that is the one solution (the problem is strictly convex: the smoothing
    // leaves only τ^−p free, and that glows).
    private double[]? AsLastTime(double[,] rows, double[] target)
    {
        var used = new double[target.Length, lastUsed.Length];
        for (int i = 0; i < target.Length; i++)
        {
            for (int j = 0; j < lastUsed.Length; j++)
            {
                used[i, j] = rows[i, lastUsed[j]];
            }
        }
        double[]? amounts = HouseholderLeastSquares.Solve(used, [.. target]);
        if (amounts is null || !Array.TrueForAll(amounts, amount => amount > 0))
        {
            return null;
        }
        var solution = new double[Rungs];
        for (int j = 0; j < lastUsed.Length; j++)
        {
            solution[lastUsed[j]] = amounts[j];
        }
        return lastUsed.Length == Rungs || NoEmptyRungWouldHelp(rows, target, solution) ? solution : null;
    }

    private static bool NoEmptyRungWouldHelp(double[,] rows, double[] target, double[] solution)
    {
        var slopes = new double[Rungs];
        for (int i = 0; i < target.Length; i++)
        {
            double missing = target[i];
            for (int k = 0; k < Rungs; k++)
            {
                missing -= rows[i, k] * solution[k];
            }
            for (int k = 0; k < Rungs; k++)
            {
                slopes[k] += rows[i, k] * missing;
            }
        }
        return !Enumerable.Range(0, Rungs).Any(k => solution[k] == 0 && slopes[k] > 0);
    }

    private double[] Afresh(double[,] rows, double[] target)
    {
        double[] solution = NonNegativeLeastSquares.Solve(rows, target);
        lastUsed = [.. Enumerable.Range(0, Rungs).Where(k => solution[k] > 0)];
        return solution;
    }
}
