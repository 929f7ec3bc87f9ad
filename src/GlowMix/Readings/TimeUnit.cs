namespace GlowMix.Readings;

/// <summary>A unit that times are written in.</summary>
public enum TimeUnit
{
    /// <summary>s.</summary>
    Second,

    /// <summary>min.</summary>
    Minute,

    /// <summary>h.</summary>
    Hour,
}
