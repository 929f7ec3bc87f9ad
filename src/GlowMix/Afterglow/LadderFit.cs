using System.Globalization;

namespace GlowMix.Afterglow;

/// <summary>
/// The trap ladder behind a sheet. A handful of luminances does not determine 13 rungs, so the capacity is taken as known
/// and the rungs are pulled towards N ∝ τ^−p.
/// </summary>
/// <remarks>
/// For a trapping efficiency η the rungs are the non-negative least-squares solution of the relative misfits L/L_sheet − 1
/// and the rows λ (N_k − N_(k+1) 10^(p/2)) / (capacity / 13). A small η fills few traps, so that many are needed: the η
/// whose rungs add up to the capacity is the answer, the largest if there were several.
/// </remarks>
public static class LadderFit
{
    /// <summary>Smoothing λ of the likely ladder. Assumed.</summary>
    public const double LikelySmoothing = 0.05;

    /// <summary>Smoothing that follows the sheet most closely, one end of the band. Assumed.</summary>
    public const double LooseSmoothing = 0.01;

    /// <summary>Smoothing that keeps closest to τ^−p, the other end of the band. Assumed.</summary>
    public const double StiffSmoothing = 0.2;

    /// <summary>Exponent p of the ladder that the fit is smoothed towards; the glow then falls as t^−(1 + p). Assumed.</summary>
    public const double LeaningExponent = 0.15;

    private const int MostHalvings = 60;
    private const int MostDoublings = 30;

    /// <summary>Fits a ladder to a sheet.</summary>
    /// <param name="sheet">The decay and the sample it was read on.</param>
    /// <param name="constants">What all ladders share.</param>
    /// <param name="smoothing">λ, 0.0001 to 10.</param>
    /// <param name="leaningExponent">p, −1 to 2.</param>
    /// <returns>The ladder, or why the sheet cannot be held by so few traps. Bad input throws.</returns>
    public static LadderFitResult To(
        SolvedSheet sheet,
        TrapConstants constants,
        double smoothing = LikelySmoothing,
        double leaningExponent = LeaningExponent
    )
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(constants);
        Demand.Within(smoothing, 1e-4, 10, nameof(smoothing), "");
        Demand.Within(leaningExponent, -1, 2, nameof(leaningExponent), "");
        var problem = new RungProblem(sheet, constants, smoothing, leaningExponent);
        if (!problem.CanGlow)
        {
            return Refused(sheet, "The sheet's sample absorbs no light or sends none out.", null);
        }

        double capacity = sheet.CapacityPerMm3;
        double Excess(double logEfficiency) =>
            Math.Log(problem.Solve(Math.Exp(logEfficiency), capacity).Sum() / capacity);
        if (Excess(0) > 0)
        {
            return TooSmall(sheet, problem);
        }
        double upper = 0;
        double lower = -Math.Log(2);
        for (int i = 0; Excess(lower) <= 0; i++)
        {
            if (i == MostHalvings)
            {
                return Refused(sheet, "The sheet is too dim for the traps of its sample.", null);
            }
            (lower, upper) = (lower - Math.Log(2), lower);
        }
        double efficiency = Math.Exp(BracketedRoot.Find(Excess, lower, upper, tolerance: 1e-11));
        double[] rungs = problem.Solve(efficiency, capacity);
        return new()
        {
            Ladder = new(rungs, efficiency, constants),
            ResidualsPercent = problem.ResidualsPercent(rungs, efficiency, capacity),
            ReachesMinutes = sheet.ReachesMinutes,
        };
    }

    /// <summary>How much brighter than its sheet a ladder would make the sheet's sample.</summary>
    /// <param name="sheet">The decay and the sample it was read on.</param>
    /// <param name="ladder">Any ladder.</param>
    /// <returns>The mean over the sheet's points of the logarithm of luminance over the sheet's.</returns>
    internal static double MeanLogExcess(SolvedSheet sheet, TrapLadder ladder)
    {
        var problem = new RungProblem(sheet, ladder.Constants, LikelySmoothing, LeaningExponent);
        return problem
            .ResidualsPercent(
                ladder.TrapsPerMm3.ToArray(),
                ladder.TrappingEfficiencyAt20C,
                ladder.CapacityPerMm3
            )
            .Average(percent => Math.Log(1 + (percent / 100)));
    }

    // With every photon trapped the sheet still asks for more traps than there are.
    private static LadderFitResult TooSmall(SolvedSheet sheet, RungProblem problem)
    {
        double capacity = sheet.CapacityPerMm3;
        double Excess(double logFactor)
        {
            double larger = capacity * Math.Exp(logFactor);
            return Math.Log(problem.Solve(efficiencyAt20C: 1, larger).Sum() / larger);
        }
        double upper = Math.Log(2);
        for (int i = 0; Excess(upper) > 0; i++)
        {
            if (i == MostDoublings)
            {
                return Refused(
                    sheet,
                    "The sheet's sample absorbs too few photons for its luminances, whatever the trap capacity: "
                        + "the sample, its charge or the pigment's absorption must differ from what is told.",
                    null
                );
            }
            upper += Math.Log(2);
        }
        double factor = Math.Exp(BracketedRoot.Find(Excess, upper - Math.Log(2), upper, tolerance: 1e-6));
        string text = string.Create(
            CultureInfo.InvariantCulture,
            $"The sheet needs {factor:0.00} times the trap capacity, in a sample as told: "
                + $"{factor * capacity:0.00e+0} instead of {capacity:0.00e+0} per mm³ of pigment."
        );
        return Refused(sheet, text, factor * capacity);
    }

    private static LadderFitResult Refused(SolvedSheet sheet, string text, double? neededCapacityPerMm3) =>
        new()
        {
            Refusal = text,
            NeededCapacityPerMm3 = neededCapacityPerMm3,
            ReachesMinutes = sheet.ReachesMinutes,
        };
}
