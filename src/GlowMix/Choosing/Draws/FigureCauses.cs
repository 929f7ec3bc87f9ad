using System.Collections.Immutable;
using GlowMix.Predictions;

namespace GlowMix.Choosing.Draws;

/// <summary>What makes a figure doubtful.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Causes">The heaviest first, by total order; empty where the figure does not vary, or hardly ever exists.</param>
public sealed record FigureCauses(Figure Figure, ImmutableArray<CauseShare> Causes);
