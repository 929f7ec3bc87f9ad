namespace GlowMix.Predictions;

/// <summary>What a prediction says of a target.</summary>
public enum TargetState
{
    /// <summary>The whole band meets it.</summary>
    Met,

    /// <summary>The whole band misses it.</summary>
    Missed,

    /// <summary>Its bound lies within the band.</summary>
    TooClose,

    /// <summary>The figure does not exist, or means nothing here.</summary>
    NotJudged,
}
