namespace GlowMix.Choosing.Draws;

/// <summary>What one cause of doubt does to one figure.</summary>
/// <param name="Cause">The cause, with the reading that would settle it.</param>
/// <param name="Indices">Its shares of the figure's variance.</param>
public sealed record CauseShare(Cause Cause, SobolIndices Indices);
