namespace GlowMix.Markings;

/// <summary>How a predicted luminance stands to a published limit. An estimate is no test of it.</summary>
public enum MarkingState
{
    /// <summary>The whole band is at the limit or above.</summary>
    Above,

    /// <summary>The whole band is below the limit.</summary>
    Below,

    /// <summary>The limit lies within the band.</summary>
    TooClose,

    /// <summary>There is no limit, or it or its charge is not known.</summary>
    NotJudged,
}
