namespace GlowMix.Readings.Sets;

/// <summary>What of a recipe was read.</summary>
public enum ReadingState
{
    /// <summary>The bare board, lit.</summary>
    Bare,

    /// <summary>Lit, clear resin up to the top of the packages.</summary>
    Level,

    /// <summary>Lit, clear resin over the packages.</summary>
    Potted,

    /// <summary>Lit, the recipe's layers with their pigment.</summary>
    Pigmented,

    /// <summary>The glow after a charge.</summary>
    Decay,
}
