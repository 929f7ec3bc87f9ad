using GlowMix.Predictions;

namespace GlowMix.Choosing.Compare;

/// <summary>A target of the second recipe, and how both pieces stand to it: one yardstick for both.</summary>
/// <param name="Before">The first piece's verdict.</param>
/// <param name="After">The second piece's verdict.</param>
public sealed record TargetChange(TargetVerdict Before, TargetVerdict After)
{
    /// <summary>It was not missed, and is now.</summary>
    public bool Breaks => Before.State != TargetState.Missed && After.State == TargetState.Missed;

    /// <summary>It was missed, and is no longer.</summary>
    public bool Mends =>
        Before.State == TargetState.Missed && After.State is TargetState.Met or TargetState.TooClose;
}
