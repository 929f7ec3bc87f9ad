using System.Collections.Immutable;

namespace GlowMix.Materials;

/// <summary>The luminances of a criterion, or the statement that it has none or that they are not known.</summary>
/// <param name="Limits">Ascending minutes; empty if there are none or they are not known.</param>
/// <param name="IsKnown">False: the document was not read.</param>
public sealed record CriterionLimits(ImmutableArray<CriterionLimit> Limits, bool IsKnown);
