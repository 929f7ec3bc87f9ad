using GlowMix.Predictions;

namespace GlowMix.Readings.Decay;

/// <summary>One reading of a glow beside the predicted luminance.</summary>
/// <param name="Minutes">In the dark.</param>
/// <param name="ReadMcdPerM2">As read, mcd/m².</param>
/// <param name="Band">As predicted, mcd/m².</param>
public sealed record DecayPointAgainst(double Minutes, double ReadMcdPerM2, Band Band)
{
    /// <summary>Read over likely.</summary>
    public double Factor => ReadMcdPerM2 / (Band.Likely ?? double.NaN);

    /// <summary>The reading lies in the band.</summary>
    public bool IsInside => ReadMcdPerM2 >= Band.Low && ReadMcdPerM2 <= Band.High;
}
