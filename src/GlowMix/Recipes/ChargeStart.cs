namespace GlowMix.Recipes;

/// <summary>How full the traps are before the first step of a charge.</summary>
public enum ChargeStart
{
    /// <summary>All empty.</summary>
    Empty,

    /// <summary>As they are after the same day again and again.</summary>
    SettledDaily,
}
