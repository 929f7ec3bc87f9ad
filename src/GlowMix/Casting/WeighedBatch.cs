using GlowMix.Afterglow;

namespace GlowMix.Casting;

/// <summary>Masses in whole steps of a scale, and what the step does to the ratio and the loading. Immutable.</summary>
/// <remarks>
/// The lighter part is rounded to a step, the heavier part and the pigment follow it at their ratio: rounding each alone would
/// bend the ratio twice. What the scale shows lies within half a step of what is in the cup.
/// </remarks>
public sealed record WeighedBatch
{
    /// <summary>How far the ratio of the parts may be off, % of part B; a trade sheet asks for weighing to 2 % either way.</summary>
    public const double MostRatioDoubtPercent = 2;

    private readonly ScaleStep scale;

    /// <param name="partAG">Part A wanted, g.</param>
    /// <param name="partBG">Part B wanted, g.</param>
    /// <param name="pigmentG">Pigment wanted, g; 0 for a clear mix.</param>
    /// <param name="stepG">The smallest step the scale shows, g.</param>
    public WeighedBatch(double partAG, double partBG, double pigmentG, double stepG)
    {
        Demand.Positive(partAG, nameof(partAG), "g");
        Demand.Positive(partBG, nameof(partBG), "g");
        Demand.NotNegative(pigmentG, nameof(pigmentG), "g");
        scale = new(stepG);
        WantedRatio = partAG / partBG;
        double lighterG = Math.Max(scale.NearestG(Math.Min(partAG, partBG)), scale.NearestG(stepG));
        double heavierG = scale.NearestG(Math.Max(WantedRatio, 1 / WantedRatio) * lighterG);
        (PartAG, PartBG) = partAG < partBG ? (lighterG, heavierG) : (heavierG, lighterG);
        PigmentG = scale.NearestG(pigmentG / (partAG + partBG) * (PartAG + PartBG));
    }

    /// <summary>The smallest step the scale shows, g.</summary>
    public double StepG => scale.G;

    /// <summary>Mass of part A over that of part B, as the resin asks for.</summary>
    public double WantedRatio { get; }

    /// <summary>Part A, g.</summary>
    public double PartAG { get; }

    /// <summary>Part B, g.</summary>
    public double PartBG { get; }

    /// <summary>Pigment, g; 0 for a clear mix.</summary>
    public double PigmentG { get; }

    /// <summary>All of it, g.</summary>
    public double MixG => scale.NearestG(PartAG + PartBG + PigmentG);

    /// <summary>Ratio A to B as shown by the scale against the one wanted, %.</summary>
    public double RatioErrorPercent => 100 * ((PartAG / PartBG / WantedRatio) - 1);

    /// <summary>
    /// How far the ratio can be off at worst, %: the rounding, and half a step that the scale does not show on each part.
    /// </summary>
    public double RatioDoubtPercent =>
        Math.Abs(RatioErrorPercent) + (100 * ((StepG / 2 / PartAG) + (StepG / 2 / PartBG)));

    /// <summary>The step is too coarse for so little: it can bend the ratio by more than <see cref="MostRatioDoubtPercent"/>.</summary>
    public bool IsTooSmall => RatioDoubtPercent > MostRatioDoubtPercent;

    /// <summary>The smallest mix, pigment included, that is safe on this scale whatever the rounding, g.</summary>
    public double SmallestSafeMixG
    {
        get
        {
            // In steps of the scale: half a one unseen on each part, and on the heavier one as much again for its rounding,
            // which can take that half a step away from it.
            double heavierPerLighter = Math.Max(WantedRatio, 1 / WantedRatio);
            double lighterSteps = Math.Ceiling(0.5 / (MostRatioDoubtPercent / 100));
            while (DoubtPercent(lighterSteps) > MostRatioDoubtPercent)
            {
                lighterSteps++;
            }
            double DoubtPercent(double steps) =>
                100 * ((0.5 / steps) + (1 / ((heavierPerLighter * steps) - 0.5)));
            double partsG = lighterSteps * StepG * (1 + heavierPerLighter);
            return partsG * (1 + (PigmentG / (PartAG + PartBG)));
        }
    }

    /// <summary>Pigment of the whole mix as the scale shows it, % by mass.</summary>
    public double LoadingPercent => Loading(PigmentG, PartAG + PartBG);

    /// <summary>The least that can be in it, with the half step that the scale does not show on each of the three, %.</summary>
    public double LowLoadingPercent => Loading(Math.Max(0, PigmentG - (StepG / 2)), PartAG + PartBG + StepG);

    /// <summary>The most, likewise, %; 0 for a clear mix.</summary>
    public double HighLoadingPercent =>
        PigmentG > 0 ? Loading(PigmentG + (StepG / 2), Math.Max(StepG, PartAG + PartBG - StepG)) : 0;

    private static double Loading(double pigmentG, double resinG) => 100 * pigmentG / (pigmentG + resinG);
}
