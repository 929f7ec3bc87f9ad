using System.Collections.Immutable;
using GlowMix.Predictions;

namespace GlowMix.Choosing;

/// <summary>One prediction of a sweep.</summary>
/// <param name="At">The value of each varied key, in the order of the axes.</param>
/// <param name="Figures">The chosen figures in the order asked for, each with its band; three times the value where it has none.</param>
public sealed record SweepPoint(ImmutableArray<double> At, ImmutableArray<Band> Figures);
