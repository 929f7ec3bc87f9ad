namespace GlowMix.Afterglow;

/// <summary>How full the traps are when a charge begins.</summary>
public enum ChargeStart
{
    /// <summary>All traps empty: the first charge after very long darkness.</summary>
    Empty,

    /// <summary>As they are after the same day has been repeated until nothing changes any more.</summary>
    SettledDaily,
}
