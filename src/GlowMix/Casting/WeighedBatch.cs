namespace GlowMix.Casting;

/// <summary>Masses rounded to what a scale shows. Immutable.</summary>
/// <param name="PartAG">Part A, g.</param>
/// <param name="PartBG">Part B, g.</param>
/// <param name="PigmentG">Pigment, g.</param>
/// <param name="WantedRatio">Mass of part A over that of part B, unrounded.</param>
public sealed record WeighedBatch(double PartAG, double PartBG, double PigmentG, double WantedRatio)
{
    /// <summary>
    /// Ratio A to B as weighed against the one wanted, %; null where a part rounds to nothing. A trade sheet asks for no more
    /// than 2 % either way.
    /// </summary>
    public double? RatioErrorPercent =>
        PartAG > 0 && PartBG > 0 ? 100 * ((PartAG / PartBG / WantedRatio) - 1) : null;

    /// <summary>Pigment of the whole mix as weighed, % by mass; null where all rounds to nothing.</summary>
    public double? LoadingPercent
    {
        get
        {
            double all = PartAG + PartBG + PigmentG;
            return all > 0 ? 100 * PigmentG / all : null;
        }
    }
}
