using System.Collections.Immutable;

namespace GlowMix.Choosing.Compare;

/// <summary>What one of several changes does alone.</summary>
/// <param name="Key">The change: 'resin', 'layers.glow.loading_percent'; 'together' for what is left to their interaction.</param>
/// <param name="Changes">
/// One a figure of <see cref="Comparison.CauseFigures"/>: in the figure's unit, or as a ratio for those of the glow. Null where it
/// cannot be told.
/// </param>
public sealed record CauseOfChange(string Key, ImmutableArray<double?> Changes);
